package org.undercall.adapter.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.event.EventKind;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.MeasureUnit;

/** The JSON Schema of a line of the log: made from the code, and used to check lines. */
public final class LogSchema {
  static final Path FILE = Path.of("shared", "schema", "log-line.schema.json");
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
  private static final String SUM = "^[0-9a-f]{64}$";

  private final Schema schema;

  /** The schema as it stands in the file. */
  public LogSchema() throws Exception {
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build();
    schema =
        SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12, b -> b.schemaRegistryConfig(config))
            .getSchema(MAPPER.readTree(Files.readString(FILE)));
  }

  /** What is wrong with a line; empty if nothing is. */
  public List<String> faults(String line) throws Exception {
    return schema.validate(MAPPER.readTree(line)).stream().map(Object::toString).toList();
  }

  /** The schema made from the code. */
  static String text() throws Exception {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("$id", "urn:undercall:schema:log-line:1");
    root.put("title", "Line of a session log");
    root.put(
        "description",
        "One decision. Generated from the code. Members that are not named here are passed over;"
            + " the id alone says which event it is. The sums cannot be checked by a schema.");
    root.put("type", "object");
    ObjectNode members = root.putObject("properties");
    members.putObject("seq").put("type", "integer").put("minimum", 1);
    members.putObject("at").put("type", "string").put("format", "date-time");
    members.putObject("mono").put("type", "integer");
    heard(members.putObject("heard"));
    ObjectNode events = members.putObject("events").put("type", "array");
    ArrayNode kinds = events.putObject("items").putArray("oneOf");
    members.putObject("said").put("type", "string");
    members.putObject("prev").put("type", "string").put("pattern", SUM);
    members.putObject("sum").put("type", "string").put("pattern", SUM);
    List.of("seq", "at", "mono", "events", "said", "prev", "sum")
        .forEach(root.withArray("required")::add);
    ObjectNode defs = root.putObject("$defs");
    for (EventKind kind : EventKind.values()) {
      kinds.addObject().put("$ref", "#/$defs/" + kind.id());
      event(defs.putObject(kind.id()), kind);
    }
    return MAPPER.writeValueAsString(root).replace("\r\n", "\n") + "\n";
  }

  private static void heard(ObjectNode heard) {
    heard.put("type", "object");
    ObjectNode members = heard.putObject("properties");
    members.putObject("text").put("type", "string");
    members.putObject("intent").put("type", "string");
    members.putObject("confidence").put("type", "number").put("minimum", 0).put("maximum", 1);
    ArrayNode how = members.putObject("how").putArray("enum");
    List.of("spoken", "typed", "pressed").forEach(how::add);
    members.fieldNames().forEachRemaining(heard.withArray("required")::add);
  }

  private static void event(ObjectNode event, EventKind kind) {
    event.put("title", Kebab.of(kind)).put("description", kind.sentence());
    event.put("type", "object");
    ObjectNode members = event.putObject("properties");
    members.putObject("id").put("const", kind.id());
    members.putObject("event").put("type", "string");
    ArrayNode required = event.putArray("required").add("id");
    for (RecordComponent field : kind.type().getRecordComponents()) {
      boolean optional = field.getType() == Optional.class;
      Class<?> type =
          optional
              ? (Class<?>) ((ParameterizedType) field.getGenericType()).getActualTypeArguments()[0]
              : field.getType();
      form(members.putObject(field.getName()), type);
      if (!optional) {
        required.add(field.getName());
      }
    }
  }

  private static void form(ObjectNode node, Class<?> type) {
    if (type.isEnum()) {
      ArrayNode words = node.putArray("enum");
      Arrays.stream(type.getEnumConstants()).forEach(c -> words.add(Kebab.of((Enum<?>) c)));
      return;
    }
    switch (type.getSimpleName()) {
      case "boolean", "Boolean" -> node.put("type", "boolean");
      case "int", "Integer", "long", "Long" -> node.put("type", "integer");
      case "BigDecimal" -> node.put("type", "number");
      case "String", "StepRef" -> node.put("type", "string");
      case "Instant" -> node.put("type", "string").put("format", "date-time");
      case "Positions" ->
          node.put("type", "string").put("pattern", "^[1-9][0-9]{0,2}( [1-9][0-9]{0,2})*$");
      case "HeadMarking" -> node.put("type", "string").put("pattern", "^[1-9][0-9]?\\.[0-9]$");
      case "Measure" -> node.put("type", "string").put("pattern", measure());
      default -> throw new IllegalStateException("no form in the schema for " + type);
    }
  }

  private static String measure() {
    String units =
        Arrays.stream(MeasureUnit.values())
            .map(MeasureUnit::symbol)
            .collect(Collectors.joining("|"));
    return "^-?[0-9]{1,12}(\\.[0-9]{1,12})? (" + units + ")$";
  }

  static JsonNode tree(String line) throws Exception {
    return MAPPER.readTree(line);
  }
}
