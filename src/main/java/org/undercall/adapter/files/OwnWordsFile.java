package org.undercall.adapter.files;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.OwnWords;

/**
 * Reads a technician's own wordings: a JSON object, in it for each meaning (named as in
 * docs/phrases.md) a list of wordings, such as <code>{"hold": ["coffee break please"]}</code>.
 */
public final class OwnWordsFile {
  /** How large the file may be, in bytes. */
  static final int MOST_BYTES = 64 * 1024;

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION).build();

  private OwnWordsFile() {}

  /** The meaning's name in the file and in the documents. */
  public static String name(IntentKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Reads the wordings.
   *
   * @throws OwnWordsFault with all that is wrong
   */
  public static OwnWords read(Path file) throws OwnWordsFault {
    JsonNode root = parsed(file);
    List<String> faults = new ArrayList<>();
    Map<String, IntentKind> kinds = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : root.properties()) {
      Optional<IntentKind> kind =
          Stream.of(IntentKind.values()).filter(k -> name(k).equals(entry.getKey())).findFirst();
      if (kind.isEmpty()) {
        faults.add(
            OwnWordsFault.line(
                OwnWordsFault.Code.NO_MEANING,
                file,
                "found "
                    + Shown.quoted(entry.getKey())
                    + ", expected a meaning of docs/phrases.md"));
      } else {
        add(file, kind.get(), entry.getValue(), kinds, faults);
      }
    }
    for (OwnWords.Problem problem : OwnWords.problems(kinds)) {
      faults.add(told(file, problem));
    }
    if (!faults.isEmpty()) {
      throw new OwnWordsFault(faults);
    }
    return OwnWords.of(kinds);
  }

  private static void add(
      Path file,
      IntentKind kind,
      JsonNode wordings,
      Map<String, IntentKind> kinds,
      List<String> faults) {
    boolean texts = wordings.isArray();
    for (JsonNode one : wordings) {
      texts &= one.isTextual();
    }
    if (!texts) {
      faults.add(
          OwnWordsFault.line(
              OwnWordsFault.Code.NOT_READ,
              file,
              "found no list of texts for " + name(kind) + ", expected one, such as [\"...\"]"));
      return;
    }
    for (JsonNode one : wordings) {
      IntentKind before = kinds.putIfAbsent(one.asText(), kind);
      if (before != null) {
        faults.add(
            OwnWordsFault.line(
                OwnWordsFault.Code.TAKEN,
                file,
                "found " + Shown.quoted(one.asText()) + " twice, expected each wording once"));
      }
    }
  }

  private static String told(Path file, OwnWords.Problem problem) {
    String found = "found " + Shown.quoted(problem.wording()) + " for " + name(problem.kind());
    return switch (problem.trouble()) {
      case FORM ->
          OwnWordsFault.line(
              OwnWordsFault.Code.FORM,
              file,
              found + ", expected two to eight lower-case words with one blank between them");
      case NO_FIXED_WORDING ->
          OwnWordsFault.line(
              OwnWordsFault.Code.NO_MEANING,
              file,
              found + ", expected a meaning that is said without a number or a choice");
      case KNOWN ->
          OwnWordsFault.line(
              OwnWordsFault.Code.TAKEN, file, found + ", expected words that mean nothing yet");
      case TOO_CLOSE ->
          OwnWordsFault.line(
              OwnWordsFault.Code.TOO_CLOSE,
              file,
              found
                  + ", expected at least two words other than in \""
                  + problem.other()
                  + "\", which means something else");
    };
  }

  private static JsonNode parsed(Path file) throws OwnWordsFault {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw unread(file, "found more than 64 kB, expected less");
      }
      JsonNode root = JSON.readTree(new String(bytes, StandardCharsets.UTF_8));
      if (root == null || !root.isObject()) {
        throw unread(file, "found no JSON object, expected {\"meaning\": [\"wording\"]}");
      }
      return root;
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
      throw unread(file, "line " + line + ": found no JSON, expected an object without repeats");
    } catch (IOException e) {
      throw unread(file, "found nothing that can be read, expected a file of own words");
    }
  }

  private static OwnWordsFault unread(Path file, String what) {
    return new OwnWordsFault(List.of(OwnWordsFault.line(OwnWordsFault.Code.NOT_READ, file, what)));
  }
}
