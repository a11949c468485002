package org.undercall.core.intent;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.SpokenNumber.Style;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.JobField;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.TimerName;
import org.undercall.core.term.Trouble;

/** Phrases made by hand for each slot, with the intent that they must give. */
final class Samples {
  /** Every kind that is found by its words. */
  static final Set<IntentKind> SPOKEN =
      EnumSet.complementOf(
          EnumSet.of(
              IntentKind.NOTE_TEXT,
              IntentKind.DENIED,
              IntentKind.TIMER_ENDED,
              IntentKind.NOTHING_HEARD,
              IntentKind.CLOCK_JUMPED,
              IntentKind.UNCLEAR));

  private Samples() {}

  /** A phrase and what it means. */
  record Sample(String phrase, Intent intent) {}

  /** Every wording of the kind, each with many fillings of its slot. */
  static List<Sample> of(IntentKind kind) {
    List<Sample> samples = new ArrayList<>();
    for (Wording wording : Phrasebook.compiledWordings(kind)) {
      if (wording.slot().isEmpty()) {
        samples.add(new Sample(wording.filled(""), new Intent.Plain(kind)));
      } else {
        fillings(kind, wording.slot().get())
            .forEach((text, intent) -> samples.add(new Sample(wording.filled(text), intent)));
        int least = kind == IntentKind.CORRECTED ? 3 : 2;
        samples.removeIf(sample -> sample.phrase().split(" ", -1).length < least);
      }
    }
    return samples;
  }

  private static Intent times(IntentKind kind, String number) {
    SpokenNumber spoken = new SpokenNumber(new BigDecimal(number), SpokenNumber.Style.WORDS);
    return new Intent.OfNumber(kind, spoken, Optional.empty());
  }

