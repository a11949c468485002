package org.undercall.adapter.drawing;

import java.util.ArrayList;
import java.util.List;
import org.undercall.text.Svg;

/** How all plots look: white ground, thin grid, colours that differ in lightness too. */
final class Sheet {
  static final String BLUE = "#1F4E9E";
  static final String ORANGE = "#D9730D";
  static final String[] GRID = {"stroke", "#ccc", "stroke-dasharray", "2 2"};
  static final String[] FRAME = {"fill", "none", "stroke", "#999"};
  static final String[] SMALL = {"font-size", "12"};
  static final String[] MIDDLE = {"font-size", "12", "text-anchor", "middle"};
  static final String[] END = {"font-size", "12", "text-anchor", "end"};

  /** About how wide a letter of small writing is. */
  static final double LETTER = 6.8;

  private static final String[] HEADING = {
    "font-size", "16", "font-weight", "bold", "text-anchor", "middle"
  };

  private Sheet() {}

  /** A sheet with a title of any length and a note under it, which may be blank. */
  static Svg of(double wide, double high, String meaning, String title, String note) {
    Svg svg = new Svg(wide, high, meaning).rectangle(0, 0, wide, high, "fill", "#fff");
    double y = 20;
    for (String line : wrapped(title, (int) (wide / LETTER * 0.68))) {
      svg.text(wide / 2, y, line, HEADING);
      y += 19;
    }
    return note.isBlank() ? svg : svg.text(wide / 2, y - 1, note, MIDDLE);
  }

  /** A text in lines of at most so many letters, if it has blanks to break it at. */
  static List<String> wrapped(String text, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (rest.length() > most && rest.lastIndexOf(' ', most) > 0) {
      int blank = rest.lastIndexOf(' ', most);
      lines.add(rest.substring(0, blank));
      rest = rest.substring(blank + 1);
    }
    lines.add(rest);
    return lines;
  }
}
