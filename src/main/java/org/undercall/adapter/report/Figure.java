package org.undercall.adapter.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Something computed, with all that is needed to judge it.
 *
 * @param formula how it is computed, in words and symbols
 * @param inputs what went in
 * @param results what came out
 * @param source where the formula and its numbers come from
 * @param caution what it cannot know
 */
public record Figure(
    String formula, List<Item> inputs, List<Item> results, String source, String caution) {

  /**
   * One input or result: a number, a range or words.
   *
   * @param name what it is
   * @param text how it is shown, with its unit
   * @param low the number, or the low end of the range; empty for words
   * @param high the number, or the high end of the range; empty for words
   * @param unit the unit of the numbers; empty for words
   */
  public record Item(
      String name, String text, OptionalDouble low, OptionalDouble high, String unit) {

    /** Words. */
    public static Item words(String name, Object text) {
      return new Item(name, text.toString(), OptionalDouble.empty(), OptionalDouble.empty(), "");
    }

    /** A number, shown with some places after the point. */
    public static Item number(String name, double value, int places, String unit) {
      return range(name, value, value, places, unit);
    }

    /** A range, shown with some places after the point. */
    public static Item range(String name, double low, double high, int places, String unit) {
      String form = "%." + places + "f";
      String lowText = String.format(Locale.ROOT, form, low);
      String highText = String.format(Locale.ROOT, form, high);
      String numbers = lowText.equals(highText) ? lowText : lowText + " to " + highText;
      String text = unit.isEmpty() ? numbers : numbers + (unit.equals("°") ? "" : " ") + unit;
      return new Item(name, text, OptionalDouble.of(low), OptionalDouble.of(high), unit);
    }
  }

  public Figure {
    Objects.requireNonNull(formula, "formula");
    inputs = List.copyOf(inputs);
    results = List.copyOf(results);
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(caution, "caution");
  }

  /** The figure as text, ended with a line feed. */
  public String asText() {
    Lines lines = new Lines();
    lines.add(0, "Formula: " + formula);
    items(lines, "Inputs", inputs);
    items(lines, "Results", results);
    lines.add(0, "Source: " + source);
    lines.add(0, "Caution: " + caution);
    return lines.toString();
  }

  private static void items(Lines lines, String heading, List<Item> items) {
    lines.add(0, heading);
    items.forEach(item -> lines.add(1, item.name() + ": " + item.text()));
  }

  /** The figure as one JSON object, indented, ended with a line feed. */
  public String asJson() {
    ObjectNode root = JsonText.object();
    root.put("formula", formula);
    items(root.putArray("inputs"), inputs);
    items(root.putArray("results"), results);
    root.put("source", source);
    root.put("caution", caution);
    return JsonText.of(root);
  }

  private static void items(ArrayNode list, List<Item> items) {
    for (Item item : items) {
      ObjectNode node = list.addObject().put("name", item.name()).put("text", item.text());
      item.low().ifPresent(low -> node.put("low", low));
      item.high().ifPresent(high -> node.put("high", high).put("unit", item.unit()));
    }
  }
}
