package org.undercall.text;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text with elements, well formed as HTML and as XML. Every text and attribute value is escaped, so
 * that nothing taken from a procedure or a log can become an element.
 */
public final class Markup {
  private static final String REPLACEMENT = "\uFFFD";

  private static final Pattern UNBROKEN =
      Pattern.compile(
          "\\d{4}-\\d{2}-\\d{2}|\\d{2}:\\d{2}:\\d{2}|M\\d{1,2}x\\d\\.\\d{1,2}"
              + "|±?\\d{1,5}(\\.\\d{1,4})? (N·m|lbf·ft|lbf·in|kgf·m)");

  private final StringBuilder text = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Begins an element; attributes are pairs of name and value. */
  public Markup open(String name, String... attributes) {
    tag(name, attributes).append('>');
    open.push(name);
    return this;
  }

  /** Ends the element begun last. */
  public Markup close() {
    text.append("</").append(open.pop()).append('>');
    return this;
  }

  /** Ends the element begun last and its line. */
  public Markup closeLine() {
    close();
    text.append('\n');
    return this;
  }

  /** An element that holds a text alone. */
  public Markup leaf(String name, String content, String... attributes) {
    open(name, attributes);
    return name.equals("td") ? prose(content).close() : text(content).close();
  }

  /** An element that holds nothing. */
  public Markup empty(String name, String... attributes) {
    tag(name, attributes).append("/>");
    return this;
  }

  /** A text, escaped; what could steer a reader or hide is shown as a replacement character. */
  public Markup text(String content) {
    escape(text, content);
    return this;
  }

  /** A text, escaped, in which dates, times, threads and torques are not broken over lines. */
  public Markup prose(String content) {
    Matcher whole = UNBROKEN.matcher(content);
    int from = 0;
    while (whole.find()) {
      text(content.substring(from, whole.start()));
      leaf("span", whole.group(), "class", "whole");
      from = whole.end();
    }
    return text(content.substring(from));
  }

  /** A text that is markup already: a style sheet or a picture made by this program. */
  public Markup made(String markup) {
    text.append(markup);
    return this;
  }

  /** All of it; every element must be ended. */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not ended: " + open);
    }
    return text.toString();
  }

  private StringBuilder tag(String name, String... attributes) {
    text.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      text.append(' ').append(attributes[i]).append("=\"");
      escape(text, attributes[i + 1]);
      text.append('"');
    }
    return text;
  }

  private static void escape(StringBuilder to, String content) {
    Shown.plain(content, REPLACEMENT).codePoints().forEach(c -> escape(to, c));
  }

  private static void escape(StringBuilder to, int c) {
    switch (c) {
      case '<' -> to.append("&lt;");
      case '>' -> to.append("&gt;");
      case '&' -> to.append("&amp;");
      case '"' -> to.append("&quot;");
      case '\'' -> to.append("&#39;");
      default -> to.appendCodePoint(c);
    }
  }
}
