package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * A value of a file and the stretch of its text that it is written in.
 *
 * @param value what is written there
 * @param start of the text, in UTF-16 units from its beginning
 * @param end after the last character of it
 * @param block whether it is an object or list of YAML that is written by indentation
 * @param inner the fields of an object, the items of a list
 */
record Stretch(JsonNode value, int start, int end, boolean block, List<Inner> inner) {

  /**
   * A field or an item.
   *
   * @param name of the field; empty for an item
   * @param start of its name, or of its dash or value
   * @param head after its name or dash; where its value starts, if it has neither
   * @param of its value
   */
  record Inner(String name, int start, int head, Stretch of) {
    int end() {
      return Math.max(head, of.end());
    }
  }

  /** A value without inner ones. */
  static Stretch plain(JsonNode value, int start, int end) {
    return new Stretch(value, start, end, false, List.of());
  }

  boolean holds() {
    return !inner.isEmpty();
  }
}
