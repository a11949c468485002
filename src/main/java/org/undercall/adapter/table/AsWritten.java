package org.undercall.adapter.table;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people write in tables, in the words of the format, where it can mean one thing only. All of
 * it is common practice, no source.
 */
final class AsWritten {
  private static final String YES = "yes";
  private static final String NO = "no";

  /** Words of a column, without blanks at the ends, dots and capitals. */
  private static final Map<Column, Map<String, List<String>>> WORDS =
      Map.of(
          Column.ONE_TIME,
          Map.of(
              YES,
              List.of(
                  "y",
                  "true",
                  "x",
                  "✓",
                  "✔",
                  "•",
                  "●",
                  "new",
                  "renew",
                  "renewed",
                  "replace",
                  "replaced",
                  "always renew",
                  "always replace",
                  "must be renewed",
                  "must be replaced",
                  "one time",
                  "one-time",
                  "one time use",
                  "one-time use",
                  "single use",
                  "single-use",
                  "use once",
                  "do not reuse",
                  "do not re-use",
                  "discard",
                  "not reusable",
                  "not re-usable",
                  "non-reusable",
                  "new bolt",
                  "new bolts",
                  "new nut",
                  "new nuts",
                  "new screw",
                  "new screws"),
              NO,
              List.of(
                  "n",
                  "false",
                  "re-use",
                  "reuse",
                  "reusable",
                  "re-usable",
                  "may be reused",
                  "may be re-used",
                  "can be reused",
                  "can be re-used")),
          Column.NEEDS,
          Map.of(
              "ride-height",
              List.of(
                  "ride height",
                  "at ride height",
                  "normal ride height",
                  "tighten at ride height",
                  "laden",
                  "when laden",
                  "suspension laden",
                  "wheels on ground",
                  "wheels on the ground",
                  "wheel on ground",
                  "on wheels",
                  "on its wheels",
                  "on ground",
                  "on the ground",
                  "vehicle on ground",
                  "vehicle on its wheels",
                  "car on ground",
                  "car on its wheels",
                  "weight on wheels",
                  "vehicle weight on wheels",
                  "suspension loaded",
                  "suspension loaded by the car",
                  "design height",
                  "curb height",
                  "kerb height"),
              "full-droop",
              List.of(
                  "full droop",
                  "at full droop",
                  "hanging",
                  "suspension hanging",
                  "wheels hanging",
                  "fully extended",
                  "suspension fully extended",
                  "full rebound",
                  "unloaded and hanging"),
              "any",
              List.of("any height", "at any height", "not critical", "does not matter")),
          Column.HARDWARE,
          Map.of(
              "bolt",
              List.of("bolts", "screw", "screws", "cap screw", "hex bolt", "flange bolt"),
              "nut",
              List.of("nuts", "hex nut", "flange nut", "castle nut", "plain nut"),
              "self-locking-nut",
              List.of(
                  "self-locking nut",
                  "self locking nut",
                  "selflocking nut",
                  "nyloc nut",
                  "nylon insert nut",
                  "prevailing torque nut")),
          Column.LUBRICATION,
          Map.of(
              "dry",
              List.of("clean and dry", "dry and clean", "clean, dry", "no lubricant"),
              "oiled",
              List.of("oil", "lightly oiled", "light oil", "engine oil"),
              "greased",
              List.of("grease", "lightly greased"),
              "paste",
              List.of("anti-seize", "antiseize", "copper paste", "assembly paste", "mos2 paste"),
              "threadlocker",
              List.of("thread locker", "thread-locker", "thread lock", "locking compound"),
              "as-delivered",
              List.of("as delivered", "as supplied", "as received"),
              "unstated",
              List.of("not stated", "unknown", "not given", "n/a", "?")));

  private static final String DEGREE = "(?:°|º|˚|deg(?:ree)?s?\\b\\.?)";
  private static final Pattern DEGREES = Pattern.compile("(?i)(?<=[0-9]) ?" + DEGREE);
  private static final Pattern TURN =
      Pattern.compile(
          "(?i)(?<![0-9/.,])(?<![0-9] )(?:([1-9]) )?(1/2|1/3|1/4|1/6|2/3|3/4|half(?: a)?|quarter|one quarter|three quarters(?: of a)?)"
              + " ?(?:of a )?turns?");
  private static final Map<String, Integer> TURNS =
      Map.ofEntries(
          Map.entry("1/2", 180),
          Map.entry("1/3", 120),
          Map.entry("1/4", 90),
          Map.entry("1/6", 60),
          Map.entry("2/3", 240),
          Map.entry("3/4", 270),
          Map.entry("half", 180),
          Map.entry("half a", 180),
          Map.entry("quarter", 90),
          Map.entry("one quarter", 90),
          Map.entry("three quarters", 270),
          Map.entry("three quarters of a", 270));

