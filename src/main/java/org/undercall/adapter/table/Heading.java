package org.undercall.adapter.table;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The heading of one column.
 *
 * @param text as it stands, rows of a heading joined
 * @param name without unit and brackets, in small letters
 * @param unit the unit it states, blank if none
 */
record Heading(String text, String name, String unit) {
  private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^)\\]]{0,20})[)\\]]");

  private static final Pattern UNIT_AFTER = Pattern.compile("^[ ,/]+");
  private static final Pattern UNIT = Pattern.compile("mm|°|deg|degrees|%");
  private static final Pattern IN = Pattern.compile(" in ?$");
  private static final Pattern GAPS = Pattern.compile(" +");
  private static final Pattern ENDS_AND_GAPS = Pattern.compile("[:*,/]+$|[ _]+");

  static Heading of(String text) {
    String rest = text;
    String unit = "";
    Matcher brackets = BRACKETS.matcher(text);
    if (brackets.find()) {
      unit = brackets.group(1).strip();
      rest = (text.substring(0, brackets.start()) + " " + text.substring(brackets.end()));
    }
    String plain = tidy(rest);
    if (unit.isEmpty()) {
      int cut = lastUnit(plain);
      unit = cut < 0 ? "" : plain.substring(cut).strip();
      plain = cut < 0 ? plain : plain.substring(0, cut);
    }
    String name = Column.of(plain).isPresent() ? plain : tidy(IN.matcher(plain).replaceAll(""));
    return new Heading(text, name, unit);
  }

  /** Where a unit at the end of a heading begins; -1 if there is none. */
  private static int lastUnit(String plain) {
    for (int at = plain.indexOf(' '); at >= 0; at = plain.indexOf(' ', at + 1)) {
      String end = UNIT_AFTER.matcher(plain.substring(at)).replaceFirst("");
      if (UNIT.matcher(end).matches() || TorqueWord.of(end).isPresent()) {
        return at;
      }
    }
    return -1;
  }

  private static String tidy(String text) {
    String gaps = ENDS_AND_GAPS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ");
    return GAPS.matcher(gaps).replaceAll(" ").strip();
  }

  Optional<Column> meaning() {
    return Column.of(name);
  }
}
