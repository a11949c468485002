package org.undercall.hearing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.decision.CutValue;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.listen.Attention;
import org.undercall.listen.PatientEar;
import org.undercall.listen.SoundEar;
import org.undercall.port.Ear;
import org.undercall.port.Heard;

/** Hears clips exactly as the program does: ear, word list of the phase, interpreter, limit. */
final class Listener {
  private static final long PATIENCE_MILLIS = 60_000;

  private final RecogniserMaker maker;
  private final Supplier<Attention> attention;
  private final Map<Set<IntentKind>, List<String>> lists = new ConcurrentHashMap<>();

  Listener(RecogniserMaker maker, Supplier<Attention> attention) {
    this.maker = maker;
    this.attention = attention;
  }

  /** The program as it stands. */
  static Listener standard(RecogniserMaker maker) {
    return new Listener(maker, Attention::standard);
  }

  /**
   * One phrase that came out of a clip.
   *
   * @param at seconds from the clip's start until it was reported, as if the sound came live; empty
   *     if it came only because the clip was over
   */
  record Heard(RecognisedPhrase phrase, Intent intent, OptionalDouble at) {
    boolean isClear() {
      return intent.kind() != IntentKind.UNCLEAR;
    }
  }

  /** Everything heard in a clip. */
  List<Heard> hear(Sound sound, Set<IntentKind> allowed) {
    return hear(new ClipFrames(sound), allowed);
  }

  /** Everything heard in a clip at a stage whose value has so many digits. */
  List<Heard> hear(Sound sound, Set<IntentKind> allowed, int digits) {
    return hear(
        new ClipFrames(sound),
        allowed,
        ear ->
            new PatientEar(
                ear,
                said -> CutValue.mayGoOn(said, digits),
                (first, whole) -> CutValue.isOne(whole, digits)));
  }

  /** Everything heard in a clip that sounds as fast as a live source. */
  List<Heard> hearLive(Sound sound, Set<IntentKind> allowed) {
    return hear(ClipFrames.live(sound), allowed);
  }

  private List<Heard> hear(ClipFrames frames, Set<IntentKind> allowed) {
    return hear(frames, allowed, ear -> ear);
  }

  private List<Heard> hear(ClipFrames frames, Set<IntentKind> allowed, UnaryOperator<Ear> around) {
    List<Heard> all = new ArrayList<>();
    try (Ear ear = around.apply(new SoundEar(frames, maker, this::words, attention.get()))) {
      while (true) {
        Optional<RecognisedPhrase> phrase =
            ear.next(allowed, PATIENCE_MILLIS).map(org.undercall.port.Heard::phrase);
        double at = frames.seconds();
        if (phrase.isPresent()) {
          Intent intent =
              Interpreter.interpret(phrase.get(), allowed, Interpreter.LEAST_CONFIDENCE);
          boolean live = !frames.ended();
          all.add(
              new Heard(
                  phrase.get(), intent, live ? OptionalDouble.of(at) : OptionalDouble.empty()));
        }
      }
    } catch (Ear.EndOfInput e) {
      return all;
    }
  }

  private List<String> words(Set<IntentKind> allowed) {
    return lists.computeIfAbsent(allowed, Phrasebook::wordList);
  }

  /** What came of saying something, given what would be right. */
  static Result result(List<Heard> heard, Predicate<Intent> right) {
    Result result = judged(heard.stream().map(Heard::intent).toList(), right);
    boolean cut = heard.size() > 1 && result != Result.RIGHT && right.test(whole(heard));
    return cut ? Result.CUT : result;
  }

  /** What all the pieces together would have meant. */
  private static Intent whole(List<Heard> heard) {
    List<RecognisedPhrase.Word> words =
        heard.stream().flatMap(h -> h.phrase().words().stream()).toList();
    Set<IntentKind> all = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));
    return Interpreter.interpret(new RecognisedPhrase(words), all, 0);
  }

  /** The same, from the intents alone. */
  static Result judged(List<Intent> heard, Predicate<Intent> right) {
    List<Intent> clear = heard.stream().filter(i -> i.kind() != IntentKind.UNCLEAR).toList();
    if (clear.isEmpty()) {
      return heard.isEmpty() ? Result.SILENT : Result.ASKED;
    }
    return clear.stream().allMatch(right) ? Result.RIGHT : Result.WRONG;
  }
}