  /** Numbers of stages: {@code 1) 40 2) 80}, {@code 1. 40 Nm; 2. 90°}, {@code Stage 1: 40}. */
  private static final Pattern NUMBERED =
      Pattern.compile(
          "(?i)(?:(?<=^|[ ;,+])|(?<=[a-z°]))(?:(?:stage|step|pass) ?([1-9])[ :.)]*|([1-9])(?:st|nd|rd|th)?[):] ?"
              + "|([1-9])(?:\\. |(?:st|nd|rd|th) (?:stage |step |pass )?))");

  private static final Pattern BRACKETED = Pattern.compile("\\( ?((?:±|\\+/-)[^()]*)\\)");
  private static final String FURTHER =
      "(?: ?(?:\\+(?!/-)|then |a further |further |another |turn |through |by ))* ?";

  /** A word that joins two stages, whatever they are. */
  private static final Pattern BETWEEN =
      Pattern.compile("(?i)[ ,]*(?:\\+(?!/-)|→|->| then | plus | followed by )" + FURTHER);

  /** Joins an angle to what stands before; between two torques it may mean either. */
  private static final Pattern BEFORE_ANGLE =
      Pattern.compile("(?i)[ ,]*(?:[;&]| and )" + FURTHER + "(?=[0-9.,]+ ?(?:± ?[0-9.,]+ ?)?°)");

  private static final Pattern UNSAID_PLUS =
      Pattern.compile("(?i)(?<=m|lb|lbs|lbf|ft|in|°) ?(?:[ /]) ?(?=[0-9.,]+ ?(?:± ?[0-9.,]+ ?)?°)");
  private static final Pattern PAD = Pattern.compile("^[+; ]+|[+;, ]+$");

  private AsWritten() {}

  /** The word of the format that a cell means; empty if it is none that is known here. */
  static Optional<String> word(Column column, String text) {
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[.!]+$", "").strip();
    return WORDS.getOrDefault(column, Map.of()).entrySet().stream()
        .filter(entry -> entry.getValue().contains(plain))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** The words that a column knows, as they may be answered; none if it has no words. */
  static List<String> words(Column column) {
    return WORDS.getOrDefault(column, Map.of()).keySet().stream().sorted().toList();
  }

  /** Stages with a plus between them and degrees as a sign; what is unusual stays as it is. */
  static String stages(String text) {
    String plain = BRACKETED.matcher(text).replaceAll("$1");
    plain = turns(DEGREES.matcher(unnumbered(plain)).replaceAll("°"));
    plain = BEFORE_ANGLE.matcher(plain).replaceAll(" + ");
    plain = BETWEEN.matcher(plain).replaceAll(" + ");
    plain = UNSAID_PLUS.matcher(plain).replaceAll(" + ");
    return PAD.matcher(plain).replaceAll("");
  }

  /** Whether the stages are numbered 1, 2, 3 and so on from the beginning. */
  static boolean isNumbered(String text) {
    return !unnumbered(text).equals(text);
  }

  /** Without the numbers of stages, if these are 1, 2, 3 and so on from the beginning. */
  private static String unnumbered(String text) {
    List<MatchResult> numbers = NUMBERED.matcher(text).results().toList();
    for (int i = 0; i < numbers.size(); i++) {
      MatchResult each = numbers.get(i);
      String number =
          each.group(1) != null
              ? each.group(1)
              : each.group(2) != null ? each.group(2) : each.group(3);
      if (Integer.parseInt(number) != i + 1) {
        return text;
      }
    }
    boolean whole = numbers.size() > 1 && text.substring(0, numbers.get(0).start()).isBlank();
    return whole
        ? NUMBERED.matcher(text).replaceAll(" + ").replaceAll("[ ;,]*\\+ (?:\\+ )?", " + ")
        : text;
  }

  private static String turns(String text) {
    Matcher turn = TURN.matcher(text);
    return turn.replaceAll(
        m -> {
          int whole = m.group(1) == null ? 0 : 360 * Integer.parseInt(m.group(1));
          return whole + TURNS.get(m.group(2).toLowerCase(Locale.ROOT)) + "°";
        });
  }
}
