package org.undercall.core.fastening;

/** The parts that a bolt clamps, as a spring (VDI 2230 Part 1, section 5.1.2). */
public sealed interface ClampedParts permits PressureCone, ConeStack, SleeveStack {

  /** The compliance δP of the clamped parts, all of one material. */
  Compliance compliance(Elasticity material);

  /** The clamped length lK. */
  Length clamped();
}