  private static Map<String, Intent> fillings(IntentKind kind, Slot slot) {
    Map<String, Intent> fillings = new LinkedHashMap<>();
    switch (slot) {
      case TORQUE ->
          numbers(
              fillings,
              kind,
              Map.of(
                  "newton meters", SpokenUnit.NEWTON_METRES,
                  "newton metres", SpokenUnit.NEWTON_METRES,
                  "foot pounds", SpokenUnit.FOOT_POUNDS,
                  "pound feet", SpokenUnit.FOOT_POUNDS,
                  "inch pounds", SpokenUnit.INCH_POUNDS));
      case ANGLE -> numbers(fillings, kind, Map.of("degrees", SpokenUnit.DEGREES));
      case LENGTH ->
          numbers(
              fillings,
              kind,
              Map.of(
                  "millimeters", SpokenUnit.MILLIMETRES,
                  "millimetres", SpokenUnit.MILLIMETRES,
                  "inches", SpokenUnit.INCHES));
      case VALUE ->
          numbers(
              fillings,
              kind,
              Map.of(
                  "newton meters", SpokenUnit.NEWTON_METRES,
                  "degrees", SpokenUnit.DEGREES,
                  "bar", SpokenUnit.BAR,
                  "kilometers", SpokenUnit.KILOMETRES,
                  "inch", SpokenUnit.INCHES));
      case SIGNED -> {
        reading(fillings, kind, "minus five", "-5", Optional.empty(), true);
        reading(fillings, kind, "minus zero point eight", "-0.8", Optional.empty(), true);
        reading(fillings, kind, "plus one degree", "1", Optional.of(SpokenUnit.DEGREES), true);
        reading(
            fillings,
            kind,
            "minus two point oh five millimeters",
            "-2.05",
            Optional.of(SpokenUnit.MILLIMETRES),
            true);
      }
      case DEGREES_AND_MINUTES -> {
        Optional<SpokenUnit> minutes = Optional.of(SpokenUnit.MINUTES);
        reading(fillings, kind, "minus one degree thirty minutes", "-90", minutes, true);
        reading(fillings, kind, "zero degrees twelve minutes", "12", minutes, false);
        reading(fillings, kind, "two degrees one minute", "121", minutes, false);
        reading(fillings, kind, "plus forty five minutes", "45", minutes, true);
        reading(fillings, kind, "four five minutes", "45", minutes, false);
      }
      case STEP -> {
        fillings.put("one", new Intent.OfStep(kind, 1));
        fillings.put("twelve", new Intent.OfStep(kind, 12));
        fillings.put("one two", new Intent.OfStep(kind, 12));
        fillings.put("twenty five", new Intent.OfStep(kind, 25));
        fillings.put("one hundred and four", new Intent.OfStep(kind, 104));
      }
      case POSITION -> {
        fillings.put("one", new Intent.OfPosition(kind, 1));
        fillings.put("twelve", new Intent.OfPosition(kind, 12));
      }
      case TIMES -> {
        fillings.put("once", times(kind, "1"));
        fillings.put("twice", times(kind, "2"));
        fillings.put("nine times", times(kind, "9"));
      }
      case COUNT -> {
        fillings.put("two", new Intent.Counted(kind, 2, 2));
        fillings.put("six", new Intent.Counted(kind, 6, 6));
      }
      case ALL -> {
        fillings.put("five of five", new Intent.Counted(kind, 5, 5));
        fillings.put("four of five", new Intent.Counted(kind, 4, 5));
        fillings.put("all six", new Intent.Counted(kind, 6, 6));
      }
      case SIDE, WHEEL_SIDE -> {
        fillings.put("left side", new Intent.OfSide(kind, Side.LEFT));
        fillings.put("right side", new Intent.OfSide(kind, Side.RIGHT));
        fillings.put("front left", new Intent.OfSide(kind, Side.FRONT_LEFT));
        fillings.put("rear right", new Intent.OfSide(kind, Side.REAR_RIGHT));
        if (slot == Slot.SIDE) {
          fillings.put("whole car", new Intent.OfSide(kind, Side.CAR));
        }
      }
      case SIDE_SAID -> {
        fillings.put("left", new Intent.OfSide(kind, Side.LEFT));
        fillings.put("right side", new Intent.OfSide(kind, Side.RIGHT));
        fillings.put("rear right", new Intent.OfSide(kind, Side.REAR_RIGHT));
      }
      case HARDWARE_AND_MORE -> {
        Intent one = new Intent.Plain(IntentKind.NEW_HARDWARE);
        Intent five = new Intent.Counted(IntentKind.NEW_HARDWARE, 5, 5);
        Intent high = new Intent.Marking(new HeadMarking("10.9"));
        Intent byHand = new Intent.Plain(IntentKind.FITTED_SNUG);
        fillings.put("new bolt fitted ten point nine", several(one, high));
        fillings.put("new bolt ten point nine", several(one, high));
        fillings.put("new bolt one zero point nine", several(one, high));
        fillings.put("new bolt marked ten point nine", several(one, high));
        fillings.put("new nut fitted head marking ten point nine", several(one, high));
        fillings.put("five new bolts ten point nine", several(five, high));
        fillings.put("new hardware fitted run in by hand", several(one, byHand));
        fillings.put(
            "five new nuts fitted five run in by hand",
            several(five, new Intent.Counted(IntentKind.FITTED_SNUG, 5, 5)));
      }
      case MARKING -> {
        marking(fillings, "four point six", "4.6");
        marking(fillings, "four point eight", "4.8");
        marking(fillings, "five point six", "5.6");
        marking(fillings, "five point eight", "5.8");
        marking(fillings, "six point eight", "6.8");
        marking(fillings, "eight point eight", "8.8");
        marking(fillings, "nine point eight", "9.8");
        marking(fillings, "ten point nine", "10.9");
        marking(fillings, "one zero point nine", "10.9");
        marking(fillings, "twelve point nine", "12.9");
      }
      case REASON -> {
        fillings.put("for ride height", new Intent.PutOff(PutOffReason.RIDE_HEIGHT));
        fillings.put("until ride height", new Intent.PutOff(PutOffReason.RIDE_HEIGHT));
        fillings.put("for full droop", new Intent.PutOff(PutOffReason.FULL_DROOP));
        fillings.put("waiting for parts", new Intent.PutOff(PutOffReason.WAITING_FOR_PARTS));
        fillings.put("waiting for a witness", new Intent.PutOff(PutOffReason.NO_WITNESS));
        fillings.put("tool missing", new Intent.PutOff(PutOffReason.TOOL_MISSING));
        fillings.put("for later", new Intent.PutOff(PutOffReason.LATER));
      }
      case REGISTRATION, VIN, JOB_NUMBER, TECHNICIAN -> {
        JobField field = JobField.valueOf(slot.name());
        fillings.put("india november victor one two", new Intent.OfJob(field, "INV12"));
        fillings.put("x ray", new Intent.OfJob(field, "X"));
      }
      case WITNESS_NAME -> {
        fillings.put("alpha bravo", new Intent.OfWitness(kind, "AB"));
        fillings.put("x ray nine", new Intent.OfWitness(kind, "X9"));
      }
      case ODOMETER ->
          fillings.put("eight four two one", new Intent.OfJob(JobField.ODOMETER, "8421"));
      case EXCUSE -> {
        fillings.put("no other wrench here", new Intent.Overdue(OverdueReason.NO_OTHER_WRENCH));
        fillings.put("as i was told", new Intent.Overdue(OverdueReason.AS_TOLD));
      }
      case FINDING -> {
        fillings.put("found fault", new Intent.OfFinding(Finding.FOUND_FAULT, Optional.empty()));
        fillings.put(
            "extra work needed", new Intent.OfFinding(Finding.EXTRA_WORK, Optional.empty()));
        fillings.put(
            "order a part right side",
            new Intent.OfFinding(Finding.PART_TO_ORDER, Optional.of(Side.RIGHT)));
      }
      case TROUBLE -> {
        fillings.put(
            "thread is stripped", new Intent.OfTrouble(Trouble.THREAD_STRIPPED, Optional.empty()));
        fillings.put(
            "it keeps turning", new Intent.OfTrouble(Trouble.KEEPS_TURNING, Optional.empty()));
        fillings.put(
            "number three thread is stripped",
            new Intent.OfTrouble(Trouble.THREAD_STRIPPED, Optional.of(3)));
        fillings.put(
            "turned too far", new Intent.OfTrouble(Trouble.TURNED_TOO_FAR, Optional.empty()));
      }
      case CAUSE -> {
        fillings.put("as the maker says", new Intent.OutOfOrder(OrderReason.AS_THE_MAKER_SAYS));
        fillings.put(
            "done by somebody else", new Intent.OutOfOrder(OrderReason.DONE_BY_SOMEBODY_ELSE));
        fillings.put("missing on this car", new Intent.OutOfOrder(OrderReason.NOT_ON_THIS_CAR));
      }
      case TIMER -> {
        fillings.put("sealant", new Intent.OfTimer(kind, TimerName.SEALANT));
        fillings.put("thread locker", new Intent.OfTimer(kind, TimerName.THREAD_LOCKER));
        fillings.put("battery", new Intent.OfTimer(kind, TimerName.BATTERY));
      }
      case MINUTES_AND_TIMER -> {
        setTimer(fillings, "one minute for the sealant", TimerName.SEALANT, 1);
        setTimer(fillings, "ten minutes for the thread locker", TimerName.THREAD_LOCKER, 10);
        setTimer(fillings, "one five minutes for the cooling", TimerName.COOLING, 15);
        setTimer(fillings, "twenty five minutes for the soaking", TimerName.SOAKING, 25);
        setTimer(fillings, "a hundred and eighty minutes for the drying", TimerName.DRYING, 180);
      }
    }
    return fillings;
  }

