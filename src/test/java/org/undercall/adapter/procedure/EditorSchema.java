package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The schemas for editors, of procedures and of blocks: made from those that the program checks
 * with, by allowing a reference for each value and an include for each phase and step.
 */
final class EditorSchema {
  private static final Path PROGRAM = Path.of("src/main/resources/org/undercall/schema");
  private static final Path SHARED = Path.of("shared", "schema");
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  /** Below these, nothing is replaced. */
  private static final Set<String> AS_THEY_ARE =
      Set.of("$schema", "given", "assembledFrom", "takes", "if", "oneOf", "examples", "required");

  private static final String FORBIDDEN = "\\\\:*?\"<>|~";

  private final Schema schema;

  /** One that stands in the folder of schemas. */
  EditorSchema(String name) throws IOException {
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build();
    schema =
        SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12, b -> b.schemaRegistryConfig(config))
            .getSchema(MAPPER.readTree(Files.readString(file(name))));
  }

  /** What is wrong with a file; empty if nothing is. */
  List<String> faults(JsonNode root) {
    return schema.validate(root).stream().map(Object::toString).toList();
  }

  static Path file(String name) {
    return SHARED.resolve(name + ".schema.json");
  }

  /** The schema of a procedure. */
  static String procedure() throws IOException {
    ObjectNode root = program("whole-procedure");
    root.put("$id", "urn:undercall:schema:procedure:1");
    root.put("title", "Procedure");
    root.put(
        "description",
        "A tightening procedure that is read aloud step by step. Made from the schema that the"
            + " program checks a whole procedure with.");
    allow(root);
    named((ObjectNode) root.at("/properties/given"));
    define((ObjectNode) root.get("$defs"));
    return text(root);
  }

  /** The schema of a block. */
  static String block() throws IOException {
    ObjectNode root = program("block-frame");
    root.put("$id", "urn:undercall:schema:block:1");
    ObjectNode whole = program("whole-procedure");
    for (String kind : List.of("phases", "steps")) {
      String item = "#/$defs/" + kind.substring(0, kind.length() - 1);
      ((ObjectNode) root.at("/properties/" + kind))
          .set("items", either(MAPPER.createObjectNode().put("$ref", item), true));
    }
    named((ObjectNode) root.at("/properties/takes"));
    ObjectNode defs = (ObjectNode) whole.get("$defs");
    allow(defs);
    define(defs);
    defs.set("taken", root.at("/$defs/taken"));
    root.set("$defs", defs);
    return text(root);
  }

  private static ObjectNode program(String name) throws IOException {
    return (ObjectNode) MAPPER.readTree(PROGRAM.resolve(name + ".schema.json").toFile());
  }

  private static void allow(ObjectNode schema) {
    for (Map.Entry<String, JsonNode> part : List.copyOf(schema.properties())) {
      String name = part.getKey();
      if (AS_THEY_ARE.contains(name)) {
        continue;
      }
      if (part.getValue() instanceof ObjectNode inner) {
        allow(inner);
        if (name.equals("properties")) {
          allowEach(inner);
        } else if (name.equals("items")) {
          schema.set(name, either(inner, inner.path("$ref").asText().matches(".*/(phase|step)")));
        }
      } else if (part.getValue() instanceof ArrayNode list) {
        list.forEach(item -> allowIn(item));
      }
    }
  }

  private static void allowIn(JsonNode item) {
    if (item instanceof ObjectNode object) {
      allow(object);
    }
  }

  private static void allowEach(ObjectNode properties) {
    for (Map.Entry<String, JsonNode> property : List.copyOf(properties.properties())) {
      if (!AS_THEY_ARE.contains(property.getKey())
          && property.getValue() instanceof ObjectNode value) {
        properties.set(property.getKey(), either(value, false));
      }
    }
  }

  private static ObjectNode either(ObjectNode value, boolean include) {
    ObjectNode either = MAPPER.createObjectNode();
    if (value.has("description")) {
      either.set("description", value.get("description"));
    }
    ArrayNode anyOf = either.putArray("anyOf");
    anyOf.add(value);
    anyOf.addObject().put("$ref", "#/$defs/reference");
    if (include) {
      anyOf.addObject().put("$ref", "#/$defs/include");
    }
    return either;
  }

  private static void named(ObjectNode object) {
    object.set("propertyNames", name());
  }

  private static ObjectNode name() {
    return MAPPER
        .createObjectNode()
        .put("type", "string")
        .put("pattern", "^" + Scope.NAME.pattern() + "$")
        .put("maxLength", 60);
  }

  private static void define(ObjectNode defs) {
    ObjectNode reference = defs.putObject("reference");
    reference.put(
        "description",
        "Stands for a whole value: a given one of the vehicle; in a block, one that it takes.");
    ObjectNode fields = object(reference, "given");
    fields.set("given", name().put("description", "The name of the value."));
    ObjectNode include = defs.putObject("include");
    include.put("description", "Puts the phases or steps of a block here.");
    ObjectNode members = object(include, "include");
    members
        .putObject("include")
        .put("description", "The path of the block, seen from this file, without leading upwards.")
        .put("type", "string")
        .put("pattern", "^(?![./ ])(?!.*/[./ ])[^" + FORBIDDEN + "]+\\.(json|yaml|yml)$")
        .put("maxLength", Include.LONGEST_PATH)
        .putArray("examples")
        .add("blocks/wheel-fitting.json");
    members
        .putObject("ids")
        .put("description", "Put before the ids of the block's steps, so that they stay apart.")
        .put("type", "string")
        .put("pattern", "^" + Include.IDS.pattern() + "$")
        .put("maxLength", Include.LONGEST_IDS)
        .putArray("examples")
        .add("front-");
    members
        .putObject("revision")
        .put("description", "The revision of the block that the include is written for.")
        .put("type", "string")
        .put("maxLength", 300)
        .putArray("examples")
        .add("1");
    ObjectNode with = members.putObject("with");
    with.put("description", "The values that the block takes, by their names.");
    with.put("type", "object");
    named(with);
    ArrayNode values = with.putObject("additionalProperties").putArray("anyOf");
    values.addObject().put("$ref", "#/$defs/reference");
    ObjectNode other = values.addObject().putObject("not").put("type", "object");
    other.putArray("required").add("given");
  }

  private static ObjectNode object(ObjectNode schema, String required) {
    schema.put("type", "object").put("additionalProperties", false);
    schema.putArray("required").add(required);
    return schema.putObject("properties");
  }

  private static String text(ObjectNode root) throws IOException {
    return MAPPER.writeValueAsString(root).replace("\r\n", "\n") + "\n";
  }
}
