package org.undercall.core.intent;

import java.util.List;
import java.util.Set;

/** Tells whether a phrase may have come from the program's own voice. */
public final class OwnSpeech {
  private OwnSpeech() {}

  /**
   * Whether the phrase must not count, because the voice may have said it: all its words were
   * spoken, or, of one that closes, confirms or completes, all that are no numbers. What cancels a
   * load and what is denied always counts: neither can close anything.
   *
   * @param spoken the words that the voice said while the phrase was heard
   */
  public static boolean mayBe(RecognisedPhrase phrase, Intent intent, Set<String> spoken) {
    if (intent.kind().cancelsLoad() || intent.kind() == IntentKind.DENIED) {
      return false;
    }
    List<String> words = phrase.words().stream().map(RecognisedPhrase.Word::text).toList();
    List<String> plain = words.stream().filter(word -> !NumberWords.ALL.contains(word)).toList();
    return spoken.containsAll(words)
        || (intent.kind().closes() && !plain.isEmpty() && spoken.containsAll(plain));
  }
}
