package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Finds where each value of a JSON text is written; the text was read before without a fault. */
final class JsonStretches {
  private static final String AFTER_PLAIN = ",]} \t\r\n";

  private final String text;
  private int at;

  private JsonStretches(String text) {
    this.text = text;
  }

  /** The stretch of the whole value. */
  static Stretch of(String text, JsonNode root) {
    return new JsonStretches(text).value(root);
  }

  private Stretch value(JsonNode node) {
    skip(" \t\r\n");
    int start = at;
    List<Stretch.Inner> inner = new ArrayList<>();
    switch (text.charAt(at)) {
      case '{' -> fields(node, inner);
      case '[' -> items(node, inner);
      case '"' -> string();
      default -> {
        while (at < text.length() && AFTER_PLAIN.indexOf(text.charAt(at)) < 0) {
          at++;
        }
      }
    }
    return new Stretch(node, start, at, false, inner);
  }

  private void fields(JsonNode node, List<Stretch.Inner> inner) {
    at++;
    skip(", \t\r\n");
    var names = node.fieldNames();
    while (text.charAt(at) != '}') {
      int start = at;
      string();
      int head = at;
      skip(": \t\r\n");
      String name = names.next();
      inner.add(new Stretch.Inner(name, start, head, value(node.get(name))));
      skip(", \t\r\n");
    }
    at++;
  }

  private void items(JsonNode node, List<Stretch.Inner> inner) {
    at++;
    skip(", \t\r\n");
    while (text.charAt(at) != ']') {
      int start = at;
      inner.add(new Stretch.Inner("", start, start, value(node.get(inner.size()))));
      skip(", \t\r\n");
    }
    at++;
  }

  private void string() {
    at++;
    while (text.charAt(at) != '"') {
      at += text.charAt(at) == '\\' ? 2 : 1;
    }
    at++;
  }

  private void skip(String characters) {
    while (at < text.length() && characters.indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }
}
