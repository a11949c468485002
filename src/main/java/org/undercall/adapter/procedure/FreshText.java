package org.undercall.adapter.procedure;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * Writes values that stand in no text yet, as a person would: what is small on one line, all else
 * one field or item a line.
 *
 * @param yaml whether it is YAML; else JSON
 * @param eol what ends a line
 */
record FreshText(boolean yaml, String eol) {
  private static final int WIDTH = 100;

  /** What YAML takes for a text without quotation marks, and every reader of it. */
  private static final Pattern PLAIN =
      Pattern.compile("\\p{L}[\\p{L}\\p{N}_·°.()/-]*( [\\p{L}\\p{N}_·°.()/-]+)*");

  private static final Pattern PLAIN_NAME = Pattern.compile("[$\\p{L}][\\p{L}\\p{N}-]*");
  private static final Set<String> OTHER_THAN_TEXT =
      Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n");

  /** A whole procedure: an object with a field a line, and the end of the last line. */
  String whole(JsonNode root) {
    return (root.isEmpty() ? "{}" : yaml ? block(root, 0) : expanded(root, 0)) + eol;
  }

  /**
   * A value; its first line begins where it is put.
   *
   * @param indent of the line that it begins in, in blanks
   */
  String value(JsonNode node, int indent) {
    if (!node.isContainerNode() || fits(node, indent)) {
      return line(node);
    }
    return yaml ? block(node, indent) : expanded(node, indent);
  }

  /** The name of a field with what follows it before a value that stands in the same line. */
  String name(String name) {
    return yaml && PLAIN_NAME.matcher(name).matches() ? name : quoted(name);
  }

  /** What stands between a name, or a dash of YAML, and its value, with the value. */
  String tail(String mark, JsonNode node, int indent) {
    boolean below = yaml && node.isContainerNode() && !fits(node, indent);
    if (!below) {
      return mark + " " + value(node, indent);
    }
    return mark.isEmpty()
        ? " " + block(node, indent + 2)
        : mark + eol + " ".repeat(indent + 2) + block(node, indent + 2);
  }

  private boolean fits(JsonNode node, int indent) {
    return node.isEmpty() || (isSmall(node) && indent + line(node).length() <= WIDTH);
  }

  /** Whether a value may stand on one line: no step, nothing that holds what itself holds any. */
  private static boolean isSmall(JsonNode node) {
    if (node.has("title")) {
      return false;
    }
    boolean only = node.size() == 1;
    return StreamSupport.stream(node.spliterator(), false)
        .allMatch(inner -> !inner.isContainerNode() || inner.isEmpty() || (only && node.isArray()));
  }

  private String line(JsonNode node) {
    if (node.isObject()) {
      return node.isEmpty()
          ? "{}"
          : node.properties().stream()
              .map(field -> name(field.getKey()) + ": " + line(field.getValue()))
              .collect(Collectors.joining(", ", "{ ", " }"));
    }
    if (node.isArray()) {
      return StreamSupport.stream(node.spliterator(), false)
          .map(this::line)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return scalar(node);
  }

  private String scalar(JsonNode node) {
    if (node.isNumber()) {
      return node.decimalValue().toPlainString();
    }
    if (!node.isTextual()) {
      return node.asText();
    }
    String text = node.textValue();
    boolean plain =
        yaml
            && PLAIN.matcher(text).matches()
            && !OTHER_THAN_TEXT.contains(text.toLowerCase(Locale.ROOT));
    return plain ? text : quoted(text);
  }

  private static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }

  private String expanded(JsonNode node, int indent) {
    String inside = eol + " ".repeat(indent + 2);
    List<String> parts = new ArrayList<>();
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      parts.add(name(field.getKey()) + tail(":", field.getValue(), indent + 2));
    }
    if (node.isArray()) {
      node.forEach(item -> parts.add(value(item, indent + 2)));
    }
    String joined = inside + String.join("," + inside, parts) + eol + " ".repeat(indent);
    return node.isArray() ? "[" + joined + "]" : "{" + joined + "}";
  }

  private String block(JsonNode node, int indent) {
    List<String> parts = new ArrayList<>();
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      parts.add(name(field.getKey()) + tail(":", field.getValue(), indent));
    }
    if (node.isArray()) {
      node.forEach(item -> parts.add("-" + tail("", item, indent)));
    }
    return String.join(eol + " ".repeat(indent), parts);
  }
}
