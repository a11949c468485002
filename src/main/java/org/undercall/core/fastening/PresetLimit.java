package org.undercall.core.fastening;

/**
 * From which preset twist on a warning is given.
 *
 * <p>No published limit for the preset twist of a control arm bush exists; this is a setting of the
 * workshop, and the default is a proposal of this program. It warns and forbids nothing.
 *
 * @param warn the preset twist, without sign, above which to warn; more than zero
 */
public record PresetLimit(Rotation warn) {
  /** A warning above 5 degrees: about 30 mm of height with an arm of 350 mm. */
  public static final PresetLimit PROPOSED = new PresetLimit(Rotation.degrees(5));

  public PresetLimit {
    Require.positive("limit of the preset twist", warn.degrees(), "°");
  }

  /** Whether a preset twist calls for a warning. */
  public boolean exceededBy(Rotation preset) {
    return preset.size().compareTo(warn) > 0;
  }

  /** The height tolerance this limit leaves an arm, below and above ride height. */
  public Range<Height> tolerance(ArmSwing arm) {
    return arm.tolerance(warn);
  }
}
