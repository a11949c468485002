package org.undercall.adapter.procedure;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * How a procedure was put together.
 *
 * @param parts the files it was put together from, the procedure's own first; none if it is one
 *     file as it is
 * @param text the whole procedure, which needs no other file: JSON if it was put together,
 *     otherwise what was read, with its byte order mark if it has one
 * @param made whether it was put together, and is not the file as it is
 */
public record Assembled(List<Part> parts, String text, boolean made) {
  /** How many files may be stated. */
  static final int MOST_PARTS = 500;

  private static final String FIELD = "assembledFrom";
  private static final String BEFORE = "cautions";

  public Assembled {
    parts = List.copyOf(parts);
  }

  /** Of a file that is whole: what it says of itself. */
  static Assembled whole(JsonNode root, String read) {
    return new Assembled(stated(root), read, false);
  }

  /**
   * Of a procedure that was put together.
   *
   * @param own the file of the procedure
   * @param whole what came of it, free of faults
   */
  static Assembled of(Part own, Assembly.Whole whole) {
    List<Part> parts = new ArrayList<>(stated(whole.root()));
    parts.add(own);
    parts.addAll(whole.blocks());
    return new Assembled(parts, text(whole.root(), parts), true);
  }

  private static List<Part> stated(JsonNode root) {
    List<Part> parts = new ArrayList<>();
    root.path(FIELD).forEach(node -> parts.add(Part.of(node)));
    return parts;
  }

  private static String text(JsonNode root, List<Part> parts) {
    ObjectNode whole = LocatedJson.NODES.objectNode();
    root.properties()
        .forEach(
            field -> {
              if (field.getKey().equals(BEFORE)) {
                parts.forEach(part -> part.writeTo(whole.withArray(FIELD).addObject()));
              }
              if (!field.getKey().equals(FIELD)) {
                whole.set(field.getKey(), field.getValue());
              }
            });
    return written(whole);
  }

  /** A procedure as text, as it is written by the program. */
  static String written(JsonNode whole) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withArrayEmptySeparator("");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
    printer.indentArraysWith(indenter);
    printer.indentObjectsWith(indenter);
    try {
      return new ObjectMapper().writer(printer).writeValueAsString(whole) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("writing to memory", e);
    }
  }
}
