package org.undercall.text;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

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
    return replaced(text, Shown::readable, Shown::coded);
  }

  /** A text of any length as a piece of one line: cut, and without what cannot be read. */
  public static String line(String text) {
    return plain(text.length() > LONGEST_LINE ? text.substring(0, LONGEST_LINE) + "..." : text);
  }

  /** A text with another character in the place of each that cannot be read. */
  public static String plain(String text, String instead) {
    return replaced(text, Shown::readable, c -> instead);
  }

  /** A text with another character in the place of each that breaks a line or steers a reader. */
  public static String steady(String text, String instead) {
    return replaced(text, c -> !steers(c), c -> instead);
  }

  private static String replaced(String text, IntPredicate kept, IntFunction<String> instead) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(c -> shown.append(kept.test(c) ? Character.toString(c) : instead.apply(c)));
    return shown.toString();
  }

  /** Whether a character can be read and spoken: it steers nothing and has a meaning for all. */
  public static boolean readable(int character) {
    int type = Character.getType(character);
    return !steers(character) && type != Character.PRIVATE_USE && type != Character.UNASSIGNED;
  }

  /** Whether a character breaks a line, steers a reader or hides: a control, or half a pair. */
  public static boolean steers(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  /** The code of a character, for example {@code U+0007}. */
  public static String coded(int character) {
    return String.format(Locale.ROOT, "U+%04X", character);
  }
}
