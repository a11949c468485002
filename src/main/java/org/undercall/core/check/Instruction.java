package org.undercall.core.check;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Whether words tell somebody to do a thing, and do not merely name it. A guess, by English words:
 * a part of a sentence counts if it has the thing and something done with it and no "no"; a no that
 * is taken back, as in "never work without stands", counts as well.
 */
final class Instruction {
  private static final Pattern PARTS = Pattern.compile("[.;:!?,()]+|\\bbut\\b|\\bthen\\b");
  private static final Pattern NO =
      word(
          "no|not|never|nothing|none|without|neither|nor|don t|avoid|skip|forget|cannot|unnecessary"
              + "|optional|unless|instead of (the |axle |jack )*stands");
  private static final Pattern NEEDLESS =
      Pattern.compile(
          "\\b(no|not|without|never|don t|skip|optional|unnecessary)\\b.*\\b(need|needed|use|used"
              + "|required|necessary)\\b|\\b(unnecessary|optional|not needed)\\b");

  private static final Pattern STANDS = word("stands?");
  private static final Pattern CARRY =
      Pattern.compile(
          "\\bstands?\\b.{0,30}\\b(carry|carries|support|supports|hold|holds|bear|secure)\\b"
              + "|\\b(on|onto|with|by|upon) (\\w+ ){0,3}stands\\b"
              + "|\\b(use|set|put|place|fit|position)\\b.{0,40}\\bstands?\\b");
  private static final Pattern TAKEN_AWAY =
      word(
          "remove|removed|removing|take|taken|away|pull|store|stored|clean|return|find|found|look");
  private static final Pattern NEVER_WITHOUT =
      Pattern.compile(
          "\\b(never|not|don t|no)\\b.*\\b(work|go|get|crawl|lie|reach|stay|one)\\b"
              + ".*\\b(without|unless|until|except|only)\\b.*\\bstands?\\b");

  private Instruction() {}

  private static Pattern word(String words) {
    return Pattern.compile("\\b(" + words + ")\\b");
  }

  /** Whether a caution tells that stands carry the car. */
  static boolean standsCarry(String caution) {
    String text = plain(caution);
    if (NEVER_WITHOUT.matcher(text).find()) {
      return true;
    }
    return parts(text).stream()
        .anyMatch(
            part ->
                CARRY.matcher(part).find()
                    && !TAKEN_AWAY.matcher(part).find()
                    && !NO.matcher(part).find());
  }

  /** Whether a caution names the stands, and neither takes them away nor says no to them. */
  static boolean namesStands(String caution) {
    String text = plain(caution);
    return NEVER_WITHOUT.matcher(text).find()
        || parts(text).stream()
            .anyMatch(
                part ->
                    STANDS.matcher(part).find()
                        && !TAKEN_AWAY.matcher(part).find()
                        && !NO.matcher(part).find());
  }

  /** Whether a caution says that stands are not needed. */
  static boolean standsNeedless(String caution) {
    return parts(plain(caution)).stream()
        .anyMatch(
            part ->
                STANDS.matcher(part).find()
                    && NEEDLESS.matcher(part).find()
                    && !NEVER_WITHOUT.matcher(part).find());
  }

  /** Whether a title tells to undo something. */
  static boolean undoes(String title) {
    return parts(plain(title)).stream()
        .anyMatch(
            part -> word("undo|loosen|slacken").matcher(part).find() && !NO.matcher(part).find());
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replaceAll("[-'’]", " ")
        .replace("jackstand", "stand")
        .replace("trestle", "stand");
  }

  private static List<String> parts(String text) {
    return List.of(PARTS.split(text));
  }
}
