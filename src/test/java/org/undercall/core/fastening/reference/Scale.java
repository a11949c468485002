package org.undercall.core.fastening.reference;

import static java.util.Map.entry;

import java.util.Map;

/**
 * The units of the tables: what one of them is in millimetres, newtons, newton metres or kelvin.
 */
final class Scale {
  private static final double INCH = 25.4;
  private static final double POUND = 4.4482216152605;
  private static final double PSI = POUND / (INCH * INCH);

  private static final Map<String, Double> FACTORS =
      Map.ofEntries(
          entry("-", 1.0),
          entry("%", 0.01),
          entry("deg", 1.0),
          entry("rad", 1.0),
          entry("K", 1.0),
          entry("C", 1.0),
          entry("degC", 1.0),
          entry("1/K", 1.0),
          entry("1/degC", 1.0),
          entry("mm", 1.0),
          entry("um", 0.001),
          entry("in", INCH),
          entry("mm2", 1.0),
          entry("in2", INCH * INCH),
          entry("mm3", 1.0),
          entry("N", 1.0),
          entry("kN", 1000.0),
          entry("lbf", POUND),
          entry("kip", 1000 * POUND),
          entry("N.m", 1.0),
          entry("N.mm", 0.001),
          entry("lbf.in", POUND * INCH / 1000),
          entry("lbf.ft", POUND * INCH * 12 / 1000),
          entry("MPa", 1.0),
          entry("N/mm2", 1.0),
          entry("GPa", 1000.0),
          entry("psi", PSI),
          entry("kpsi", 1000 * PSI),
          entry("Mpsi", 1e6 * PSI),
          entry("mm/N", 1.0),
          entry("N/mm", 1.0),
          entry("kN/mm", 1000.0),
          entry("MN/m", 1000.0),
          entry("lbf/in", POUND / INCH),
          entry("Mlbf/in", 1e6 * POUND / INCH));

  private Scale() {}

  static boolean known(String unit) {
    return FACTORS.containsKey(unit);
  }

  static double of(String unit) {
    return FACTORS.get(unit);
  }
}
