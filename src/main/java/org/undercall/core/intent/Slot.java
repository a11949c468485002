package org.undercall.core.intent;

import static org.undercall.core.intent.SpokenUnit.DEGREES;
import static org.undercall.core.intent.SpokenUnit.FOOT_POUNDS;
import static org.undercall.core.intent.SpokenUnit.INCHES;
import static org.undercall.core.intent.SpokenUnit.INCH_POUNDS;
import static org.undercall.core.intent.SpokenUnit.MILLIMETRES;
import static org.undercall.core.intent.SpokenUnit.NEWTON_METRES;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import org.undercall.core.intent.Intent.OfNumber;
import org.undercall.core.intent.Intent.OfSide;
import org.undercall.core.intent.Intent.OfStep;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.intent.Intent.Unclear.Reason;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.JobField;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.SpellingAlphabet;
import org.undercall.core.term.TimerName;
import org.undercall.core.term.Trouble;

/** A part of a wording that stands for many words, such as a number or a side. */
enum Slot {
  /** A torque: a number, with or without its unit. */
  TORQUE,
  /** An angle: a number, with or without its unit. */
  ANGLE,
  /** A length: a number, with or without its unit. */
  LENGTH,
  /** A number, with or without any unit. */
  VALUE,
  /** A number with its sign, with or without its unit. */
  SIGNED,
  /** Whole degrees, which may be left out, and minutes, with or without a sign. */
  DEGREES_AND_MINUTES,
  /** The number of a step, from 1. */
  STEP,
  /** A position in a set, from 1. */
  POSITION,
  /** How many, from 2. */
  COUNT,
  /** A whole set by its number, such as "five of five" or "all five". */
  ALL,
  /** A side, a corner or the whole car. */
  SIDE,
  /** A side or a corner. */
  WHEEL_SIDE,
  /** A side or a corner before what shows the load; "left" and "right" alone will do. */
  SIDE_SAID,
  /** New hardware and what may follow it in the same answer. */
  HARDWARE_AND_MORE,
  /** A property class on a bolt head. */
  MARKING,
  /** How often something was done: "once", "twice", up to "nine times". */
  TIMES,
  /** Why a step is put off. */
  REASON,
  /** Why a step is closed out of order. */
  CAUSE,
  /** Why a wrench is used although its calibration is over. */
  EXCUSE,
  /** What went wrong, with or without "number" and a position before it. */
  TROUBLE,
  /** A found fault, extra work or a part to order, with or without a side after it. */
  FINDING,
  /** A registration, spelled. */
  REGISTRATION,
  /** A vehicle identification number or a part of it, spelled. */
  VIN,
  /** The odometer, digit by digit. */
  ODOMETER,
  /** The number of a job, spelled. */
  JOB_NUMBER,
  /** Who works, spelled. */
  TECHNICIAN,
  /** Who saw it, spelled. */
  WITNESS_NAME,
  /** The name of a timer. */
  TIMER,
  /** Whole minutes and the name of a timer. */
  MINUTES_AND_TIMER;

  /** The longest timer that can be started by voice, in minutes. */
  static final int MOST_MINUTES = 180;

  /** The largest set of fasteners that is listened for. */
  static final int LARGEST_SET = 12;

  private static final int LARGEST_STEP = 999;
  private static final Pattern MARKING_FORM = Pattern.compile("[1-9][0-9]?\\.[1-9]");

  /** The slot with a name as written between angle brackets. */
  static Slot named(String name) {
    return valueOf(name.replace(' ', '_').toUpperCase(java.util.Locale.ROOT));
  }

  /** The units that may follow the number. */
  Set<SpokenUnit> units() {
    return switch (this) {
      case TORQUE -> Set.of(NEWTON_METRES, FOOT_POUNDS, INCH_POUNDS);
      case ANGLE -> Set.of(DEGREES);
      case LENGTH -> Set.of(MILLIMETRES, INCHES);
      case VALUE -> Fillings.WITHOUT_MINUTES;
      default -> Set.of();
    };
  }

  /** Whether it is spelled, letter by letter, and could always go on. */
  boolean isSpelled() {
    return switch (this) {
      case REGISTRATION, VIN, ODOMETER, JOB_NUMBER, TECHNICIAN, WITNESS_NAME -> true;
      default -> false;
    };
  }

  /** The words to choose from, if the slot is a side or a reason; else empty. */
  List<String> choices() {
    return switch (this) {
      case SIDE -> List.copyOf(SlotWords.SIDES.values());
      case WHEEL_SIDE -> Fillings.wheelSides();
      case CAUSE -> List.copyOf(SlotWords.CAUSES.values());
      case EXCUSE -> List.copyOf(SlotWords.EXCUSES.values());
      case TROUBLE -> SlotWords.TROUBLES.values().stream().map(words -> words.get(0)).toList();
      case FINDING -> SlotWords.FINDINGS.values().stream().map(words -> words.get(0)).toList();
      case REASON -> SlotWords.REASONS.values().stream().map(words -> words.get(0)).toList();
      default -> List.of();
    };
  }

