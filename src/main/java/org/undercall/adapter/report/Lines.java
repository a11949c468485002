package org.undercall.adapter.report;

import java.util.Locale;
import org.undercall.text.Shown;

/** Lines of at most 80 columns, broken at blanks. */
final class Lines {
  static final int WIDTH = 80;
  private static final String INDENT = "  ";

  private final StringBuilder text = new StringBuilder();

  /** A blank line and a heading with its first letter large. */
  void heading(String heading) {
    text.append('\n');
    add(0, heading.substring(0, 1).toUpperCase(Locale.ROOT) + heading.substring(1));
  }

  /** A line; what does not fit follows on lines set in deeper. */
  void add(int depth, String line) {
    String rest = INDENT.repeat(depth) + Shown.steady(line, "?");
    while (width(rest) > WIDTH) {
      int cut = cut(rest, INDENT.length() * (depth + 2));
      text.append(rest.substring(0, cut).stripTrailing()).append('\n');
      rest = INDENT.repeat(depth + 2) + rest.substring(cut).stripLeading();
    }
    text.append(rest.stripTrailing()).append('\n');
  }

  private static int cut(String line, int least) {
    int hard = line.offsetByCodePoints(0, WIDTH);
    int blank = line.lastIndexOf(' ', hard);
    return blank > least ? blank : hard;
  }

  private static int width(String line) {
    return line.codePointCount(0, line.length());
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
