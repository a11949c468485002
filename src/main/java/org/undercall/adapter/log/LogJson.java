package org.undercall.adapter.log;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/** JSON as the log uses it: one line, exact numbers, nothing invisible. */
final class LogJson {
  private static final JsonMapper MAPPER = mapper();

  private LogJson() {}

  private static JsonMapper mapper() {
    JsonMapper mapper =
        JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .build();
    mapper.getFactory().setCharacterEscapes(new Visible());
    return mapper;
  }

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  static String write(ObjectNode node) {
    try {
      return MAPPER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree always has a text", e);
    }
  }

  /** The JSON in a text. */
  static JsonNode read(String text) throws Fault {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new Fault(
          LogCode.BAD_MEMBER,
          "member (line)",
          "no JSON: " + e.getOriginalMessage(),
          "one JSON object");
    } catch (NumberFormatException e) {
      throw new Fault(
          LogCode.BAD_MEMBER,
          "member (line)",
          "a number with too long an exponent",
          "one JSON object");
    }
  }

  /** Escapes line breaks of every kind, controls, format characters and surrogates. */
  private static final class Visible extends CharacterEscapes {
    private static final long serialVersionUID = 1L;
    private static final int DELETE = 0x7f;
    private final int[] ascii = standardAsciiEscapesForJSON();

    Visible() {
      ascii[DELETE] = ESCAPE_STANDARD;
    }

    @Override
    public int[] getEscapeCodesForAscii() {
      return ascii.clone();
    }

    @Override
    public SerializableString getEscapeSequence(int ch) {
      return Shown.steers(ch)
          ? new SerializedString(String.format(Locale.ROOT, "\\u%04X", ch))
          : null;
    }
  }
}
