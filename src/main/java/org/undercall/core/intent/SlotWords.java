package org.undercall.core.intent;

import static java.util.Map.entry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.undercall.core.term.Finding;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.TimerName;
import org.undercall.core.term.Trouble;

/** The words that can fill a {@link Slot}, apart from the number words. */
final class SlotWords {
  /** The words for each unit; the first two are listened for, any is understood. */
  static final Map<SpokenUnit, List<String>> UNITS =
      ordered(
          List.of(
              entry(
                  SpokenUnit.NEWTON_METRES,
                  List.of("newton meters", "newton meter", "newton metres", "newton metre")),
              entry(SpokenUnit.FOOT_POUNDS, List.of("foot pounds", "pound feet", "foot pound")),
              entry(SpokenUnit.INCH_POUNDS, List.of("inch pounds", "inch pound")),
              entry(SpokenUnit.DEGREES, List.of("degrees", "degree")),
              entry(SpokenUnit.MINUTES, List.of("minutes", "minute")),
              entry(
                  SpokenUnit.MILLIMETRES,
                  List.of("millimeters", "millimeter", "millimetres", "millimetre")),
              entry(SpokenUnit.INCHES, List.of("inches", "inch")),
              entry(SpokenUnit.BAR, List.of("bar")),
              entry(
                  SpokenUnit.KILOMETRES,
                  List.of("kilometers", "kilometer", "kilometres", "kilometre"))));

  /** The unit wordings cut into words. */
  static final Map<List<String>, SpokenUnit> UNIT_WORDS =
      ordered(
          UNITS.entrySet().stream()
              .flatMap(
                  unit -> unit.getValue().stream().map(text -> entry(words(text), unit.getKey())))
              .toList());

  /** The words for each side. */
  static final Map<Side, String> SIDES =
      ordered(Stream.of(Side.values()).map(side -> entry(side, side.place())).toList());

  /** The words for each side before what shows the load. */
  static final Map<String, Side> SIDES_SAID = sidesSaid();

  /** The words for each reason to put a step off, after "put off". */
  static final Map<PutOffReason, List<String>> REASONS =
      ordered(
          List.of(
              entry(PutOffReason.RIDE_HEIGHT, List.of("for ride height", "until ride height")),
              entry(PutOffReason.FULL_DROOP, List.of("for full droop", "until full droop")),
              entry(PutOffReason.WAITING_FOR_PARTS, List.of("waiting for parts")),
              entry(PutOffReason.TOOL_MISSING, List.of("tool missing", "missing a tool")),
              entry(PutOffReason.NO_WITNESS, List.of("waiting for a witness")),
              entry(PutOffReason.LATER, List.of("for later", "until later"))));

  /** The words for each reason to close a step out of order. */
  static final Map<OrderReason, String> CAUSES =
      ordered(
          List.of(
              entry(OrderReason.AS_THE_MAKER_SAYS, "as the maker says"),
              entry(OrderReason.DONE_BY_SOMEBODY_ELSE, "done by somebody else"),
              entry(OrderReason.NOT_ON_THIS_CAR, "missing on this car")));

  /** The words for each reason to use a wrench whose calibration is over. */
  static final Map<OverdueReason, String> EXCUSES =
      ordered(
          List.of(
              entry(OverdueReason.NO_OTHER_WRENCH, "no other wrench here"),
              entry(OverdueReason.CHECKED_ON_A_TESTER, "checked on the tester"),
              entry(OverdueReason.AS_TOLD, "as i was told")));

  /** The words for each timer that is started by voice. */
  static final Map<TimerName, String> TIMERS =
      ordered(
          List.of(
              entry(TimerName.SEALANT, "sealant"),
              entry(TimerName.THREAD_LOCKER, "thread locker"),
              entry(TimerName.SETTLING, "settling"),
              entry(TimerName.COOLING, "cooling"),
              entry(TimerName.SOAKING, "soaking"),
              entry(TimerName.DRYING, "drying"),
              entry(TimerName.BATTERY, "battery")));

