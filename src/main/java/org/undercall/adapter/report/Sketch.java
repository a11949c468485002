package org.undercall.adapter.report;

import java.util.List;
import org.undercall.text.Markup;

/**
 * A computed picture of preload against angle.
 *
 * @param about what it is computed from, in words
 * @param svg the picture, made by this program
 */
public record Sketch(String about, String svg) {
  private static final String CAUTION =
      "Computed sketch, not measured: an estimate to judge by, not a specification. The maker's"
          + " repair data rules.";

  static void add(Markup m, List<Sketch> sketches) {
    if (sketches.isEmpty()) {
      return;
    }
    m.leaf("h2", "Preload against angle: computed sketch", "id", "sketch");
    m.leaf("p", CAUTION, "class", "strong");
    for (Sketch sketch : sketches) {
      m.leaf("p", sketch.about());
      m.open("div", "class", "picture", "id", "sketch-picture").made(sketch.svg()).closeLine();
    }
  }
}
