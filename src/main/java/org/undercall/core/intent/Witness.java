package org.undercall.core.intent;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Judges a phrase by what the same sound is when any word of the language may be heard. A list of
 * words hides every word that is not on it: "torque not reached" sounds like "torque reached" to
 * it. The free hearing is a bad reader and a good veto, so it never closes anything: it speaks
 * against what closes, and is believed where it makes safer.
 */
public final class Witness {
  /** Longer than any phrase, in seconds: talk among people, which is no concern of the program. */
  private static final double LONGEST = 5;

  /** A call of danger has no more words; what has is talk that happens to hold one. */
  static final int MOST_WORDS = 5;

  /** So surely heard, "help" is no scrap of talk: measured on chatter. */
  private static final double SURE_CALL = 0.95;

  /** The words of the longest call: "letting the car down". */
  private static final int LONGEST_CALL = 4;

  /** A denial has no more words. */
  private static final int MOST_DENYING = 8;

  /** What holds one of these is believed without a witness: it sounds like little else. */
  private static final Set<String> MOVING = Set.of("car", "jack", "stand", "slipping", "falling");

  /** All words of what cancels a load. */
  private static final Set<String> CALLED =
      Stream.of(IntentKind.values())
          .filter(IntentKind::cancelsLoad)
          .flatMap(kind -> Phrasebook.compiledWordings(kind).stream())
          .flatMap(wording -> wording.before().stream())
          .collect(Collectors.toSet());

  private Witness() {}

  /** Whether words name what can slip or fall. */
  static boolean names(List<String> words) {
    return words.stream().anyMatch(MOVING::contains);
  }

  /** What a free hearing says of a phrase. */
  enum Says {
    THE_SAME,
    NOTHING,
    OTHERWISE;

    private static Says of(List<String> phrase, List<String> free) {
      if (Denials.contradicts(phrase, free)) {
        return OTHERWISE;
      }
      return Denials.bears(phrase, free) ? THE_SAME : NOTHING;
    }
  }

  /** Whether the sound of a phrase must be heard freely too. */
  public static boolean isWanted(RecognisedPhrase heard, Set<IntentKind> allowed, double least) {
    if (allowed.contains(IntentKind.NOTE_TEXT) || heard.words().isEmpty()) {
      return false;
    }
    Intent intent = Interpreter.interpret(heard, allowed, least);
    return counts(intent.kind(), allowed)
        || (intent.kind().cancelsLoad() && !isCall(heard, List.of()))
        || saysNo(intent)
        || (intent instanceof Intent.Unclear && seconds(heard) <= LONGEST);
  }

  /**
   * What else the sound of a phrase could be, if it closes something.
   *
   * @return the phrase first; empty if it closes nothing
   */
  public static List<String> rivals(RecognisedPhrase heard, Set<IntentKind> allowed, double least) {
    return counts(Interpreter.interpret(heard, allowed, least).kind(), allowed)
        ? Rivals.around(texts(heard))
        : List.of();
  }

  /** Whether a phrase leads its rivals so far that no other hearing could speak against it. */
  public static boolean isBeyondDoubt(RecognisedPhrase heard, List<Alternative> alternatives) {
    return Rivals.lead(texts(heard), alternatives) >= Certainty.BEYOND_DOUBT;
  }

  /**
   * A phrase after it was weighed against its rivals.
   *
   * @param both as for {@link #judged}
   * @param alternatives what the sound could be among the {@link #rivals}
   * @param poor whether there is noise
   * @return what was heard freely if that cancels a load; the phrase if it leads by far; else what
   *     was denied, if that is clear, or the phrase with too little confidence
   */
  public static RecognisedPhrase weighed(
      HeardTwice both,
      List<Alternative> alternatives,
      boolean poor,
      Set<IntentKind> allowed,
      double least) {
    if (Interpreter.interpret(both.free(), allowed, least).kind().cancelsLoad()) {
      return both.free();
    }
    List<String> words = texts(both.heard());
    double lead = Rivals.lead(words, alternatives);
    Says says = Says.of(words, texts(both.free()));
    if (lead >= Certainty.lead(poor, says)) {
      return both.heard();
    }
    boolean behind = lead <= -Certainty.lead(poor, Says.THE_SAME);
    return Stream.concat(
            says == Says.OTHERWISE ? Stream.of(both.free()) : Stream.empty(),
            behind ? Rivals.likeliest(alternatives).stream() : Stream.empty())
        .filter(p -> Interpreter.interpret(p, allowed, least).kind() == IntentKind.DENIED)
        .findFirst()
        .orElseGet(() -> doubted(both.heard(), least));
  }

