package org.undercall.adapter.table;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.term.TorqueUnit;

/** The ways a unit of torque is written in tables. */
final class TorqueWord {
  /** By the letters alone, without blanks, dots and hyphens. */
  private static final Map<String, TorqueUnit> WORDS =
      Map.ofEntries(
          Map.entry("nm", TorqueUnit.NEWTON_METRE),
          Map.entry("newtonmetre", TorqueUnit.NEWTON_METRE),
          Map.entry("newtonmetres", TorqueUnit.NEWTON_METRE),
          Map.entry("newtonmeter", TorqueUnit.NEWTON_METRE),
          Map.entry("ftlb", TorqueUnit.POUND_FORCE_FOOT),
          Map.entry("ftlbs", TorqueUnit.POUND_FORCE_FOOT),
          Map.entry("ftlbf", TorqueUnit.POUND_FORCE_FOOT),
          Map.entry("lbft", TorqueUnit.POUND_FORCE_FOOT),
          Map.entry("lbsft", TorqueUnit.POUND_FORCE_FOOT),
          Map.entry("lbfft", TorqueUnit.POUND_FORCE_FOOT),
          Map.entry("footpounds", TorqueUnit.POUND_FORCE_FOOT),
          Map.entry("inlb", TorqueUnit.POUND_FORCE_INCH),
          Map.entry("inlbs", TorqueUnit.POUND_FORCE_INCH),
          Map.entry("inlbf", TorqueUnit.POUND_FORCE_INCH),
          Map.entry("lbin", TorqueUnit.POUND_FORCE_INCH),
          Map.entry("lbsin", TorqueUnit.POUND_FORCE_INCH),
          Map.entry("lbfin", TorqueUnit.POUND_FORCE_INCH),
          Map.entry("inchpounds", TorqueUnit.POUND_FORCE_INCH),
          Map.entry("kgfm", TorqueUnit.KILOGRAM_FORCE_METRE),
          Map.entry("kgm", TorqueUnit.KILOGRAM_FORCE_METRE),
          Map.entry("mkg", TorqueUnit.KILOGRAM_FORCE_METRE),
          Map.entry("kpm", TorqueUnit.KILOGRAM_FORCE_METRE),
          Map.entry("mkp", TorqueUnit.KILOGRAM_FORCE_METRE));

  private TorqueWord() {}

  /** The unit that a word means. */
  static Optional<TorqueUnit> of(String word) {
    String letters = word.toLowerCase(Locale.ROOT).replaceAll("[ .·⋅*∙×-]", "");
    return Optional.ofNullable(WORDS.get(letters));
  }
}
