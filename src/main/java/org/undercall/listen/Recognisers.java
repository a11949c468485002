package org.undercall.listen;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;

/**
 * Makes recognisers for what may be said, each with its word list; notes are heard freely.
 *
 * @param lists the word lists made so far
 */
record Recognisers(
    RecogniserMaker maker,
    Function<Set<IntentKind>, List<String>> phrases,
    Map<Set<IntentKind>, List<String>> lists) {

  Recognisers(RecogniserMaker maker, Function<Set<IntentKind>, List<String>> phrases) {
    this(maker, phrases, new HashMap<>());
  }

  /**
   * A recogniser.
   *
   * @param startSeconds where in the source its sound starts
   */
  Recogniser of(Set<IntentKind> allowed, double startSeconds) {
    return allowed.contains(IntentKind.NOTE_TEXT)
        ? maker.free(startSeconds)
        : maker.withWordList(lists.computeIfAbsent(allowed, this::listed), startSeconds);
  }

  /** The words with foreign speech added, which is told from them. */
  private List<String> listed(Set<IntentKind> allowed) {
    List<String> list = new ArrayList<>(phrases.apply(allowed));
    list.add(RecognisedPhrase.UNKNOWN);
    return List.copyOf(list);
  }
}
