package org.undercall.core.fastening;

import java.util.Arrays;
import java.util.Optional;
import org.undercall.core.term.HeadMarking;

/**
 * The property class of a bolt with its strengths (ISO 898-1:2013, table 3).
 *
 * <p>The strengths of class 8.8 rise above a nominal diameter of 16 mm; class 9.8 exists up to 16
 * mm only.
 */
public enum PropertyClass {
  C4_6("4.6", 400, 240, 225, 22),
  C4_8("4.8", 420, 340, 310, 0),
  C5_6("5.6", 500, 300, 280, 20),
  C5_8("5.8", 520, 420, 380, 0),
  C6_8("6.8", 600, 480, 440, 0),
  C8_8("8.8", 800, 640, 580, 12),
  C9_8("9.8", 900, 720, 650, 10),
  C10_9("10.9", 1040, 940, 830, 9),
  C12_9("12.9", 1220, 1100, 970, 8);

  private static final double SPLIT = 16;

  private final String marking;
  private final double tensile;
  private final double yield;
  private final double proof;
  private final int elongation;

  PropertyClass(String marking, double tensile, double yield, double proof, int elongation) {
    this.marking = marking;
    this.tensile = tensile;
    this.yield = yield;
    this.proof = proof;
    this.elongation = elongation;
  }

  /** The class with this head marking; empty if the standard has none, so it must be refused. */
  public static Optional<PropertyClass> of(HeadMarking marking) {
    return Arrays.stream(values()).filter(c -> c.marking.equals(marking.text())).findFirst();
  }

  /** The head marking. */
  public HeadMarking marking() {
    return new HeadMarking(marking);
  }

  /** Whether the standard has this class for the thread. */
  public boolean exists(ThreadSize thread) {
    return this != C9_8 || !aboveSplit(thread);
  }

  /** The least tensile strength Rm,min. */
  public Stress tensileStrength(ThreadSize thread) {
    return new Stress(raised(thread) ? 830 : tensile);
  }

  /** The least yield strength: ReL, Rpf or Rp0.2, whichever the standard gives for the class. */
  public Stress yieldStrength(ThreadSize thread) {
    return new Stress(raised(thread) ? 660 : yield);
  }

  /** The proof stress Sp. */
  public Stress proofStress(ThreadSize thread) {
    return new Stress(raised(thread) ? 600 : proof);
  }

  /** The least ultimate load: tensile strength on the nominal stress area. */
  public Force ultimateLoad(ThreadSize thread) {
    return tensileStrength(thread).on(thread.stressArea());
  }

  /** The proof load: proof stress on the nominal stress area. */
  public Force proofLoad(ThreadSize thread) {
    return proofStress(thread).on(thread.stressArea());
  }

  /** The least elongation after fracture in percent; empty where the standard gives none. */
  public Optional<Integer> elongationPercent() {
    return elongation == 0 ? Optional.empty() : Optional.of(elongation);
  }

  /**
   * The least elongation after fracture as a share of one: A on a machined test piece with a gauge
   * of five diameters, where the standard gives it.
   *
   * <p>For 4.8, 5.8 and 6.8 it gives only Af of the full-size bolt; 0.14, 0.10 and 0.08 are those
   * of an older edition (read).
   */
  public double leastElongation() {
    return switch (this) {
      case C4_8 -> 0.14;
      case C5_8 -> 0.10;
      case C6_8 -> 0.08;
      default -> elongation / 100.0;
    };
  }

  /** The first number of the class: a hundredth of the nominal tensile strength in MPa. */
  public int firstNumber() {
    return Integer.parseInt(marking.substring(0, marking.indexOf('.')));
  }

  private boolean raised(ThreadSize thread) {
    return this == C8_8 && aboveSplit(thread);
  }

  private static boolean aboveSplit(ThreadSize thread) {
    return thread.diameter().millimetres() > SPLIT;
  }

  @Override
  public String toString() {
    return marking;
  }
}
