package org.undercall.core.intent;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.undercall.core.intent.Intent.Unclear;
import org.undercall.core.intent.Intent.Unclear.Reason;

/**
 * Answers that carry two things: a whole phrase for new hardware, then one for what follows it. No
 * part is ever what closes a stage or answers a read-back.
 */
final class OneAnswer {
  private static final List<Wording> FIRST =
      Stream.concat(
              PhraseTable.WORDINGS.get(IntentKind.NEW_HARDWARE).stream(), Stream.of("new bolt"))
          .map(text -> Wording.of(IntentKind.NEW_HARDWARE, text))
          .toList();

  private static final List<Wording> SECOND =
      List.of(
          Wording.of(IntentKind.HEAD_MARKING, "head marking <marking>"),
          Wording.of(IntentKind.HEAD_MARKING, "marked <marking>"),
          Wording.of(IntentKind.HEAD_MARKING, "<marking>"),
          Wording.of(IntentKind.FITTED_SNUG, "run in by hand"),
          Wording.of(IntentKind.FITTED_SNUG, "<count> run in by hand"));

  /** Every first phrase with as many second ones as bring neighbouring words not seen before. */
  static final List<String> PHRASES = phrases();

  private OneAnswer() {}

  private static List<String> phrases() {
    WordList second = new WordList();
    SECOND.forEach(second::add);
    return FIRST.stream()
        .flatMap(OneAnswer::filled)
        .flatMap(one -> second.phrases().stream().map(other -> one + " " + other))
        .toList();
  }

  private static Stream<String> filled(Wording wording) {
    return wording
        .slot()
        .map(slot -> Fillings.of(slot).stream().map(wording::filled))
        .orElseGet(() -> Stream.of(wording.filled("")));
  }

  /** Both parts, if the words are just a first phrase and a second one. */
  static Intent read(List<String> words) {
    for (int end = 1; end < words.size(); end++) {
      Optional<Intent> first = match(FIRST, words.subList(0, end));
      Optional<Intent> second = match(SECOND, words.subList(end, words.size()));
      if (first.isPresent() && second.isPresent()) {
        return new Intent.Several(List.of(first.get(), second.get()));
      }
    }
    return new Unclear(Reason.NOT_A_PHRASE);
  }

  private static Optional<Intent> match(List<Wording> wordings, List<String> words) {
    return wordings.stream()
        .map(wording -> wording.read(words))
        .filter(intent -> !(intent instanceof Unclear))
        .findFirst();
  }
}
