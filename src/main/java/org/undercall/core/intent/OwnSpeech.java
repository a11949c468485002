package org.undercall.core.intent;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells whether a phrase may have come from the program's own voice. */
public final class OwnSpeech {
  private OwnSpeech() {}

  /**
   * Whether the phrase must not count, because the voice may have said it: all its words were
   * spoken, or, of one that closes, confirms or completes, all its numbers or all its other words.
   * What cancels a load and what is denied always counts: neither can close anything.
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
        || (intent.kind().closes()
            && parts.values().stream().anyMatch(p -> !p.isEmpty() && spoken.containsAll(p)));
  }
}
