package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;

/**
 * A measured value as it was called.
 *
 * @param value below zero after "minus"
 * @param unit empty if none was said
 * @param signed whether "plus" or "minus" was said
 */
record CalledMeasure(BigDecimal value, Optional<SpokenUnit> unit, boolean signed) {

  static CalledMeasure of(Intent intent) {
    return intent instanceof Intent.OfReading reading
        ? new CalledMeasure(reading.value(), reading.unit(), reading.signed())
        : of((Intent.OfNumber) intent);
  }

  private static CalledMeasure of(Intent.OfNumber number) {
    return new CalledMeasure(number.number().value(), number.unit(), false);
  }

  /** Whether its unit, if one was said, is this one; minutes are degrees. */
  boolean fits(MeasureUnit wanted) {
    return unit.isEmpty()
        || unit(unit.get())
            .map(u -> u == MeasureUnit.MINUTE ? MeasureUnit.DEGREE : u)
            .equals(Optional.of(wanted));
  }

  /** Whether it could be above or below zero. */
  boolean lacksSign() {
    return !signed && value.signum() != 0;
  }

  /** The value in the unit that was said, else in this one. */
  Measure in(MeasureUnit wanted) {
    return new Measure(value, unit.flatMap(CalledMeasure::unit).orElse(wanted));
  }

  /** Whether it is the same value. */
  boolean isLike(Measure other) {
    MeasureUnit wanted = other.inDegrees().unit();
    return fits(wanted) && in(wanted).inDegrees().equals(other.inDegrees());
  }

  private static Optional<MeasureUnit> unit(SpokenUnit spoken) {
    return switch (spoken) {
      case MILLIMETRES -> Optional.of(MeasureUnit.MILLIMETRE);
      case INCHES -> Optional.of(MeasureUnit.INCH);
      case DEGREES -> Optional.of(MeasureUnit.DEGREE);
      case MINUTES -> Optional.of(MeasureUnit.MINUTE);
      case BAR -> Optional.of(MeasureUnit.BAR);
      case KILOMETRES -> Optional.of(MeasureUnit.KILOMETRE);
      case NEWTON_METRES, FOOT_POUNDS, INCH_POUNDS -> Optional.empty();
    };
  }
}
