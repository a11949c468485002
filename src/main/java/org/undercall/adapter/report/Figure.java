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
 * @param inputs what went in
 * @param parts what came out, at least one part; a single one has no heading
 * @param unseen what it cannot know, point by point; empty if the caution says it all
 * @param caution what must stand beside it wherever it is shown
 */
public record Figure(List<Item> inputs, List<Part> parts, List<String> unseen, String caution) {

  /**
   * One input or result: a number, a range or words.
   *
   * @param name what it is
   * @param text how it is shown, with its unit
   * @param low the number, or the low end of the range; empty for words
   * @param nominal the value between the ends that is reckoned with; empty if there is none
   * @param high the number, or the high end of the range; empty for words
   * @param unit the unit of the numbers; empty for words
   */
  public record Item(
      String name,
      String text,
      OptionalDouble low,
      OptionalDouble nominal,
      OptionalDouble high,
      String unit) {

    /** Words. */
    public static Item words(String name, Object text) {
      OptionalDouble none = OptionalDouble.empty();
      return new Item(name, text.toString(), none, none, none, "");
    }

    /** A number, shown with some places after the point. */
    public static Item number(String name, double value, int places, String unit) {
      return range(name, value, value, places, unit);
    }

    /** A number that is shown in words of its own. */
    public static Item shown(String name, String text, double value, String unit) {
      OptionalDouble number = OptionalDouble.of(value);
      return new Item(name, text, number, OptionalDouble.empty(), number, unit);
    }

    /** A range, shown with some places after the point. */
    public static Item range(String name, double low, double high, int places, String unit) {
      String lowText = decimal(low, places);
      String highText = decimal(high, places);
      String numbers = lowText.equals(highText) ? lowText : lowText + " to " + highText;
      return new Item(
          name,
          numbers + spaced(unit),
          OptionalDouble.of(low),
          OptionalDouble.empty(),
          OptionalDouble.of(high),
          unit);
    }

    /** A range with the value that is reckoned with. */
    public static Item spread(
        String name, double low, double nominal, double high, int places, String unit) {
      Item range = range(name, low, high, places, unit);
      String text = range.text + ", nominal " + decimal(nominal, places);
      return new Item(name, text, range.low, OptionalDouble.of(nominal), range.high, unit);
    }

    private static String decimal(double value, int places) {
      String text = String.format(Locale.ROOT, "%." + places + "f", value);
      return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    }

    private static String spaced(String unit) {
      return unit.isEmpty() || unit.equals("°") ? unit : " " + unit;
    }
  }

  /**
   * What follows from one formula.
   *
   * @param heading what it is about; blank for a figure of one part
   * @param formula how it is computed, in words and symbols
   * @param results what came out
   * @param source where the formula and its numbers come from
   * @param assumption what is taken for granted; blank if nothing but what the caution says
   */
  public record Part(
      String heading, String formula, List<Item> results, String source, String assumption) {
    public Part {
      Objects.requireNonNull(heading, "heading");
      Objects.requireNonNull(formula, "formula");
      results = List.copyOf(results);
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(assumption, "assumption");
    }
  }

  public Figure {
    inputs = List.copyOf(inputs);
    parts = List.copyOf(parts);
    unseen = List.copyOf(unseen);
    Objects.requireNonNull(caution, "caution");
  }

  /** A figure of one formula. */
  public static Figure of(
      String formula, List<Item> inputs, List<Item> results, String source, String caution) {
    Part part = new Part("", formula, results, source, "");
    return new Figure(inputs, List.of(part), List.of(), caution);
  }

  private boolean single() {
    return parts.size() == 1 && parts.get(0).heading().isBlank();
  }

  /** The figure as text, ended with a line feed. */
  public String asText() {
    Lines lines = new Lines();
    if (single()) {
      lines.add(0, "Formula: " + parts.get(0).formula());
    }
    items(lines, "Inputs", inputs);
    parts.forEach(part -> part(lines, part));
    if (!unseen.isEmpty()) {
      lines.add(0, "Cannot be seen");
      unseen.forEach(point -> lines.add(1, point));
    }
    lines.add(0, "Caution: " + caution);
    return lines.toString();
  }

  private void part(Lines lines, Part part) {
    if (single()) {
      items(lines, "Results", part.results());
      lines.add(0, "Source: " + part.source());
      return;
    }
    items(lines, part.heading(), part.results());
    lines.add(1, "Formula: " + part.formula());
    lines.add(1, "Source: " + part.source());
    if (!part.assumption().isBlank()) {
      lines.add(1, "Assumed: " + part.assumption());
    }
  }

  private static void items(Lines lines, String heading, List<Item> items) {
    lines.add(0, heading);
    items.forEach(item -> lines.add(1, item.name() + ": " + item.text()));
  }

  /** The figure as one JSON object, indented, ended with a line feed. */
  public String asJson() {
    ObjectNode root = JsonText.object();
    if (single()) {
      root.put("formula", parts.get(0).formula());
    }
    items(root.putArray("inputs"), inputs);
    if (single()) {
      items(root.putArray("results"), parts.get(0).results());
      root.put("source", parts.get(0).source());
    } else {
      parts(root.putArray("parts"));
    }
    if (!unseen.isEmpty()) {
      ArrayNode points = root.putArray("cannotBeSeen");
      unseen.forEach(points::add);
    }
    root.put("caution", caution);
    return JsonText.of(root);
  }

  private void parts(ArrayNode list) {
    for (Part part : parts) {
      ObjectNode node = list.addObject().put("heading", part.heading());
      node.put("formula", part.formula());
      items(node.putArray("results"), part.results());
      node.put("source", part.source()).put("assumption", part.assumption());
    }
  }

  private static void items(ArrayNode list, List<Item> items) {
    for (Item item : items) {
      ObjectNode node = list.addObject().put("name", item.name()).put("text", item.text());
      item.low().ifPresent(low -> node.put("low", low));
      item.nominal().ifPresent(nominal -> node.put("nominal", nominal));
      item.high().ifPresent(high -> node.put("high", high).put("unit", item.unit()));
    }
  }
}