  private static void reading(
      Map<String, Intent> fillings,
      IntentKind kind,
      String text,
      String value,
      Optional<SpokenUnit> unit,
      boolean signed) {
    fillings.put(text, new Intent.OfReading(kind, new BigDecimal(value), unit, signed));
  }

  private static Intent several(Intent first, Intent second) {
    return new Intent.Several(List.of(first, second));
  }

  private static void numbers(
      Map<String, Intent> fillings, IntentKind kind, Map<String, SpokenUnit> units) {
    Map<String, SpokenNumber> numbers = new LinkedHashMap<>();
    numbers.put("five", number("5", Style.DIGIT_BY_DIGIT));
    numbers.put("ninety", number("90", Style.WORDS));
    numbers.put("one ten", number("110", Style.WORDS));
    numbers.put("one seven five", number("175", Style.DIGIT_BY_DIGIT));
    numbers.put("one seventy five", number("175", Style.WORDS));
    numbers.put("two hundred and five", number("205", Style.WORDS));
    numbers.put("a hundred", number("100", Style.WORDS));
    numbers.put("seven point five", number("7.5", Style.DIGIT_BY_DIGIT));
    numbers.forEach(
        (text, value) -> {
          fillings.put(text, new Intent.OfNumber(kind, value, Optional.empty()));
          units.forEach(
              (unitText, unit) ->
                  fillings.put(
                      text + " " + unitText, new Intent.OfNumber(kind, value, Optional.of(unit))));
        });
  }

  private static SpokenNumber number(String value, Style style) {
    return new SpokenNumber(new BigDecimal(value), style);
  }

  private static void setTimer(
      Map<String, Intent> fillings, String text, TimerName name, int minutes) {
    fillings.put(text, new Intent.SetTimer(name, minutes));
  }

  private static void marking(Map<String, Intent> fillings, String text, String marking) {
    fillings.put(text, new Intent.Marking(new HeadMarking(marking)));
  }
}
