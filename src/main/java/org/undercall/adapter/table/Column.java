package org.undercall.adapter.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a column of a table can mean, with the headings that say so. */
public enum Column {
  PHASE("phase", "section"),
  SIDE("side", "sides", "each"),
  STEP("step", "step title", "operation", "task", "work step"),
  ID("id", "step id"),
  KIND("kind", "kind of step"),
  FASTENER(
      "fastener",
      "fastener name",
      "name",
      "part",
      "bolt or nut",
      "bolt/nut",
      "screw",
      "connection",
      "screw connection",
      "bolted joint"),
  THREAD("thread", "thread size", "thread and pitch", "thread x pitch"),
  MARKING(
      "class", "strength", "head marking", "marking", "property class", "strength class", "grade"),
  TORQUE(
      "torque",
      "tightening torque",
      "torque value",
      "specified torque",
      "torque target",
      "torque specification",
      "torque spec",
      "tightening specification",
      "tighten to",
      "torque and angle",
      "torque + angle",
      "tightening stages"),
  TOLERANCE(
      "tolerance",
      "torque tolerance",
      "plus minus",
      "±",
      "+/-",
      "torque ±",
      "torque +/-",
      "torque plus minus"),
  ANGLE("angle", "torque angle", "angle of turn", "angle value", "then turn", "further turn"),
  ANGLE_TOLERANCE("angle tolerance", "angle ±", "angle +/-", "angle plus minus"),
  BEYOND_YIELD("beyond yield", "torque to yield", "tty"),
  TORQUE_AFTER("torque after the angle", "torque after angle"),
  ADAPTOR("adaptor", "adapter"),
  SOCKET(
      "socket",
      "drive",
      "key",
      "socket size",
      "drive size",
      "key size",
      "across flats",
      "af",
      "a/f",
      "wrench size",
      "spanner size"),
  HARDWARE("hardware", "bolt, nut or self locking nut"),
  ONE_TIME(
      "one time use",
      "one use",
      "single use",
      "new each time",
      "replace",
      "renew?",
      "new",
      "new?",
      "always new",
      "new part"),
  REUSABLE("reusable", "re usable", "re use", "reuse", "may be used again"),
  RENEW("renewed because", "renew", "why new"),
  LUBRICATION("lubrication", "thread and seat", "state of thread", "friction state"),
  FRICTION("friction", "coefficient of friction"),
  THREAD_FRICTION("thread friction", "coefficient of thread friction"),
  SEAT_FRICTION("seat friction", "bearing friction", "underhead friction"),
  CLAMPED("clamped length", "clamp length", "clamping length", "grip length"),
  SHANK("shank length", "shank", "plain shank"),
  CLAMPED_OUTER("clamped outer diameter"),
  CLAMPED_INNER("clamped inner diameter"),
  CLAMPED_MATERIAL("clamped material", "material of clamped parts"),
  SEAT("seat", "seat shape", "shape of seat"),
  SEAT_OUTER("seat outer diameter", "bearing diameter"),
  SEAT_INNER("seat inner diameter", "bearing inner diameter"),
  SEAT_ANGLE("seat angle", "cone angle"),
  NEEDS(
      "load condition",
      "load",
      "needs",
      "suspension",
      "suspension load",
      "tighten at",
      "when to tighten",
      "tightening position"),
  REASON("needs reason", "reason", "reason for load condition"),
  JOINT("joint", "holds", "kind of joint"),
  ARM("arm"),
  WHEEL("wheel", "holds a wheel"),
  NUT_CLASS("nut class", "class of nut"),
  TAPPED_IN("tapped in", "tapped into", "tapped hole in"),
  ENGAGEMENT("engagement in mm", "engagement", "thread engagement", "engaged length"),
  BY_HAND("by hand first", "run in by hand", "by hand"),
  LEFT_HAND("left hand thread", "left hand", "left handed"),
  COUNTER_HOLD("counter hold", "hold against"),
  RUN_DOWN("run down torque", "run down", "prevailing torque"),
  CURE("cure minutes", "cure time in minutes"),
  COUNT("count", "quantity", "qty", "qty.", "pcs", "number of", "how many"),
  ORDER("order", "sequence", "order of tightening", "tightening order"),
  NOTE("note", "notes", "remark", "remarks", "comment", "caution"),
  BRIEF("brief", "short title"),
  WHY("why", "reason of the step"),
  WITNESS("witness", "seen by a second person"),
  CHANGES_LOAD("changes load"),
  AFTER("after", "after steps"),
  UNDOES("undoes", "undoes steps"),
  CAR("car", "raises or lowers the car"),
  CORNER("corner", "wheel of the car"),
  ROAD_TEST("road test"),
  CHECK("check", "question"),
  WHEELS_ON("wheels on"),
  SECONDS("seconds", "wait seconds"),
  BY_WHEELS("by wheels"),
  DUE("due"),
  UNIT("unit", "measured in"),
  LEAST("least", "minimum"),
  MOST("most", "maximum"),
  OUTSIDE("outside"),
  NOTES_HEIGHT("notes ride height"),
  SOURCE("source", "value source", "source of values", "values");

  /** Divided by bars: an enum holds nothing that could change. */
  private final String headings;

  Column(String... headings) {
    this.headings = String.join("|", headings);
  }

  /** Its name for options and messages, the first of its headings. */
  public String label() {
    return headings().get(0);
  }

  /** The column with one of these headings; hyphens between letters count as blanks. */
  static Optional<Column> of(String heading) {
    String small = heading.toLowerCase(Locale.ROOT);
    String words = small.indexOf('-') < 0 ? small : Known.HYPHEN.matcher(small).replaceAll(" ");
    return Optional.ofNullable(Known.COLUMNS.get(words));
  }

  /** Every heading with its column. */
  private static final class Known {
    static final Pattern HYPHEN = Pattern.compile("(?<=[a-z])-(?=[a-z])");
    static final Map<String, Column> COLUMNS =
        Arrays.stream(values())
            .flatMap(column -> column.headings().stream().map(name -> Map.entry(name, column)))
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  /** The headings that are understood. */
  public List<String> headings() {
    return List.of(headings.split("\\|"));
  }
}
