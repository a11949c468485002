package org.undercall.core.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What words say of the load of the suspension, in English (common practice, no source). A guess: a
 * part of a sentence that tells to tighten, or that holds nothing but a condition, asks for that
 * condition; one with a no refuses it. Whatever can be read in two ways asks for nothing.
 */
public final class LoadWords {
  /** A condition as words name it. */
  enum Named {
    RIDE_HEIGHT(
        "ride height"
            + Part.NONE
            + "|(?<!un)laden|suspension (?:is )?loaded"
            + "|(?:design|kerb|curb) height|weight (?:is )?on (?:the |its |all )?wheels"),
    /** On its wheels, so that it does not hang; the height itself is not said. */
    ON_ITS_WHEELS(
        "(?:wheels?|vehicle|car|van|it|standing|down|back) (?:is |are )?on (?:the |its )?(?:ground"
            + "|floor|wheels)|on (?:the ground|its wheels)|lowering(?! the arm)"
            + "|(?:vehicle|car|van|it) (?:is |was |has been )?lowered"
            + "|(?<=once |when |until )lowered"),
    FULL_DROOP(
        "(?:full )?droop"
            + Part.NONE
            + "|fully extended|full rebound|hanging free(?:ly)?"
            + "|(?:suspension|wheels?|axle|arms?) (?:is |are )?(?:hang|hangs|hanging|unloaded)"
            + "|(?<=tighten |tighten it |tighten them |tightened )hanging");

    private final Pattern words;

    Named(String words) {
      this.words = Pattern.compile("\\b(?:" + words + ")\\b");
    }
  }

  /** A part of the car that is named after a condition. */
  private static final class Part {
    static final String NONE =
        "(?! (?:sensor|level|link|adjust|valve|arm|rod|bracket|limiter|stop|strap|bolt|nut|screw))";
  }

  /**
   * A condition that words ask for, or refuse.
   *
   * @param named the condition
   * @param refused whether it must not be
   * @param words the part of the sentence that says so
   */
  record Asked(Named named, boolean refused, String words) {}

  private static final Pattern PARTS = Pattern.compile("[.;:!,()]+|\\bbut\\b|\\bthen\\b");
  private static final Pattern SPOKEN =
      Pattern.compile(
          "(?i)(?:at |when |with )?(?:normal )?(?:ride height|(?<!un)laden|(?:the )?(?:wheels?|vehicle|car)"
              + " (?:standing )?on (?:the |its )?(?:ground|wheels)|full droop|fully extended"
              + "|suspension (?:loaded|hanging))");

  private static final Pattern TIGHTEN =
      Pattern.compile(
          "\\b(?:tighten|do up|final(?:ly)? (?:torque|tightening)|torque (?:up|it|this|only|at|when|with)"
              + "|(?:must|only|shall|should|may only|to) be (?:\\w+ )?(?:tightened|torqued))\\b");

  /** What leaves it open what is asked, for which step, or of when something is told. */
  private static final Pattern OPEN =
      Pattern.compile(
          "\\b(?:if|whether|may be|can|could|would|might|as well|too|also|even|except|apart|other"
              + "|later|afterwards|next|measure|note|noted|snug|lightly|hand tight|finger"
              + "|because|since|why|jack|jacked)\\b|\\?");

  private static final Pattern TOGGLES =
      Pattern.compile(
          "\\b(?:not|never|no|don t|cannot|without|avoid|neither|nor|until|before|unless)\\b");
  private static final Pattern FILLERS =
      Pattern.compile(
          "\\b(?:only|always|at|with|when|while|the|car|van|vehicle|wheels?|suspension|not|never|must"
              + "|be|to|required|is|here|please|load|condition|position|in|normal|this|one|fully)\\b|\\s+");

  /** What stands before a condition in which something is done. */
  private static final Pattern DURING =
      Pattern.compile(
          "\\b(?:at|when|with|while|until|before|after|once|unless|in|is|are|on|tighten|tightened)"
              + "(?: \\w+){0,3} ?$");

  private static final int MOST_TOGGLES = 2;

  private LoadWords() {}

  /** The words of a text that speak of the load, if there are any: not what they mean. */
  public static Optional<String> spokenIn(String text) {
    return SPOKEN.matcher(text).results().map(MatchResult::group).findFirst();
  }

  /** The conditions that a text asks for or refuses. */
  static List<Asked> asked(String text) {
    List<Asked> all = new ArrayList<>();
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[-'’]", " ").replaceAll(" +", " ");
    for (String part : PARTS.split(plain, -1)) {
      inPart(part).ifPresent(all::add);
    }
    return all;
  }

  private static Optional<Asked> inPart(String part) {
    Map<Named, Integer> named = new EnumMap<>(Named.class);
    String rest = part;
    for (Named each : Named.values()) {
      Matcher found = each.words.matcher(part);
      if (found.find()) {
        named.put(each, found.start());
        rest = each.words.matcher(rest).replaceAll(" ");
      }
    }
    // a height is told by more than one word: laden, on its wheels
    if (named.containsKey(Named.RIDE_HEIGHT)) {
      named.remove(Named.ON_ITS_WHEELS);
    }
    boolean alone = FILLERS.matcher(rest).replaceAll("").isBlank();
    if (named.size() != 1
        || OPEN.matcher(part).find()
        || !(alone || TIGHTEN.matcher(part).find())) {
      return Optional.empty();
    }
    Map.Entry<Named, Integer> only = named.entrySet().iterator().next();
    String front = part.substring(0, only.getValue());
    if (!alone && !part.startsWith("on ", only.getValue()) && !DURING.matcher(front).find()) {
      return Optional.empty();
    }
    long before = TOGGLES.matcher(front).results().count();
    long all = TOGGLES.matcher(part).results().count();
    return before > MOST_TOGGLES || all > before
        ? Optional.empty()
        : Optional.of(new Asked(only.getKey(), before % 2 == 1, part.strip()));
  }
}
