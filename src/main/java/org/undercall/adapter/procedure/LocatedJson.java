package org.undercall.adapter.procedure;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.undercall.adapter.procedure.Faults.Position;
import org.undercall.port.Fault;
import org.undercall.text.Shown;
import org.undercall.text.Yaml;

/**
 * Reads JSON or YAML text into a tree with exact decimals and notes where every key and value
 * stands.
 *
 * <p>Faults that leave the rest readable, such as a field written twice, are collected; the others
 * end the reading.
 */
final class LocatedJson {
  /** How long the name of a field may be: every value below it is placed by it. */
  static final int MOST_NAME = 300;

  /** How many values a file may have. */
  static final int MOST_VALUES = 50_000;

  private static final Pattern PLAIN_NUMBER =
      Pattern.compile("-?(0|[1-9][0-9]{0,6})(\\.[0-9]{1,4})?");

  /** Makes nodes. */
  static final JsonNodeFactory NODES = new LightNodes();

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_UNESCAPED_CONTROL_CHARS)
          .streamReadConstraints(Yaml.LIMITS)
          .build();

  private final JsonParser parser;
  private final Faults faults;
  private final boolean yaml;
  private int count;

  private LocatedJson(JsonParser parser, Faults faults, boolean yaml) {
    this.parser = parser;
    this.faults = faults;
    this.yaml = yaml;
  }

  /** Reads a text that holds one value, in the language that the name of its file tells. */
  static JsonNode read(String name, String text, Faults faults) throws Fault {
    boolean yaml = Yaml.named(name);
    JsonNode root = NODES.missingNode();
    try (JsonParser parser = yaml ? Yaml.parser(text) : FACTORY.createParser(text)) {
      root = new LocatedJson(parser, faults, yaml).guardedRoot(text);
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory", e);
    }
    if (root.isMissingNode()) {
      faults.throwIfAny();
    }
    return root;
  }

  private JsonNode guardedRoot(String text) throws IOException {
    try {
      return root();
    } catch (StreamConstraintsException e) {
      String expected = "at most " + Yaml.MOST_DEPTH + " levels";
      Position place = place(parser.currentLocation());
      faults.at(ProcedureCode.TOO_DEEP, "", place, "deeper nesting", expected);
    } catch (JsonProcessingException e) {
      if (yaml) {
        YamlText.fault(e, text, faults);
        return NODES.missingNode();
      }
      JsonLocation location = e.getLocation();
      if (parser.currentLocation().getCharOffset() >= text.stripTrailing().length()) {
        faults.at(ProcedureCode.TRUNCATED, "", place(location), "the end", "the rest of the JSON");
      } else {
        String seen = Shown.plain(e.getOriginalMessage());
        faults.at(ProcedureCode.NOT_JSON, "", place(location), seen, "JSON");
      }
    }
    return NODES.missingNode();
  }

  private JsonNode root() throws IOException {
    if (parser.nextToken() == null) {
      faults.at(ProcedureCode.TRUNCATED, "", Position.START, "an empty file", "a procedure");
      return NODES.missingNode();
    }
    JsonNode root = value("");
    if (count <= MOST_VALUES && parser.nextToken() != null) {
      Position place = place(parser.currentTokenLocation());
      faults.at(ProcedureCode.NOT_JSON, "", place, "more text after the procedure", "the end");
      return NODES.missingNode();
    }
    return count > MOST_VALUES ? NODES.missingNode() : root;
  }

  private JsonNode value(String pointer) throws IOException {
    Position place = place(parser.currentTokenLocation());
    faults.valueAt(pointer, place);
    if (++count > MOST_VALUES) {
      String seen = "more than " + MOST_VALUES + " values";
      faults.at(ProcedureCode.FILE_TOO_LARGE, "", Position.NONE, seen, "fewer values");
      return NODES.missingNode();
    }
    if (yaml) {
      YamlText.requirePlain(parser, pointer, place, faults);
    }
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(pointer);
      case START_ARRAY -> array(pointer);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(pointer);
      case VALUE_TRUE, VALUE_FALSE -> truth(pointer);
      case VALUE_NULL -> NODES.nullNode();
      default -> text(pointer);
    };
  }

  private ObjectNode object(String pointer) throws IOException {
    ObjectNode object = NODES.objectNode();
    while (count <= MOST_VALUES && parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      if (name.length() > MOST_NAME) {
        String most = "a field name of at most " + MOST_NAME + " characters";
        Position place = place(parser.currentTokenLocation());
        faults.at(ProcedureCode.TEXT_TOO_LONG, pointer, place, Shown.quoted(name), most);
        count = MOST_VALUES + 1;
        return object;
      }
      String inner = inner(pointer, name);
      Position place = place(parser.currentTokenLocation());
      faults.keyAt(inner, place);
      if (yaml) {
        YamlText.requirePlain(parser, inner, place, faults);
      }
      parser.nextToken();
      JsonNode value = value(inner);
      if (object.has(name)) {
        String seen = Shown.quoted(name) + " again";
        faults.at(ProcedureCode.DUPLICATE_KEY, inner, place, seen, "each field once");
      } else {
        object.set(name, value);
      }
    }
    return object;
  }

  /** The pointer to a field of an object (RFC 6901). */
  static String inner(String pointer, String name) {
    return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  private ArrayNode array(String pointer) throws IOException {
    ArrayNode array = NODES.arrayNode();
    while (count <= MOST_VALUES && parser.nextToken() != JsonToken.END_ARRAY) {
      array.add(value(pointer + "/" + array.size()));
    }
    return array;
  }

  private JsonNode number(String pointer) throws IOException {
    String text = parser.getText();
    if (!PLAIN_NUMBER.matcher(text).matches()) {
      String seen = text.length() > 40 ? text.substring(0, 40) + "..." : text;
      faults.unusable(
          ProcedureCode.NUMBER_FORM, pointer, seen, "a plain number such as 110 or 0.5");
      return NODES.nullNode();
    }
    return parser.currentToken() == JsonToken.VALUE_NUMBER_INT
        ? NODES.numberNode(Integer.parseInt(text))
        : NODES.numberNode(new BigDecimal(text));
  }

  /** The words of JSON alone: what else YAML takes for them, such as "yes", is a text. */
  private JsonNode truth(String pointer) throws IOException {
    return switch (parser.getText()) {
      case "true" -> NODES.booleanNode(true);
      case "false" -> NODES.booleanNode(false);
      default -> text(pointer);
    };
  }

  private JsonNode text(String pointer) throws IOException {
    String text = parser.getText();
    text.codePoints()
        .filter(c -> !Shown.readable(c))
        .findFirst()
        .ifPresent(
            c -> {
              String seen = "the character " + Shown.coded(c);
              faults.unusable(
                  ProcedureCode.CONTROL_CHARACTER, pointer, seen, "characters that can be read");
            });
    return NODES.textNode(text);
  }

  private static Position place(JsonLocation at) {
    return new Position(at.getLineNr(), at.getColumnNr());
  }
}