  /** A value that is called again confirms what was read back. */
  private static boolean counts(IntentKind kind, Set<IntentKind> allowed) {
    boolean value = kind == IntentKind.VALUE_CALLED || kind == IntentKind.READING_CALLED;
    boolean again = value && allowed.contains(IntentKind.READ_BACK_RIGHT);
    boolean noted = kind == IntentKind.FITTED_SNUG || kind == IntentKind.WRENCH_NAMED;
    return kind.closes() || again || noted;
  }

  /**
   * A phrase without {@link #rivals} after both were heard.
   *
   * @return what was heard freely where that denies, cancels a load or is a short answer; else what
   *     was heard with the list, with too little confidence if the free hearing speaks against it,
   *     bears no word of an unsure call such as "help me", or is no denial where the list held one
   */
  public static RecognisedPhrase judged(HeardTwice both, Set<IntentKind> allowed, double least) {
    RecognisedPhrase heard = both.heard();
    RecognisedPhrase free = both.free();
    Intent intent = Interpreter.interpret(heard, allowed, least);
    IntentKind other = Interpreter.interpret(free, allowed, least).kind();
    if (intent instanceof Intent.Unclear unclear) {
      boolean talk = free.words().size() > (other.cancelsLoad() ? MOST_WORDS : MOST_DENYING);
      return makesSafer(other, unclear) && !talk ? free : heard;
    }
    if (other.cancelsLoad()) {
      return free;
    }
    if (intent.kind().cancelsLoad()) {
      return isCall(heard, texts(free)) ? heard : doubted(heard, least / 2);
    }
    if (saysNo(intent)) {
      boolean foreign = texts(heard).contains(RecognisedPhrase.UNKNOWN);
      if (foreign && other == IntentKind.DENIED) {
        return free; // The list may lack the word for what is denied; both are a no.
      }
      boolean denied = other == intent.kind() || (!foreign && Denials.in(texts(free)));
      return denied ? heard : doubted(heard, least / 2);
    }
    if (!Denials.contradicts(texts(heard), texts(free))) {
      return heard;
    }
    return other == IntentKind.DENIED ? free : doubted(heard, least);
  }

  /**
   * What names what moves needs no witness, nor does what is surely heard; a scrap of talk does.
   */
  private static boolean isCall(RecognisedPhrase heard, List<String> free) {
    List<String> words = texts(heard);
    List<String> called = words.stream().filter(CALLED::contains).toList();
    boolean whole = words.size() <= LONGEST_CALL && !words.contains(RecognisedPhrase.UNKNOWN);
    return whole
        && (names(words) || heard.confidence() >= SURE_CALL || Denials.bears(called, free));
  }

  private static boolean saysNo(Intent intent) {
    return intent.kind() == IntentKind.DENIED || intent.kind() == IntentKind.NO;
  }

  private static boolean makesSafer(IntentKind free, Intent.Unclear heard) {
    boolean number = heard.number().isPresent();
    return free == IntentKind.DENIED || free.cancelsLoad() || (free.isShort() && !number);
  }

  private static RecognisedPhrase doubted(RecognisedPhrase heard, double least) {
    double confidence = Math.min(heard.confidence(), least / 2);
    return new RecognisedPhrase(
        heard.words().stream()
            .map(w -> new RecognisedPhrase.Word(w.text(), confidence, w.start(), w.end()))
            .toList());
  }

  private static double seconds(RecognisedPhrase heard) {
    List<RecognisedPhrase.Word> words = heard.words();
    return words.get(words.size() - 1).end() - words.get(0).start();
  }

  private static List<String> texts(RecognisedPhrase phrase) {
    return phrase.words().stream().map(RecognisedPhrase.Word::text).toList();
  }
}
