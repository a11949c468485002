package org.undercall.text;

import java.util.Locale;
import java.util.stream.Stream;

/**
 * A picture as SVG, black on white, with words in place of it for those who do not see it. It holds
 * no script, style sheet or address, so that it can stand in a page too.
 *
 * <p>Places are in pixels from the upper left corner; a style is pairs of an attribute and its
 * value.
 */
public final class Svg {
  private final Markup markup = new Markup();

  /**
   * An empty picture.
   *
   * @param meaning what it shows
   */
  public Svg(double wide, double high, String meaning) {
    String across = String.format(Locale.ROOT, "%.0f", wide);
    String down = String.format(Locale.ROOT, "%.0f", high);
    String[] size = {"viewBox", "0 0 " + across + " " + down, "width", across, "height", down};
    String[] words = {"role", "img", "aria-label", meaning, "alt", meaning};
    String[] font = {"font-family", "DejaVu Sans, Verdana, sans-serif", "font-size", "11"};
    String[] space = {"xmlns", "http://www.w3.org/2000/svg"};
    markup.open("svg", joined(joined(joined(space, size), words), font));
    markup.leaf("title", meaning);
  }

  /** A straight line. */
  public Svg line(double x, double y, double x2, double y2, String... style) {
    return shape(
        "line", style, "x1", number(x), "y1", number(y), "x2", number(x2), "y2", number(y2));
  }

  /** A rectangle with its upper left corner at a place. */
  public Svg rectangle(double x, double y, double wide, double high, String... style) {
    String[] size = {"width", number(wide), "height", number(high)};
    return shape("rect", style, joined(new String[] {"x", number(x), "y", number(y)}, size));
  }

  /** A circle about a place. */
  public Svg circle(double x, double y, double radius, String... style) {
    return shape("circle", style, "cx", number(x), "cy", number(y), "r", number(radius));
  }

  /** A filled shape of corners about a place: across and down in turn. */
  public Svg polygon(double x, double y, double[] corners, String... style) {
    return shape("polygon", style, "points", points(x, y, corners));
  }

  /** A line through points: across and down in turn. */
  public Svg polyline(double[] points, String... style) {
    return shape("polyline", style, "points", points(0, 0, points));
  }

  /** Words that begin at a place on their base line, if their style does not say otherwise. */
  public Svg text(double x, double y, String words, String... style) {
    markup.leaf("text", words, joined(new String[] {"x", number(x), "y", number(y)}, style));
    return this;
  }

  /** The whole picture; nothing can be drawn after it. */
  @Override
  public String toString() {
    return markup.close().toString();
  }

  private Svg shape(String name, String[] style, String... place) {
    markup.empty(name, joined(place, style));
    return this;
  }

  private static String points(double x, double y, double[] corners) {
    StringBuilder placed = new StringBuilder();
    for (int i = 0; i < corners.length; i += 2) {
      placed.append(i == 0 ? "" : " ").append(number(x + corners[i])).append(',');
      placed.append(number(y + corners[i + 1]));
    }
    return placed.toString();
  }

  private static String[] joined(String[] first, String[] second) {
    return Stream.of(first, second).flatMap(Stream::of).toArray(String[]::new);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
