package org.undercall.command.work;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.undercall.core.term.Job;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Vin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which car, which job and who: kept in the first line of a new session's log. */
public final class JobOptions {
  private static final int LONGEST = 60;
  private static final Pattern KILOMETRES = Pattern.compile("[0-9]{1,7}");

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--registration",
      paramLabel = "PLATE",
      description = "The car's registration, kept in the log.")
  private String registration;

  @Option(
      names = "--vin",
      paramLabel = "VIN",
      description = "The car's identification number, 17 characters, kept in the log.")
  private String vin;

  @Option(
      names = "--odometer",
      paramLabel = "KM",
      description = "The odometer in whole kilometres, kept in the log.")
  private String odometer;

  @Option(
      names = "--job",
      paramLabel = "NUMBER",
      description = "The number of the job, kept in the log.")
  private String number;

  @Option(names = "--technician", paramLabel = "NAME", description = "Who works, kept in the log.")
  private String technician;

  /** Made by the command line reader. */
  public JobOptions() {}

  /**
   * What was given.
   *
   * @throws ParameterException if one of them has a wrong form
   */
  Job job() {
    return new Job(
        text("--registration", registration),
        Optional.ofNullable(vin).map(this::read),
        Optional.ofNullable(odometer).map(this::kilometres),
        text("--job", number),
        text("--technician", technician));
  }

  private Optional<String> text(String option, String given) {
    Optional<String> text = Optional.ofNullable(given).map(String::strip);
    boolean odd =
        text.filter(
                t ->
                    t.isEmpty()
                        || t.length() > LONGEST
                        || t.chars().anyMatch(Character::isISOControl))
            .isPresent();
    if (odd) {
      throw wrong(option + " takes 1 to " + LONGEST + " characters in one line");
    }
    return text;
  }

  private Vin read(String given) {
    try {
      return Vin.of(given);
    } catch (IllegalArgumentException e) {
      throw wrong("--vin takes 17 digits or letters without I, O and Q, found \"" + given + "\"");
    }
  }

  private Measure kilometres(String given) {
    if (!KILOMETRES.matcher(given).matches()) {
      throw wrong("--odometer takes whole kilometres such as 84210, found \"" + given + "\"");
    }
    return new Measure(new BigDecimal(given), MeasureUnit.KILOMETRE);
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }
}
