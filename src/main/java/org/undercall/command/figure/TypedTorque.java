package org.undercall.command.figure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a torque as it is typed: {@code 110Nm}, {@code "62 lbf.ft"}. */
final class TypedTorque implements ITypeConverter<Torque> {
  static final String UNITS = "Nm, lbf.ft, lbf.in or kgf.m";
  private static final Pattern FORM =
      Pattern.compile("([0-9]{1,7}(?:\\.[0-9]{1,4})?)\\s?(\\D{1,8})");

  @Override
  public Torque convert(String text) {
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches() || new BigDecimal(matcher.group(1)).signum() == 0) {
      throw new TypeConversionException(
          "found '" + text + "', expected a torque such as 110Nm or 62lbf.ft");
    }
    return new Torque(new BigDecimal(matcher.group(1)), unit(matcher.group(2)));
  }

  /** Reads a unit of torque, whatever stands between its parts. */
  static TorqueUnit unit(String text) {
    return switch (text.toLowerCase(Locale.ROOT).replaceAll("[·.\\-\\s]", "")) {
      case "nm" -> TorqueUnit.NEWTON_METRE;
      case "lbfft" -> TorqueUnit.POUND_FORCE_FOOT;
      case "lbfin" -> TorqueUnit.POUND_FORCE_INCH;
      case "kgfm" -> TorqueUnit.KILOGRAM_FORCE_METRE;
      default -> throw new TypeConversionException("found unit '" + text + "', expected " + UNITS);
    };
  }

  /** Reads a unit alone. */
  static final class Unit implements ITypeConverter<TorqueUnit> {
    @Override
    public TorqueUnit convert(String text) {
      return unit(text);
    }
  }
}
