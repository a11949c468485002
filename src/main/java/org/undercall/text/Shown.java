package org.undercall.text;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;

/** Shows pieces of a file in a message: short, on one line, safe on a terminal. */
public final class Shown {
  private static final int LONGEST = 60;
  private static final int LONGEST_LINE = 400;

  private Shown() {}

  /** A value: texts in quotation marks, numbers as they are, objects and lists by their kind. */
  public static String value(JsonNode node) {
    if (node.isTextual()) {
      return quoted(node.textValue());
    }
    if (node.isObject()) {
      return "an object";
    }
    if (node.isArray()) {
      return node.isEmpty() ? "an empty list" : "a list of " + node.size();
    }
    return node.isNumber() ? node.decimalValue().toPlainString() : node.asText();
  }

  /** A text in quotation marks, cut if it is long. */
  public static String quoted(String text) {
    String cut = text.length() > LONGEST ? text.substring(0, LONGEST) + "..." : text;
    return '"' + plain(cut) + '"';
  }

  /** A text with every character that cannot be read written as its code. */
  public static String plain(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(c -> shown.append(readable(c) ? Character.toString(c) : coded(c)));
    return shown.toString();
  }

  /** A text of any length as a piece of one line: cut, and without what cannot be read. */
  public static String line(String text) {
    return plain(text.length() > LONGEST_LINE ? text.substring(0, LONGEST_LINE) + "..." : text);
  }

  /** Whether a character can be read and spoken: no control, format or unassigned character. */
  public static boolean readable(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }

  /** The code of a character, for example {@code U+0007}. */
  public static String coded(int character) {
    return String.format(Locale.ROOT, "U+%04X", character);
  }
}
