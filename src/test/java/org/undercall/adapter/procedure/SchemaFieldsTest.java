package org.undercall.adapter.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The schema of procedures tells an editor")
class SchemaFieldsTest {
  private static final Path SCHEMA = Path.of("shared", "schema", "procedure.schema.json");
  private static final Path PAGE = Path.of("docs/reference/procedure-fields.md");

  /** What an editor shows of a field: the text it points at, and the values it offers. */
  private record Field(String name, boolean required, String text, String values) {}

  private static JsonNode schema() throws IOException {
    return new ObjectMapper().readTree(SCHEMA.toFile());
  }

  /** The fields of each object of the schema, by its place in it. */
  private static Map<String, List<Field>> fields() throws IOException {
    Map<String, List<Field>> all = new LinkedHashMap<>();
    collect(schema(), schema(), "the procedure", all);
    return all;
  }

  private static void collect(
      JsonNode root, JsonNode at, String place, Map<String, List<Field>> all) {
    JsonNode properties = at.path("properties");
    if (properties.isObject() && at.path("type").asText().equals("object")) {
      List<String> required = new ArrayList<>();
      at.path("required").forEach(one -> required.add(one.asText()));
      List<Field> fields = new ArrayList<>();
      for (Map.Entry<String, JsonNode> one : properties.properties()) {
        fields.add(field(root, one.getKey(), one.getValue(), required.contains(one.getKey())));
      }
      all.put(place, fields);
    }
    for (Map.Entry<String, JsonNode> one : at.properties()) {
      if (one.getValue().isObject()) {
        boolean named = List.of("properties", "$defs").contains(one.getKey());
        if (named) {
          one.getValue().properties().forEach(p -> collect(root, p.getValue(), p.getKey(), all));
        } else {
          collect(root, one.getValue(), place, all);
        }
      }
    }
  }

  private static Field field(JsonNode root, String name, JsonNode node, boolean required) {
    JsonNode target = node;
    if (node.has("$ref")) {
      target = root.at(node.get("$ref").asText().substring(1));
    }
    JsonNode values = node.has("enum") ? node.get("enum") : target.path("enum");
    String offered =
        values.isMissingNode()
            ? ""
            : String.join(
                ", ",
                StreamSupport.stream(values.spliterator(), false)
                    .map(v -> "`" + v.asText() + "`")
                    .toList());
    return new Field(name, required, node.path("description").asText(), offered);
  }

  @Test
  @DisplayName("what every field is for")
  void everyField() throws IOException {
    Map<String, List<Field>> all = fields();
    assertTrue(all.values().stream().mapToInt(List::size).sum() > 50, all.keySet()::toString);
    all.forEach(
        (place, fields) ->
            fields.forEach(
                field -> {
                  assertFalse(field.text().isBlank(), place + "." + field.name());
                  assertTrue(field.text().endsWith("."), place + "." + field.name());
                }));
  }

  @Test
  @DisplayName("a field's own text, which that of what it refers to would take the place of")
  void ownText() throws IOException {
    JsonNode schema = schema();
    List<String> overlaid = new ArrayList<>();
    for (JsonNode properties : schema.findValues("properties")) {
      for (JsonNode property : properties) {
        String target = property.path("$ref").asText();
        if (!target.isEmpty() && schema.at(target.substring(1)).has("description")) {
          overlaid.add(target);
        }
      }
    }
    assertEquals(List.of(), overlaid);
  }

  @Test
  @DisplayName("what the page on the fields says")
  void page() throws IOException {
    StringBuilder text =
        new StringBuilder(
            "# The fields of a procedure, as an editor explains them\n\n"
                + "Made from `shared/schema/procedure.schema.json`; do not edit by hand. Fields marked"
                + " with * must be there.\n");
    fields()
        .forEach(
            (place, fields) -> {
              text.append("\n## ")
                  .append(place)
                  .append("\n\n| field | text | values |\n|---|---|---|\n");
              fields.forEach(
                  f ->
                      text.append("| `")
                          .append(f.name())
                          .append(f.required() ? "` * | " : "` | ")
                          .append(f.text().replace("|", "\\|"))
                          .append(" | ")
                          .append(f.values())
                          .append(" |\n"));
            });
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.writeString(PAGE, text);
    }
    assertEquals(
        text.toString(), Files.exists(PAGE) ? Files.readString(PAGE) : "", PAGE + " is stale");
  }
}
