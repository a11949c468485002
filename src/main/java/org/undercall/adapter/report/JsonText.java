package org.undercall.adapter.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** JSON objects as indented text. */
final class JsonText {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private JsonText() {}

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  /** The text, ended with a line feed. */
  static String of(ObjectNode root) {
    try {
      return MAPPER.writeValueAsString(root).replace("\r\n", "\n") + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree always has a text", e);
    }
  }
}
