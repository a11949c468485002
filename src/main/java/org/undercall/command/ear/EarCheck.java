package org.undercall.command.ear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.undercall.core.decision.Decider;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.Heard;

/** Asks for every phrase of the check and listens as in work. */
final class EarCheck {
  private static final long PATIENCE_MILLIS = 10_000;

  private final Ear ear;
  private final Consumer<String> ask;
  private final int mostTries;

  /**
   * A check.
   *
   * @param ask says what is to be said
   * @param mostTries how often a phrase may be tried
   */
  EarCheck(Ear ear, Consumer<String> ask, int mostTries) {
    this.ear = ear;
    this.ask = ask;
    this.mostTries = mostTries;
  }

  /** What came of all phrases. After the end of the input nothing more is heard. */
  List<CheckedPhrase> run() {
    List<CheckedPhrase> all = new ArrayList<>();
    for (CheckPhrase phrase : CheckPhrase.ALL) {
      ask.accept("Say: " + phrase.words() + ".");
      CheckedPhrase checked = attempt(phrase, 1);
      while (checked.result() != CheckedPhrase.Result.RIGHT && checked.tries() < mostTries) {
        ask.accept("Once more: " + phrase.words() + ".");
        checked = attempt(phrase, checked.tries() + 1);
      }
      all.add(checked);
    }
    return all;
  }

  private CheckedPhrase attempt(CheckPhrase phrase, int number) {
    Set<IntentKind> allowed = Decider.heard(phrase.phase());
    Optional<Heard> heard = next(allowed);
    if (heard.isEmpty()) {
      return new CheckedPhrase(
          phrase, CheckedPhrase.Result.NOT_HEARD, number, "", Optional.empty());
    }
    CheckedPhrase.Result result = result(phrase, meaning(heard.get().phrase(), allowed));
    return new CheckedPhrase(phrase, result, number, heard.get().text(), heard.get().levels());
  }

  private static CheckedPhrase.Result result(CheckPhrase phrase, Intent intent) {
    Intent right = meaning(RecognisedPhrase.typed(phrase.words()), Decider.heard(phrase.phase()));
    if (intent.equals(right)) {
      return CheckedPhrase.Result.RIGHT;
    }
    return intent.kind() == IntentKind.UNCLEAR
        ? CheckedPhrase.Result.ASKED_AGAIN
        : CheckedPhrase.Result.OTHER;
  }

  private static Intent meaning(RecognisedPhrase phrase, Set<IntentKind> allowed) {
    return Interpreter.interpret(phrase, allowed, Interpreter.LEAST_CONFIDENCE);
  }

  private Optional<Heard> next(Set<IntentKind> allowed) {
    try {
      return ear.next(allowed, PATIENCE_MILLIS);
    } catch (Ear.EndOfInput e) {
      return Optional.empty();
    }
  }
}
