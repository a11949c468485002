package org.undercall.core.fastening.reference;

/** The groups of outside values, each with the deviation it must stay within. */
enum Group {
  THREADS("Threads: d2, D1, d3 and stress area", 1, false),
  CLASSES("Property classes: strengths and elongation", 0, true),
  LOADS("Proof loads and ultimate loads", 1, false),
  VDI("Preload and torque at 90 % of yield", 2.5, false),
  FRICTION("Friction classes", 0, true),
  TIGHTENING("Tightening factors and their scatter", 0.5, true),
  NUT_FACTOR("Nut factors within the ranges used", 0, true),
  WORKED("Worked examples of preload and torque", 0.5, false),
  JOINT("Joint compliance and angle stage", 0.1, false),
  SCATTER("Torque alone against torque and angle", 0.1, false),
  ADAPTOR("Adaptor on a torque wrench", 0.2, false),
  TOOLS("Permissible deviation and calibration of torque tools", 0, true),
  WINDOW("Window of true torque", 0.1, false),
  UNITS("Units", 0, false),
  ARM("Arm rotation and preset twist (degrees; mm for the shift)", 0.01, false),
  BUSH("Bush moment and shear strain (printed with three digits)", 0.3, false),
  NUT_PROOF("Proof loads of nuts", 0, true),
  NUT_STRESS("Nominal stress of nuts on the stress area", 2.2, false),
  STRIPPING("Stripping: bending factors and shear ratios", 0.6, true),
  ENGAGEMENT("Length of engagement needed, next to a maker's trials", 45, false),
  SEAT_LIMIT("Largest pressure under a seat", 0, true),
  SEAT_SIZE("Seats of hexagon heads and nuts", 2, true),
  SEAT_FRICTION("Torque of flat and conical seats, angle under a ball", 3.5, false),
  EMBEDDING("Embedding by roughness and load", 0, true),
  PREVAILING("Prevailing torque of self-locking nuts", 0, true),
  PRINTED_TWICE("Torques printed in two units, ours rounded alike", 0, false),
  CLAMP("Clamp loads and torques by K of a locknut table", 1.2, false),
  EXPANSION("Thermal expansion of materials", 12, false),
  WAIST("Waist areas: 0.9 of the root diameter", 0.6, false),
  PRETENSION("Preload at 0.7 of the tensile strength, and its K", 0.5, false),
  SCATTER_PERCENT("Scatter in whole percents beside a tightening factor", 2.1, false),
  CONE_NUMBERS("Numbers in the formulas of cone and bolt ends", 0.01, true),
  EXAMPLES("Worked examples read, from inputs to every printed result", 1, false);

  private final String title;
  private final double tolerance;
  private final boolean transcribed;

  Group(String title, double tolerance, boolean transcribed) {
    this.title = title;
    this.tolerance = tolerance;
    this.transcribed = transcribed;
  }

  String title() {
    return title;
  }

  /** In percent; in the value's own unit for the arm. */
  double tolerance() {
    return tolerance;
  }

  /** Whether the values are a table that the code repeats, not something it computes. */
  boolean transcribed() {
    return transcribed;
  }

  boolean absolute() {
    return this == ARM;
  }

  String unit() {
    return absolute() ? "°" : "%";
  }
}
