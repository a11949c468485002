package org.undercall.core.fastening.reference;

/** What the page says about values that were left out or have no source. */
final class CheckValuesNotes {
  static final String TEXT =
      """

      Three more are wrong in words and have tests of their own: deviations of 1.5 to 3 % and three
      loadings for torque tools; an adaptor at 90 degrees having the greatest effect; a lever that is
      a product instead of a sum.

      ## Left out

      - The torque of M4 10.9 at friction 0.12 (4.6 N·m) is a probable misprint: it lies 5.7 % above
        the formula, while the values around it agree. A test holds that it differs.
      - Preloads that go on elastically above yield (4-2 and 4-3 "elastic total" and "utilisation",
        the high end of 70 N·m + 45°): the program gives the yield preload there and no elastic
        number. A test holds that ours is cut off.
      - Stress areas of M14x1.25 and M24x1.5: the standard has no row for them.
      - Printed pairs of rounded torques from manuals: they test the printer's rounding, up to 2 %.

      - Rows that were read and that nothing here computes are not kept in the tables: heights of nuts
        (77), washers, flanges and socket heads (66), scatter and relaxation without a formula (83),
        snug loads, rod bolts and turns of construction bolts (71), wheel rates and rubber (63),
        limits of re-use (109), locknuts of inch sizes and the fifth removal (81), examples of slip,
        margins, inserts and square threads (242), and single figures of makers (91).

      ## Facts of the trade

      Common practice, no source:

      - A control arm bolt M12x1.5 of class 8.8, 68 N·m and then 90 degrees, is plausible; the angle
        stage ends near yield.
      - A joint nut M14x1.5 on class 10.9 at 175 N·m is plausible. At friction 0.12 it stays well
        below yield; at 0.08, the least of class B, it reaches it (2 % above) with a plain hexagon seat.
      - A limit for the preset twist of a bush has not been published; the warning is a setting.
      """;

  private CheckValuesNotes() {}
}
