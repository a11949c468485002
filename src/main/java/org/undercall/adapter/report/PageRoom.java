package org.undercall.adapter.report;

import java.util.List;

/** How much room is left on a page, in lines of text, reckoned from the lengths of its texts. */
final class PageRoom {
  private static final int LONGEST = 120;
  private static final int HEADING = 3;

  private int left;

  PageRoom(int lines) {
    this.left = lines;
  }

  /** A text of at most 120 characters; what is cut off stands in the report. */
  static String cut(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST - 1)).stripTrailing() + "…";
  }

  /** How many lines a text takes in a column of so many characters. */
  static int lines(String text, int columns) {
    return Math.max(1, (text.length() + columns - 1) / columns);
  }

  /**
   * How many items of a list there is room for, at least one; their lines are taken.
   *
   * @param lines how many lines each item takes
   * @param after how many lists follow, each of which needs room for its heading and an item
   */
  int fit(List<Integer> lines, int after) {
    left -= HEADING;
    int reserved = after * (HEADING + 2);
    int shown = 0;
    while (shown < lines.size() && (shown == 0 || lines.get(shown) < left - reserved)) {
      left -= lines.get(shown);
      shown++;
    }
    return shown;
  }
}
