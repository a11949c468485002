package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaContext;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialect;
import com.networknt.schema.dialect.DialectId;
import com.networknt.schema.format.DateFormat;
import com.networknt.schema.keyword.Keyword;
import com.networknt.schema.keyword.KeywordType;
import com.networknt.schema.keyword.NonValidationKeyword;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/** Checks a tree against a JSON Schema of the format and words its findings as faults. */
final class SchemaCheck {
  private static final String FOLDER = "/org/undercall/schema/";
  private static final String FAULT = "x-fault";

  /** The keyword of a schema that says what is expected. */
  static final String EXPECTED = "x-expected";

  private static final List<String> NOT_CHECKED =
      List.of(
          "$schema",
          "$comment",
          "$id",
          "$defs",
          "title",
          "description",
          "examples",
          "default",
          "then",
          "else",
          FAULT,
          EXPECTED);

  private final JsonNode schemaTree;
  private final Schema schema;

  /** Makes a schema of the program ready, by the name of its file. */
  SchemaCheck(String name) {
    schemaTree = tree(FOLDER + name);
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build();
    schema =
        SchemaRegistry.withDialect(dialect(), b -> b.schemaRegistryConfig(config))
            .getSchema(schemaTree);
  }

  /** The part of draft 2020-12 that the schema uses, so that no other class is loaded for it. */
  private static Dialect dialect() {
    List<Keyword> keywords =
        new ArrayList<>(
            List.of(
                KeywordType.ADDITIONAL_PROPERTIES,
                KeywordType.ALL_OF,
                KeywordType.CONST,
                KeywordType.ENUM,
                KeywordType.EXCLUSIVE_MINIMUM,
                KeywordType.FORMAT,
                KeywordType.IF_THEN_ELSE,
                KeywordType.ITEMS,
                KeywordType.MAX_ITEMS,
                KeywordType.MAX_LENGTH,
                KeywordType.MAXIMUM,
                KeywordType.MIN_ITEMS,
                KeywordType.MINIMUM,
                KeywordType.ONE_OF,
                KeywordType.PATTERN,
                KeywordType.PROPERTIES,
                KeywordType.REF,
                KeywordType.REQUIRED,
                KeywordType.TRUE,
                KeywordType.TYPE));
    NOT_CHECKED.forEach(name -> keywords.add(new NonValidationKeyword(name)));
    return Dialect.builder(DialectId.DRAFT_2020_12)
        .specificationVersion(SpecificationVersion.DRAFT_2020_12)
        .idKeyword("$id")
        .format(new DateFormat())
        .keywords(keywords)
        .unknownKeywordFactory(SchemaCheck::unknown)
        .build();
  }

  private static Keyword unknown(String name, SchemaContext context) {
    throw new IllegalStateException("the schema has a keyword that is not checked: " + name);
  }

  private static JsonNode tree(String resource) {
    try (InputStream in = SchemaCheck.class.getResourceAsStream(resource)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return LocatedJson.read(resource, text, new Faults(resource));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Fault e) {
      throw new IllegalStateException("the schema itself is damaged", e);
    }
  }

  /** Adds a fault for everything the schema does not allow. */
  void check(JsonNode root, Faults faults) {
    List<Error> errors = schema.validate(root);
    Set<String> wrongType = new HashSet<>();
    for (Error error : errors) {
      if (error.getKeyword().equals("type")) {
        wrongType.add(error.getInstanceLocation().toString());
      }
    }
    for (Error error : errors) {
      String pointer = error.getInstanceLocation().toString();
      boolean detail = error.getEvaluationPath().toString().contains("/oneOf/");
      boolean second = wrongType.contains(pointer) && !error.getKeyword().equals("type");
      if (!detail && !second && !faults.ignored(pointer)) {
        add(error, pointer, faults);
      }
    }
  }

  private void add(Error error, String pointer, Faults faults) {
    String location = error.getSchemaLocation().getFragment().toString();
    JsonNode part = schemaTree.at(location.substring(0, location.lastIndexOf('/')));
    switch (error.getKeyword()) {
      case "additionalProperties" ->
          faults.key(
              ProcedureCode.UNKNOWN_FIELD,
              LocatedJson.inner(pointer, error.getProperty()),
              Shown.quoted(error.getProperty()),
              "one of " + SchemaWords.names(part));
      case "required" ->
          faults.value(
              ProcedureCode.MISSING_FIELD,
              pointer,
              "no " + Shown.quoted(error.getProperty()),
              Shown.quoted(error.getProperty()));
      case "oneOf" ->
          faults.value(
              code(error, part),
              pointer,
              SchemaWords.both(error.getInstanceNode(), part),
              SchemaWords.expected(error, part));
      default ->
          faults.value(
              code(error, part),
              pointer,
              Shown.value(error.getInstanceNode()),
              SchemaWords.expected(error, part));
    }
  }

  private static ProcedureCode code(Error error, JsonNode part) {
    return switch (error.getKeyword()) {
      case "type" -> ProcedureCode.WRONG_TYPE;
      case "maxLength" -> ProcedureCode.TEXT_TOO_LONG;
      default -> part.has(FAULT) ? code(part.get(FAULT).textValue()) : usual(error);
    };
  }

  private static ProcedureCode code(String id) {
    return Stream.of(ProcedureCode.values())
        .filter(c -> c.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static ProcedureCode usual(Error error) {
    return switch (error.getKeyword()) {
      case "enum" -> ProcedureCode.UNKNOWN_WORD;
      case "minimum", "exclusiveMinimum", "maximum", "minItems", "maxItems" ->
          ProcedureCode.OUT_OF_RANGE;
      default -> throw new IllegalStateException("no code for " + error.getKeyword());
    };
  }
}
