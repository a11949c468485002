package org.undercall.adapter.table;

import java.math.BigDecimal;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * One cell of an ODS, or several that are alike beside each other.
 *
 * @param text what it holds, as {@link Cell} has it
 * @param kind what it is
 * @param comment what is written beside it, without who wrote it
 * @param times how many there are
 * @param rows how many rows it is joined over
 * @param columns how many columns it is joined over
 */
record OdsCell(String text, Cell.Kind kind, String comment, int times, int rows, int columns) {
  private static final String TYPE = "value-type";

  /** Whether it holds anything, or is joined with others. */
  boolean isTold() {
    return kind != Cell.Kind.EMPTY || !comment.isBlank() || rows > 1 || columns > 1;
  }

  /** How many characters it has in all. */
  long length() {
    return (long) times * (text.length() + comment.length());
  }

  /** Reads the cell at hand to its end. */
  static OdsCell read(XMLStreamReader xml, int times) throws XMLStreamException {
    Map<String, String> attributes = attributes(xml);
    StringBuilder shown = new StringBuilder();
    StringBuilder comment = new StringBuilder();
    while (xml.next() != XMLStreamConstants.END_ELEMENT) {
      if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "p", "h" -> paragraph(xml, shown);
          case "annotation" -> annotation(xml, comment);
          default -> OdsSheet.skip(xml);
        }
      }
    }
    Cell.Kind kind = kind(attributes, shown.toString());
    return new OdsCell(
        kind == Cell.Kind.EMPTY ? "" : text(attributes, kind, shown.toString().strip()),
        kind,
        comment.toString().strip(),
        times,
        span(attributes, "number-rows-spanned"),
        span(attributes, "number-columns-spanned"));
  }

  /** An error of a calculation says so under a second name of the kind of value. */
  private static Map<String, String> attributes(XMLStreamReader xml) {
    Map<String, String> attributes = ZipParts.attributes(xml);
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals(TYPE) && xml.getAttributeValue(i).equals("error")) {
        attributes.put(TYPE, "error");
      }
    }
    return attributes;
  }

  private static int span(Map<String, String> attributes, String name) {
    String span = attributes.getOrDefault(name, "1");
    return span.matches("[1-9][0-9]{0,6}") ? Integer.parseInt(span) : 1;
  }

  /** The texts of a comment; who wrote it, and when, stands beside them. */
  private static void annotation(XMLStreamReader xml, StringBuilder to) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "p", "h" -> paragraph(xml, to);
          case "list", "list-item" -> depth++;
          default -> OdsSheet.skip(xml);
        }
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      }
    }
  }

  private static void paragraph(XMLStreamReader xml, StringBuilder to) throws XMLStreamException {
    to.append(to.isEmpty() ? "" : " ");
    for (int depth = 1; depth > 0; ) {
      switch (xml.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          switch (xml.getLocalName()) {
            case "s", "tab", "line-break" -> to.append(' ');
            case "annotation", "note", "ruby-text", "frame" -> {
              OdsSheet.skip(xml);
              continue;
            }
            default -> {}
          }
          depth++;
        }
        case XMLStreamConstants.END_ELEMENT -> depth--;
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> to.append(xml.getText());
        default -> {}
      }
    }
  }

  private static Cell.Kind kind(Map<String, String> attributes, String shown) {
    String type = attributes.getOrDefault(TYPE, "");
    if (type.equals("error")) {
      return Cell.Kind.ERROR;
    }
    if (attributes.containsKey("formula")) {
      return Cell.Kind.FORMULA;
    }
    return switch (type) {
      case "date", "time" -> Cell.Kind.DATE;
      case "" -> shown.isBlank() ? Cell.Kind.EMPTY : Cell.Kind.TEXT;
      default -> Cell.Kind.TEXT;
    };
  }

  private static String text(Map<String, String> attributes, Cell.Kind kind, String shown)
      throws XMLStreamException {
    String value = value(attributes, shown);
    return switch (kind) {
      case FORMULA ->
          attributes.get("formula").replaceFirst("^(?:[a-z]+:)?(?==)", "") + " (" + value + ")";
      case ERROR -> shown;
      default -> value;
    };
  }

  private static String value(Map<String, String> attributes, String shown)
      throws XMLStreamException {
    return switch (attributes.getOrDefault(TYPE, "")) {
      case "float" -> number(attributes).toPlainString();
      case "percentage" -> plain(number(attributes).movePointRight(2)).toPlainString() + " %";
      case "boolean" -> attributes.getOrDefault("boolean-value", "").equals("true") ? "yes" : "no";
      case "date" -> attributes.getOrDefault("date-value", shown).replaceFirst("T00:00.*", "");
      default -> shown.isBlank() ? attributes.getOrDefault("string-value", "") : shown;
    };
  }

  /** A number as short as it is stored alike: 8.8 and not 8.8000000000000007. */
  private static BigDecimal number(Map<String, String> attributes) throws XMLStreamException {
    String value = attributes.getOrDefault("value", "");
    if (!value.matches("[-+]?[0-9]{0,30}[.]?[0-9]{0,30}(?:[eE][-+]?[0-9]{1,2})?")) {
      throw new XMLStreamException("the value " + value);
    }
    try {
      return plain(BigDecimal.valueOf(Double.parseDouble(value)));
    } catch (NumberFormatException e) {
      throw new XMLStreamException("the value " + value, e);
    }
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal plain = value.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0, java.math.RoundingMode.UNNECESSARY) : plain;
  }
}
