package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;
import org.undercall.text.Shown;

/** The words for what a schema finds. */
final class SchemaWords {

  private SchemaWords() {}

  /** Which of two fields that exclude each other are there. */
  static String both(JsonNode object, JsonNode part) {
    String either = part.at("/oneOf/0/required/0").textValue();
    return object.has(either) ? "both" : "neither of them";
  }

  /** What the schema expects in the place of an error. */
  static String expected(Error error, JsonNode part) {
    String wording = part.path(SchemaCheck.EXPECTED).asText();
    return switch (error.getKeyword()) {
      case "type" ->
          typeName(part.get("type").textValue()) + (wording.isEmpty() ? "" : ": ") + wording;
      case "maxLength" -> "at most " + part.get("maxLength") + " characters";
      case "enum" -> wording.isEmpty() ? choices(part.get("enum")) : wording;
      default -> wording;
    };
  }

  private static String typeName(String type) {
    return switch (type) {
      case "string" -> "a text";
      case "number" -> "a number";
      case "integer" -> "a whole number";
      case "boolean" -> "true or false";
      case "array" -> "a list";
      default -> "an object";
    };
  }

  private static String choices(JsonNode words) {
    List<String> shown = new ArrayList<>();
    words.forEach(word -> shown.add(Shown.value(word)));
    return shown.size() == 1 ? shown.get(0) : "one of " + String.join(", ", shown);
  }

  /** The fields that an object may have. */
  static String names(JsonNode part) {
    List<String> names = new ArrayList<>();
    part.get("properties").fieldNames().forEachRemaining(names::add);
    return String.join(", ", names);
  }
}