  /** Reads the words that fill the slot: the intent of this kind, or why there is none. */
  Intent read(IntentKind kind, List<String> words) {
    return switch (this) {
      case TORQUE, ANGLE, LENGTH, VALUE -> quantity(kind, words);
      case SIGNED -> Readings.signed(kind, words);
      case DEGREES_AND_MINUTES -> Readings.minutes(kind, words);
      case STEP -> step(kind, words);
      case POSITION -> ofSet(words, n -> new Intent.OfPosition(kind, n));
      case COUNT -> ofSet(words, n -> new Intent.Counted(kind, n, n));
      case ALL -> all(kind, words);
      case SIDE, WHEEL_SIDE -> side(kind, String.join(" ", words));
      case SIDE_SAID ->
          Optional.ofNullable(SlotWords.SIDES_SAID.get(String.join(" ", words)))
              .<Intent>map(side -> new OfSide(kind, side))
              .orElse(new Unclear(Reason.NOT_A_PHRASE));
      case HARDWARE_AND_MORE -> OneAnswer.read(words);
      case MARKING -> marking(words);
      case TIMES -> times(kind, String.join(" ", words));
      case CAUSE -> named(SlotWords.CAUSES, String.join(" ", words), Intent.OutOfOrder::new);
      case EXCUSE -> named(SlotWords.EXCUSES, String.join(" ", words), Intent.Overdue::new);
      case TROUBLE -> trouble(words);
      case REGISTRATION, VIN, ODOMETER, JOB_NUMBER, TECHNICIAN -> job(words);
      case WITNESS_NAME ->
          SpellingAlphabet.read(words)
              .filter(name -> !name.isEmpty())
              .<Intent>map(name -> new Intent.OfWitness(kind, name))
              .orElse(new Unclear(Reason.NOT_A_PHRASE));
      case FINDING -> finding(String.join(" ", words));
      case REASON -> reason(String.join(" ", words));
      case TIMER ->
          timer(String.join(" ", words))
              .<Intent>map(name -> new Intent.OfTimer(kind, name))
              .orElse(new Unclear(Reason.NOT_A_PHRASE));
      case MINUTES_AND_TIMER -> setTimer(String.join(" ", words));
    };
  }

  private Intent quantity(IntentKind kind, List<String> words) {
    for (Map.Entry<List<String>, SpokenUnit> unit : SlotWords.UNIT_WORDS.entrySet()) {
      List<String> ending = unit.getKey();
      int numberEnd = words.size() - ending.size();
      if (numberEnd >= 0
          && words.subList(numberEnd, words.size()).equals(ending)
          && units().contains(unit.getValue())) {
        return number(kind, words.subList(0, numberEnd), Optional.of(unit.getValue()));
      }
    }
    return number(kind, words, Optional.empty());
  }

  private static Intent number(IntentKind kind, List<String> words, Optional<SpokenUnit> unit) {
    NumberReading reading = SpokenNumbers.read(words);
    return reading instanceof NumberReading.Read read
        ? new OfNumber(kind, read.number(), unit)
        : refused(reading);
  }

