package org.undercall.core.fastening;

import org.undercall.core.term.Torque;

/**
 * A hand torque tool by type and class (ISO 6789-1:2017; the same letters as in ISO 6789:2003).
 *
 * <p>Type I shows the torque, type II releases at a set torque. The figures but those of II A were
 * taken from memory of the standard, not from its text.
 */
public enum WrenchClass {
  I_A("wrench, torsion or flexion bar", 6, 5),
  I_B("wrench, rigid housing, scale or dial", 4, 5),
  I_C("wrench, rigid housing, electronic", 4, 5),
  I_D("screwdriver, scale or dial", 6, 5),
  I_E("screwdriver, electronic", 4, 5),
  II_A("wrench, adjustable, graduated", 4, 5),
  II_B("wrench, fixed", 4, 10),
  II_C("wrench, adjustable, not graduated", 4, 10),
  II_D("screwdriver, adjustable, graduated", 6, 5),
  II_E("screwdriver, fixed", 6, 10),
  II_F("screwdriver, adjustable, not graduated", 6, 10),
  II_G("wrench, flexion bar, adjustable, graduated", 6, 5);

  private static final Torque SMALL = Torque.newtonMetres("10");
  private static final int SMALL_PERCENT = 6;

  private final String words;
  private final int percent;
  private final int readings;

  WrenchClass(String words, int percent, int readings) {
    this.words = words;
    this.percent = percent;
    this.readings = readings;
  }

  /** What kind of tool this is, in words. */
  public String words() {
    return words;
  }

  /** Whether the tool shows the torque (type I) rather than releases at a set one (type II). */
  public boolean indicating() {
    return name().startsWith("I_");
  }

  /** The permissible deviation for a tool with this largest torque. */
  public Deviation permissible(Torque largest) {
    boolean small = largest.compareTo(SMALL) <= 0;
    return new Deviation(small ? SMALL_PERCENT : percent);
  }

  /** How often the tool is loaded to its largest torque before it is calibrated. */
  public int preloadings() {
    return indicating() ? 1 : 5;
  }

  /** How many readings are taken at each calibration point. */
  public int readings() {
    return readings;
  }
}
