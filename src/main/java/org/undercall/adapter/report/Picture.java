package org.undercall.adapter.report;

import java.util.Locale;

/** The frame that the pictures of a report share: black on white, with words in place of it. */
final class Picture {
  private Picture() {}

  /** Begins a picture; the caller ends it. */
  static void open(Markup m, double wide, double high, String meaning) {
    m.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        String.format(Locale.ROOT, "0 0 %.0f %.0f", wide, high),
        "width",
        String.format(Locale.ROOT, "%.0f", wide),
        "height",
        String.format(Locale.ROOT, "%.0f", high),
        "role",
        "img",
        "aria-label",
        meaning,
        "alt",
        meaning,
        "font-family",
        "DejaVu Sans, Verdana, sans-serif",
        "font-size",
        "11");
    m.leaf("title", meaning);
  }
}