  private static Optional<TimerName> timer(String words) {
    return SlotWords.TIMERS.entrySet().stream()
        .filter(timer -> timer.getValue().equals(words))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static Intent setTimer(String words) {
    for (String joint : SlotWords.MINUTES_FOR) {
      int at = words.indexOf(" " + joint + " ");
      if (at > 0) {
        List<String> number = List.of(words.substring(0, at).split(" ", -1));
        return setTimer(number, timer(words.substring(at + joint.length() + 2)));
      }
    }
    return new Unclear(Reason.NOT_A_PHRASE);
  }

  private static Intent setTimer(List<String> words, Optional<TimerName> timer) {
    NumberReading reading = SpokenNumbers.read(words);
    if (!(reading instanceof NumberReading.Read read)) {
      return refused(reading);
    }
    return timer.isPresent() && isWhole(read, MOST_MINUTES)
        ? new Intent.SetTimer(timer.get(), read.number().value().intValueExact())
        : new Unclear(Reason.NOT_A_PHRASE);
  }

  private static boolean isWhole(NumberReading.Read read, int most) {
    BigDecimal value = read.number().value();
    return value.scale() == 0
        && value.signum() > 0
        && value.compareTo(BigDecimal.valueOf(most)) <= 0;
  }

  private static Intent step(IntentKind kind, List<String> words) {
    NumberReading reading = SpokenNumbers.read(words);
    if (!(reading instanceof NumberReading.Read read)) {
      return refused(reading);
    }
    return isWhole(read, LARGEST_STEP)
        ? new OfStep(kind, read.number().value().intValueExact())
        : new Unclear(Reason.NOT_A_PHRASE);
  }

  private static Intent ofSet(List<String> words, IntFunction<Intent> intent) {
    NumberReading reading = SpokenNumbers.read(words);
    if (!(reading instanceof NumberReading.Read read)) {
      return refused(reading);
    }
    return isWhole(read, LARGEST_SET)
        ? intent.apply(read.number().value().intValueExact())
        : new Unclear(Reason.NOT_A_PHRASE);
  }

  private static Intent all(IntentKind kind, List<String> words) {
    int of = words.indexOf(SlotWords.OF);
    if (of < 0) {
      boolean every = !words.isEmpty() && words.get(0).equals(SlotWords.EVERY);
      return every
          ? ofSet(words.subList(1, words.size()), n -> new Intent.Counted(kind, n, n))
          : new Unclear(Reason.NOT_A_PHRASE);
    }
    return ofSet(
        words.subList(0, of),
        number ->
            ofSet(
                words.subList(of + 1, words.size()),
                whole -> new Intent.Counted(kind, number, whole)));
  }

  private Intent side(IntentKind kind, String words) {
    for (Map.Entry<Side, String> side : SlotWords.SIDES.entrySet()) {
      if (side.getValue().equals(words) && (this == SIDE || side.getKey() != Side.CAR)) {
        return new OfSide(kind, side.getKey());
      }
    }
    return new Unclear(Reason.NOT_A_PHRASE);
  }

  private static Intent marking(List<String> words) {
    NumberReading reading = SpokenNumbers.read(words);
    if (!(reading instanceof NumberReading.Read read)) {
      return refused(reading);
    }
    String text = read.number().value().toPlainString();
    return MARKING_FORM.matcher(text).matches()
        ? new Intent.Marking(new HeadMarking(text))
        : new Unclear(Reason.NOT_A_PHRASE);
  }

  private static Intent times(IntentKind kind, String words) {
    int number = SlotWords.TIMES.indexOf(words);
    return number > 0
        ? new OfNumber(
            kind,
            new SpokenNumber(BigDecimal.valueOf(number), SpokenNumber.Style.WORDS),
            Optional.empty())
        : new Unclear(Reason.NOT_A_PHRASE);
  }

  private static Intent reason(String words) {
    for (Map.Entry<PutOffReason, List<String>> reason : SlotWords.REASONS.entrySet()) {
      if (reason.getValue().contains(words)) {
        return new Intent.PutOff(reason.getKey());
      }
    }
    return new Unclear(Reason.NOT_A_PHRASE);
  }

  private static <T> Intent named(Map<T, String> names, String words, Function<T, Intent> intent) {
    return names.entrySet().stream()
        .filter(name -> name.getValue().equals(words))
        .map(name -> intent.apply(name.getKey()))
        .findFirst()
        .orElse(new Unclear(Reason.NOT_A_PHRASE));
  }

  private static Intent trouble(List<String> words) {
    String all = String.join(" ", words);
    for (Map.Entry<Trouble, List<String>> trouble : SlotWords.TROUBLES.entrySet()) {
      for (String wording : trouble.getValue()) {
        if (all.equals(wording)) {
          return new Intent.OfTrouble(trouble.getKey(), Optional.empty());
        }
        if (all.startsWith(SlotWords.NUMBER + " ") && all.endsWith(" " + wording)) {
          int end = words.size() - wording.split(" ", -1).length;
          return ofSet(
              words.subList(1, Math.max(1, end)),
              n -> new Intent.OfTrouble(trouble.getKey(), Optional.of(n)));
        }
      }
    }
    return new Unclear(Reason.NOT_A_PHRASE);
  }

  private static Intent finding(String words) {
    for (Map.Entry<Finding, List<String>> finding : SlotWords.FINDINGS.entrySet()) {
      for (String wording : finding.getValue()) {
        if (words.equals(wording)) {
          return new Intent.OfFinding(finding.getKey(), Optional.empty());
        }
        for (Map.Entry<Side, String> side : SlotWords.SIDES.entrySet()) {
          if (words.equals(wording + " " + side.getValue())) {
            return new Intent.OfFinding(finding.getKey(), Optional.of(side.getKey()));
          }
        }
      }
    }
    return new Unclear(Reason.NOT_A_PHRASE);
  }

  private Intent job(List<String> words) {
    return SpellingAlphabet.read(words)
        .<Intent>map(text -> new Intent.OfJob(JobField.valueOf(name()), text))
        .orElse(new Unclear(Reason.NOT_A_PHRASE));
  }

  static Intent refused(NumberReading reading) {
    boolean several = reading.equals(new NumberReading.Refused(NumberReading.Refusal.AMBIGUOUS));
    return new Unclear(several ? Reason.AMBIGUOUS_NUMBER : Reason.NOT_A_PHRASE);
  }
}
