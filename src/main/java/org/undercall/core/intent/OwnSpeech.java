package org.undercall.core.intent;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells whether a phrase may have come from the program's own voice. */
public final class OwnSpeech {
  private static final Set<String> SIDES = Set.of("left", "right", "front", "rear");

  /** What may be said with or without a side. */
  private static final Set<IntentKind> SIDED =
      EnumSet.of(IntentKind.WHEELS_CARRY, IntentKind.KNUCKLE_JACKED, IntentKind.HANGS_FREE);

  private OwnSpeech() {}

  /**
   * Whether the phrase must not count, because the voice may have said it: all its words were
   * spoken, or, of one that closes, confirms or completes, all its numbers or all its other words.
   * A side that need not be said must not come from the voice either; a read-back, which names one,
   * has other words enough. What cancels a load and what is denied always counts: neither can close
   * anything.
   *
   * @param spoken the words that the voice said while the phrase was heard
   */
  public static boolean mayBe(RecognisedPhrase phrase, Intent intent, Set<String> spoken) {
    if (intent.kind().cancelsLoad() || intent.kind() == IntentKind.DENIED) {
      return false;
    }
    List<String> words = phrase.words().stream().map(RecognisedPhrase.Word::text).toList();
    Map<Boolean, List<String>> parts =
        words.stream().collect(Collectors.partitioningBy(NumberWords.ALL::contains));
    return spoken.containsAll(words)
        || (SIDED.contains(intent.kind())
            && words.stream().anyMatch(word -> SIDES.contains(word) && spoken.contains(word)))
        || (intent.kind().closes()
            && parts.values().stream().anyMatch(p -> !p.isEmpty() && spoken.containsAll(p)));
  }
}