  /** How often something was done; the place in the list is the number. */
  static final List<String> TIMES =
      Stream.concat(
              Stream.of("", "once", "twice"),
              NumberWords.DIGITS.stream().skip(3).map(number -> number + " times"))
          .toList();

  /** What stands between the number and the name of a timer that is started. */
  static final List<String> MINUTES_FOR = List.of("minutes for the", "minute for the");

  /** The words for each thing that can go wrong. */
  static final Map<Trouble, List<String>> TROUBLES =
      ordered(
          List.of(
              entry(
                  Trouble.THREAD_STRIPPED,
                  List.of("thread is stripped", "thread stripped", "thread is damaged")),
              entry(
                  Trouble.CROSS_THREADED,
                  List.of(
                      "it is cross threaded", "bolt is cross threaded", "nut is cross threaded")),
              entry(
                  Trouble.BROKEN,
                  List.of("bolt is broken", "bolt broke", "stud is broken", "nut is broken")),
              entry(Trouble.SEIZED, List.of("bolt is seized", "it is seized", "nut is seized")),
              entry(
                  Trouble.KEEPS_TURNING,
                  List.of("it keeps turning", "bolt keeps turning", "bolt is yielding")),
              entry(Trouble.TURNED_TOO_FAR, List.of("turned too far")),
              entry(Trouble.TORQUE_NOT_REACHED, List.of("torque cannot be reached")),
              entry(
                  Trouble.WRONG_HARDWARE,
                  List.of("wrong hardware in the kit", "wrong bolt in the kit")),
              entry(Trouble.PART_MISSING, List.of("part is missing", "a part is missing")),
              entry(
                  Trouble.MARKINGS_DIFFER,
                  List.of("head markings are different", "bolts are marked differently")),
              entry(Trouble.SEAT_DAMAGED, List.of("seat is damaged", "surface is damaged"))));

  /** The words for what is reported, with or without the side after them. */
  static final Map<Finding, List<String>> FINDINGS =
      ordered(
          List.of(
              entry(Finding.FOUND_FAULT, List.of("found fault", "another fault found")),
              entry(Finding.EXTRA_WORK, List.of("extra work", "extra work needed")),
              entry(Finding.PART_TO_ORDER, List.of("order a part", "part to order"))));

  /** What stands before a position. */
  static final String NUMBER = "number";

  /** The words with which a whole set is counted: "five of five", "all five". */
  static final String OF = "of";

  static final String EVERY = "all";

  /** The property classes of ISO 898-1, which are listened for in a head marking. */
  static final List<String> MARKINGS =
      List.of("4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9");

  /** What stands before a value with a sign, and what it is multiplied by. */
  static final Map<String, Integer> SIGNS = ordered(List.of(entry("minus", -1), entry("plus", 1)));

  private SlotWords() {}

  private static Map<String, Side> sidesSaid() {
    Map<String, Side> said = new LinkedHashMap<>();
    said.put(Side.LEFT.words(), Side.LEFT);
    said.put(Side.RIGHT.words(), Side.RIGHT);
    SIDES.forEach((side, words) -> said.put(words, side));
    said.remove(Side.CAR.place());
    return Collections.unmodifiableMap(said);
  }

  /** Whether the words are those of a value: number words, at least one, and those of units. */
  static boolean isValue(List<String> words) {
    return words.stream().anyMatch(NumberWords.ALL::contains)
        && words.stream()
            .allMatch(
                word ->
                    NumberWords.ALL.contains(word)
                        || UNIT_WORDS.keySet().stream().anyMatch(unit -> unit.contains(word)));
  }

  private static List<String> words(String text) {
    return List.of(text.split(" ", -1));
  }

  private static <K, V> Map<K, V> ordered(List<Map.Entry<K, V>> entries) {
    Map<K, V> map = new LinkedHashMap<>();
    entries.forEach(entry -> map.put(entry.getKey(), entry.getValue()));
    return Collections.unmodifiableMap(map);
  }
}
