package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.intent.RecognisedPhrase;

/** Phrases that close something, what lies near them, and calls of danger. */
final class NearPhrases {
  /** Denying words that are put at every place of every closing phrase. */
  private static final List<String> DENYING =
      List.of(
          "not", "never", "isn't", "hasn't", "wasn't", "haven't", "no", "almost", "nearly", "half",
          "not yet", "only", "when", "if", "until", "before", "is", "without", "old", "used");

  /** Other words that are put in at every place, or stand there instead: sides, parts, tenses. */
  static final List<String> OTHERS =
      """
      left, right, front, rear, upper, lower, other, first, second, bolt, nut, wheel
      will, was, going to be, should, already, again, about, please, five, nothing
      over, under, some, soon, trying
      """
          .lines()
          .flatMap(line -> Stream.of(line.split(", ", -1)))
          .toList();

  /** What a person might say instead, in the phase where the denied would close something. */
  static final List<Spoken> NATURAL =
      Stream.of(
              natural(
                  Phase.TORQUE,
                  """
                  torque hasn't been reached
                  is torque reached
                  when torque is reached
                  wrench has not clicked
                  wrench didn't click
                  the wrench never clicked
                  not tightened to torque
                  torque was not reached
                  it did not click
                  torque isn't there yet
                  nearly at torque
                  i have not tightened it
                  haven't tightened that yet
                  did the wrench click
                  wrench won't click
                  not up to torque
                  torque not reached yet
                  couldn't reach torque
                  wrench clicked too early
                  torque reached on the wrong bolt
                  """),
              natural(
                  Phase.ANGLE,
                  """
                  angle only half turned
                  angle was not turned
                  angle not turned
                  angle isn't turned yet
                  turned only halfway
                  not turned to angle
                  angle nearly turned
                  has the angle been turned
                  couldn't turn the angle
                  angle turned too far
                  """),
              natural(
                  Phase.CHECK,
                  """
                  check hasn't passed
                  doesn't look good to me
                  check did not pass
                  check not passed
                  check failed
                  it doesn't look good
                  looks bad
                  not looking good
                  has the check passed
                  """),
              natural(
                  Phase.DO,
                  """
                  step isn't completed yet
                  i am not finished with this step
                  step not completed
                  this step is not finished
                  step nearly finished
                  step is almost done
                  not done with this step
                  is this step finished
                  when this step is finished
                  """),
              natural(
                  Phase.READ_BACK,
                  """
                  that is not correct
                  that is incorrect
                  you didn't hear me right
                  that isn't right
                  that's not what i said
                  not correct
                  that was wrong
                  is that correct
                  """),
              natural(
                  Phase.LOAD_READ_BACK,
                  """
                  left side is not at ride height
                  right side isn't at ride height yet
                  that is not correct
                  that is incorrect
                  not at ride height
                  """),
              natural(
                  Phase.GATE,
                  """
                  wheels do not carry the car
                  car is not on its wheels
                  suspension doesn't hang free
                  wheels don't carry the car
                  the car isn't down yet
                  left side is not at ride height
                  not at ride height yet
                  when the car is on its wheels
                  left side almost at ride height
                  """),
              natural(
                  Phase.HARDWARE,
                  """
                  used bolt fitted
                  old nut fitted
                  no new hardware fitted
                  new bolt not fitted
                  new hardware not fitted
                  old bolt fitted again
                  new nut isn't fitted
                  reused the old bolt
                  """))
          .flatMap(s -> s)
          .toList();

  private NearPhrases() {}

  /** A phrase said in a phase. */
  record Spoken(String words, Phase phase) {}

  private static Stream<Spoken> natural(Phase phase, String lines) {
    return lines.lines().map(line -> new Spoken(line, phase));
  }

  static List<Spoken> closing() {
    List<Spoken> all = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      for (IntentKind kind : PhaseWords.heard(phase)) {
        if (kind.closes()) {
          Phrasebook.wordings(kind).stream()
              .map(w -> w.replace("<side>", "left side"))
              .filter(w -> !w.contains("<"))
              .forEach(w -> all.add(new Spoken(w, phase)));
        }
      }
    }
    return all;
  }

  static List<Spoken> denied() {
    return closing().stream()
        .flatMap(phrase -> DENYING.stream().flatMap(word -> with(phrase, word)))
        .toList();
  }

  /** Every other word at every place, in place of every word, and every word left out. */
  static List<Spoken> near() {
    List<Spoken> all = new ArrayList<>();
    for (Spoken phrase : closing()) {
      List<String> words = List.of(phrase.words().split(" ", -1));
      for (String other : OTHERS) {
        with(phrase, other).forEach(all::add);
        for (int at = 0; at < words.size(); at++) {
          List<String> instead = new ArrayList<>(words);
          instead.set(at, other);
          all.add(new Spoken(String.join(" ", instead), phrase.phase()));
        }
      }
      for (int at = 0; at < words.size(); at++) {
        List<String> less = new ArrayList<>(words);
        less.remove(at);
        all.add(new Spoken(String.join(" ", less), phrase.phase()));
      }
    }
    return all.stream().filter(NearPhrases::closesNothing).toList();
  }

  /**
   * Whether the words, if they are heard as they are, close nothing: others are no near phrases.
   */
  private static boolean closesNothing(Spoken said) {
    return !Interpreter.interpret(
            RecognisedPhrase.typed(said.words()), PhaseWords.heard(said.phase()), 0)
        .kind()
        .closes();
  }

  private static Stream<Spoken> with(Spoken phrase, String word) {
    List<String> words = List.of(phrase.words().split(" ", -1));
    return IntStream.rangeClosed(0, words.size())
        .mapToObj(
            at -> {
              List<String> with = new ArrayList<>(words);
              with.add(at, word);
              return new Spoken(String.join(" ", with), phrase.phase());
            });
  }

  static List<Spoken> danger() {
    List<Spoken> all = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      for (IntentKind kind : PhaseWords.heard(phase)) {
        if (kind.cancelsLoad()) {
          Phrasebook.wordings(kind).forEach(w -> all.add(new Spoken(w, phase)));
        }
      }
    }
    return all;
  }
}
