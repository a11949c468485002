package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.NumberNames;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;
import org.undercall.core.term.Trouble;

/** The words for values, units, sides and conditions. */
final class Words {
  private static final int HUNDRED = 100;
  private static final int MINUTES_IN_A_DEGREE = 60;

  /** A unified thread: diameter with its fraction, threads to the inch, series. */
  private static final Pattern UNIFIED =
      Pattern.compile("(#[0-9]+|(?:[1-9] )?([1-9][0-9]?)/([0-9]+)|[1-9])-([0-9]+) (UN[A-Z]*)");

  private static final Map<String, String> FRACTIONS =
      Map.of("2", "half", "4", "quarter", "8", "eighth", "16", "sixteenth");

  private static final int MOST_NAMED = 3;

  private Words() {}

  /** A value digit by digit: 110 is "one one zero", -7.5 is "minus seven point five". */
  static String digits(BigDecimal value) {
    String minus = value.signum() < 0 ? "minus " : "";
    return minus + digits(value.abs().toPlainString());
  }

  private static String digits(String plain) {
    StringBuilder spoken = new StringBuilder();
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      spoken
          .append(spoken.isEmpty() ? "" : " ")
          .append(c == '.' ? "point" : NumberNames.of(c - '0'));
    }
    return spoken.toString();
  }

  /** A count in words below a hundred, a larger one in figures. */
  static String count(int number) {
    if (number == 0) {
      return "no";
    }
    return number < HUNDRED ? NumberNames.of(number) : Integer.toString(number);
  }

  /** Numbers one after the other: "one, three, five". */
  static String numbers(List<Integer> numbers) {
    return numbers.stream().map(Words::count).collect(Collectors.joining(", "));
  }

  /** A count of things: "one step", "two steps". */
  static String count(int number, String thing) {
    return count(number) + " " + thing + (number == 1 ? "" : "s");
  }

  static String unit(TorqueUnit unit) {
    return switch (unit) {
      case NEWTON_METRE -> "newton metres";
      case POUND_FORCE_FOOT -> "foot pounds";
      case POUND_FORCE_INCH -> "inch pounds";
      case KILOGRAM_FORCE_METRE -> "kilogram metres";
    };
  }

  static String unit(MeasureUnit unit) {
    return switch (unit) {
      case MILLIMETRE -> "millimetres";
      case INCH -> "inches";
      case DEGREE -> "degrees";
      case MINUTE -> "minutes";
      case BAR -> "bar";
      case KILOMETRE -> "kilometres";
    };
  }

  static String measure(Measure value) {
    return value.unit() == MeasureUnit.MINUTE
        ? inMinutes(value.amount().intValueExact())
        : digits(value.amount()) + " " + unit(value.unit());
  }

  /** Minutes of arc: "minus one degree thirty minutes". */
  private static String inMinutes(int all) {
    int degrees = Math.abs(all) / MINUTES_IN_A_DEGREE;
    int minutes = Math.abs(all) % MINUTES_IN_A_DEGREE;
    String whole =
        degrees == 0
            ? ""
            : digits(BigDecimal.valueOf(degrees)) + (degrees == 1 ? " degree " : " degrees ");
    String rest =
        minutes == 0 ? "zero minutes" : spoken(minutes) + " minute" + (minutes == 1 ? "" : "s");
    return (all < 0 ? "minus " : "") + whole + rest;
  }

  /** The kind, value and unit of a stage: "torque, one one zero newton metres". */
  static String stage(Stage stage) {
    if (stage instanceof Stage.TorqueStage torque) {
      String adaptor = torque.dialled().isPresent() ? "adaptor on, set the wrench to " : "";
      String check = torque.form() == Stage.TorqueStage.Form.CHECK_PASS ? "check pass, " : "";
      return check + "torque, " + adaptor + value(torque);
    }
    boolean back = stage instanceof Stage.AngleStage angle && angle.backOff();
    return (back ? "back off, " : "angle, ") + value(stage);
  }

  /** The kind and value of a stage: "torque one one zero", "nine zero degrees". */
  static String inBrief(Stage stage, boolean unit) {
    if (stage instanceof Stage.AngleStage angle) {
      return (angle.backOff() ? "back off " : "") + value(stage);
    }
    Stage.TorqueStage torque = (Stage.TorqueStage) stage;
    if (torque.dialled().isPresent()) {
      return stage(stage);
    }
    String kind = torque.form() == Stage.TorqueStage.Form.CHECK_PASS ? "check pass " : "torque ";
    String value = value(torque);
    return kind + (unit ? value : value.replace(" " + unit(stage), ""));
  }

  static String torque(Torque torque) {
    return digits(torque.amount()) + " " + unit(torque.unit());
  }

  /** The value and unit of a stage: "one one zero newton metres". */
  static String value(Stage stage) {
    if (stage instanceof Stage.TorqueStage torque
        && torque.form() == Stage.TorqueStage.Form.RANGE) {
      String least = digits(torque.least().amount());
      return "from " + least + " to " + torque(torque.most());
    }
    return digits(stage.amount()) + " " + unit(stage);
  }

  static String unit(Stage stage) {
    return stage instanceof Stage.TorqueStage torque ? unit(torque.target().unit()) : "degrees";
  }

  /** A thread designation: M12x1.5 is "M 12 by 1.5". */
  static String thread(String designation) {
    Matcher unified = UNIFIED.matcher(designation);
    if (unified.matches()) {
      String series = String.join(" ", unified.group(5).split(""));
      return diameter(unified) + ", " + unified.group(4) + " threads, " + series;
    }
    return designation.replaceFirst("M", "M ").replace("x", " by ");
  }

  /** "one half inch", "seven sixteenths inch", "number ten". */
  private static String diameter(Matcher unified) {
    if (unified.group(1).startsWith("#")) {
      return "number " + count(Integer.parseInt(unified.group(1).substring(1)));
    }
    if (unified.group(3) == null) {
      return count(Integer.parseInt(unified.group(1))) + " inch";
    }
    int over = Integer.parseInt(unified.group(2).strip());
    String whole = unified.group(1).replace(unified.group(2) + "/" + unified.group(3), "").strip();
    String name = FRACTIONS.get(unified.group(3)) + (over == 1 ? "" : "s");
    String part = count(over) + " " + name;
    return (whole.isEmpty() ? "" : count(Integer.parseInt(whole)) + " and ") + part + " inch";
  }

  static String marking(HeadMarking marking) {
    return digits(marking.text())
        .replace("one zero point", "ten point")
        .replace("one two point", "twelve point");
  }

  static String side(Side side) {
    return side.place();
  }

  /** The side or corner without "side": "left", "front left"; the whole car as such. */
  static String of(Side side) {
    return side == Side.CAR ? side.place() : side.words();
  }

  /** A number and the side of a step: "three, left". */
  static String step(String number, Walk.Place place) {
    return number + (place.ref().side() == Side.CAR ? "" : ", " + place.ref().side().words());
  }

  static String step(StepRef ref, String title) {
    return ref.side() == Side.CAR ? title : ref.side().words() + ", " + title;
  }

  /** The side and the title as the beginning of a sentence. */
  static String step(StepRef ref, String title, String between) {
    boolean one = between.equals(", ");
    return sentence(
        ref.side() == Side.CAR
            ? title
            : ref.side().words() + between + (one ? lower(title) : title));
  }

  static String condition(LoadCondition condition) {
    return switch (condition) {
      case ANY -> "any height";
      case RIDE_HEIGHT -> "ride height";
      case FULL_DROOP -> "full droop";
    };
  }

  static String proof(LoadProof proof) {
    return switch (proof) {
      case WHEELS_CARRY_THE_CAR -> "wheels carry the car";
      case KNUCKLE_JACKED_BODY_LIFTING -> "knuckle jacked, body lifting";
      case ARCH_HEIGHT_WITHIN_TOLERANCE -> "arch height within tolerance";
      case SUSPENSION_HANGS_FREE -> "suspension hangs free";
    };
  }

  static String reason(PutOffReason reason) {
    return switch (reason) {
      case RIDE_HEIGHT -> "for ride height";
      case FULL_DROOP -> "for full droop";
      case WAITING_FOR_PARTS -> "waiting for parts";
      case TOOL_MISSING -> "tool missing";
      case NO_WITNESS -> "waiting for a witness";
      case LATER -> "for later";
    };
  }

  static String trouble(Trouble trouble) {
    return switch (trouble) {
      case THREAD_STRIPPED -> "thread stripped";
      case CROSS_THREADED -> "cross-threaded";
      case BROKEN -> "broken";
      case SEIZED -> "seized";
      case KEEPS_TURNING -> "keeps turning";
      case TURNED_TOO_FAR -> "turned too far";
      case TORQUE_NOT_REACHED -> "torque not reached";
      case WRONG_HARDWARE -> "wrong hardware";
      case MARKINGS_DIFFER -> "markings differ";
      case PART_MISSING -> "part missing";
      case SEAT_DAMAGED -> "seat damaged";
    };
  }

  /** What went wrong, of a set with its position: "number three, broken". */
  static String trouble(Trouble trouble, Optional<Integer> position) {
    return position.map(n -> "number " + count(n) + ", ").orElse("") + trouble(trouble);
  }

  static String finding(Finding finding) {
    return switch (finding) {
      case FOUND_FAULT -> "found fault";
      case EXTRA_WORK -> "extra work";
      case PART_TO_ORDER -> "part to order";
    };
  }

  static String reason(OverdueReason reason) {
    return switch (reason) {
      case NO_OTHER_WRENCH -> "no other wrench here";
      case CHECKED_ON_A_TESTER -> "checked on the tester";
      case AS_TOLD -> "as told";
    };
  }

  static String reason(OrderReason reason) {
    return switch (reason) {
      case AS_THE_MAKER_SAYS -> "as the maker says";
      case DONE_BY_SOMEBODY_ELSE -> "done by somebody else";
      case NOT_ON_THIS_CAR -> "missing on this car";
    };
  }

  /** Up to three steps by title, and how many more. */
  static String steps(List<Walk.Place> places) {
    String named =
        places.stream()
            .limit(MOST_NAMED)
            .map(p -> step(p.ref(), p.step().head().title()))
            .collect(Collectors.joining("; "));
    int more = places.size() - MOST_NAMED;
    return more > 0 ? named + "; and " + count(more) + " more" : named;
  }

  /** A time: "twenty seconds", "three minutes twenty"; from an hour on without the seconds. */
  static String time(long seconds) {
    long hours = seconds / 3600;
    if (hours > 0) {
      long over = seconds % 3600 / 60;
      String whole = count((int) hours, "hour");
      return over == 0 ? whole : whole + " " + spoken(over);
    }
    long minutes = seconds / 60;
    long rest = seconds % 60;
    if (minutes == 0) {
      return spoken(rest) + (rest == 1 ? " second" : " seconds");
    }
    String whole = spoken(minutes) + (minutes == 1 ? " minute" : " minutes");
    return rest == 0 ? whole : whole + " " + spoken(rest);
  }

  /** A part of a time; what could be taken for thirty to ninety is read by its digits. */
  private static String spoken(long number) {
    boolean teen = number >= 13 && number <= 19;
    return teen ? digits(BigDecimal.valueOf(number)) : count((int) number);
  }

  /** With a small first letter, if it is a capital of a word and not of an abbreviation. */
  private static String lower(String title) {
    boolean word = title.length() > 1 && Character.isLowerCase(title.charAt(1));
    return word ? title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1) : title;
  }

  /** The first letter as a capital. */
  static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
