package org.undercall.adapter.words;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.IllformedLocaleException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.undercall.core.intent.IntentKind;
import org.undercall.port.Fault;
import org.undercall.text.Shown;
import org.undercall.text.Yaml;

/**
 * Reads one file of own wordings, JSON or YAML: an object, in it for each meaning (named as in
 * docs/reference/phrases.md) a list of wordings, such as <code>{"hold": ["coffee break please"]}
 * </code>, and the language as a tag of BCP 47 under <code>language</code>, which may be left out.
 */
public final class OwnWordsFile {
  /** How large the file may be, in bytes. */
  static final int MOST_BYTES = 64 * 1024;

  /** What a language is. */
  static final String A_LANGUAGE = "a tag of BCP 47, such as de or pt-BR";

  /** What the language stands under. */
  static final String LANGUAGE = "language";

  private static final JsonMapper TREES =
      JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY).build();

  private OwnWordsFile() {}

  /** The meaning's name in the file and in the documents. */
  public static String name(IntentKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Reads a file.
   *
   * @param faults takes all that is wrong in it but collisions
   * @throws Fault if it is no such file at all
   */
  static OwnWordsFiles.Pack read(Path file, List<Fault.Finding> faults) throws Fault {
    JsonNode root = parsed(file);
    Optional<Locale> language = Optional.empty();
    Map<String, IntentKind> kinds = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : root.properties()) {
      if (entry.getKey().equals(LANGUAGE)) {
        language = language(file, entry.getValue(), faults);
        continue;
      }
      Optional<IntentKind> kind =
          Stream.of(IntentKind.values()).filter(k -> name(k).equals(entry.getKey())).findFirst();
      if (kind.isEmpty()) {
        String found = Shown.quoted(entry.getKey());
        faults.add(
            fault(WordsCode.NO_MEANING, file, found, "a meaning of docs/reference/phrases.md"));
      } else {
        add(file, kind.get(), entry.getValue(), kinds, faults);
      }
    }
    return new OwnWordsFiles.Pack(file, language, kinds);
  }

  private static Optional<Locale> language(Path file, JsonNode tag, List<Fault.Finding> faults) {
    try {
      return Optional.of(language(tag.isTextual() ? tag.asText() : ""));
    } catch (IllformedLocaleException e) {
      String found = Shown.quoted(tag.asText()) + " as the language";
      faults.add(fault(WordsCode.LANGUAGE, file, found, A_LANGUAGE));
      return Optional.empty();
    }
  }

  /** The language of a tag of BCP 47. */
  static Locale language(String tag) {
    Locale language = new Locale.Builder().setLanguageTag(tag).build();
    if (language.getLanguage().isEmpty()) {
      throw new IllformedLocaleException("no language in the tag");
    }
    return language;
  }

  private static void add(
      Path file,
      IntentKind kind,
      JsonNode wordings,
      Map<String, IntentKind> kinds,
      List<Fault.Finding> faults) {
    boolean texts = wordings.isArray();
    for (JsonNode one : wordings) {
      texts &= one.isTextual();
    }
    if (!texts) {
      String found = "no list of texts for " + name(kind);
      faults.add(fault(WordsCode.NOT_READ, file, found, "one, such as [\"...\"]"));
      return;
    }
    for (JsonNode one : wordings) {
      if (kinds.putIfAbsent(one.asText(), kind) != null) {
        String found = Shown.quoted(one.asText()) + " twice";
        faults.add(fault(WordsCode.TAKEN, file, found, "each wording once"));
      }
    }
  }

  private static JsonNode parsed(Path file) throws Fault {
    boolean yaml = Yaml.named(String.valueOf(file.getFileName()));
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw unread(file, "more than 64 kB", "less");
      }
      JsonNode root = tree(new String(bytes, StandardCharsets.UTF_8), yaml);
      if (root == null || !root.isObject()) {
        throw unread(file, "no object", "{\"meaning\": [\"wording\"]}");
      }
      return root;
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
      String what = yaml ? "YAML" : "JSON";
      throw new Fault(
          WordsCode.NOT_READ,
          Shown.plain(file.toString()) + ": line " + line,
          "no " + what,
          "an object without repeats");
    } catch (IOException e) {
      throw unread(file, "nothing that can be read", "a file of own words");
    }
  }

  private static JsonNode tree(String text, boolean yaml) throws IOException {
    try (JsonParser parser = yaml ? Yaml.parser(text) : TREES.createParser(text)) {
      return TREES.readTree(parser);
    }
  }

  private static Fault unread(Path file, String found, String expected) {
    return new Fault(List.of(fault(WordsCode.NOT_READ, file, found, expected)));
  }

  /** What is wrong with a file. */
  public static Fault.Finding fault(WordsCode code, Path file, String found, String expected) {
    return new Fault.Finding(code, Shown.plain(file.toString()), found, expected);
  }
}
