package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/**
 * One of the files that a procedure was put together from.
 *
 * @param file its path from the folder of the procedure
 * @param sha256 SHA-256 of its bytes, 64 small hexadecimal digits
 * @param block what it says of itself, if it is a block and not the procedure itself
 */
public record Part(String file, String sha256, Optional<About> block) {
  /** What a block says of itself; {@code values} is where its values come from. */
  public record About(String title, String author, String revision, String values) {}

  /** The head of a block that passed the check of its form. */
  static About about(JsonNode block) {
    return new About(
        block.get("title").textValue(),
        block.get("author").textValue(),
        block.get("revision").textValue(),
        block.get("values").textValue());
  }

  /** A part as an assembled procedure states it. */
  static Part of(JsonNode node) {
    return new Part(
        node.get("file").textValue(),
        node.get("sha256").textValue(),
        Optional.ofNullable(node.get("block")).map(Part::about));
  }

  void writeTo(ObjectNode node) {
    node.put("file", file).put("sha256", sha256);
    block.ifPresent(
        about ->
            node.putObject("block")
                .put("title", about.title())
                .put("author", about.author())
                .put("revision", about.revision())
                .put("values", about.values()));
  }
}
