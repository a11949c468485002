package org.undercall.hearing;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SpokenSamples;

/** Things said at a torque stage by plain synthetic speakers, with pauses in them. */
final class Said {
  private static final List<String> FIXED =
      List.of(
          "step completed",
          "cancel that",
          "say again",
          "where am i",
          "what is left",
          "take a break now",
          "jack moved",
          "fitted hand tight");

  private static final List<String> OPEN = List.of("torque reached", "wrench clicked");

  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);
  private final Speakers speakers;

  /** Something said, with what would be right. */
  record Spoken(Speech speech, Predicate<Intent> right) {}

  Said(Speakers speakers) {
    this.speakers = speakers;
  }

  /** A phrase that nothing can follow. */
  Spoken fixed(Random random) {
    return spoken(FIXED.get(random.nextInt(FIXED.size())), "", 0, random);
  }

  /** A phrase that a value can follow, without one. */
  Spoken open(Random random) {
    return spoken(OPEN.get(random.nextInt(OPEN.size())), "", 0, random);
  }

  /** One hundred ... seventy five. */
  Spoken inWords(int pause, Random random) {
    int number = number(random);
    String rest = NumberFigures.inWords(number % 100, random);
    return spoken(hundreds(number), rest, pause, random);
  }

  /** One hundred seventy ... five. */
  Spoken tens(int pause, Random random) {
    int number = 100 * (1 + random.nextInt(3));
    int tens = 10 * (2 + random.nextInt(8));
    String words = hundreds(number) + " " + NumberFigures.inWords(tens, random);
    return spoken(words, digit(random), pause, random);
  }

  /** One seven ... five. */
  Spoken lastDigit(int pause, Random random) {
    return spoken(SpokenSamples.digits(number(random) / 10), digit(random), pause, random);
  }

  /** One seven five ... point five. */
  Spoken decimals(int pause, Random random) {
    String words = SpokenSamples.digits(number(random));
    return spoken(words, "point " + digit(random), pause, random);
  }

  /** Torque reached ... one seventy five. */
  Spoken value(int pause, Random random) {
    String words = OPEN.get(0);
    return spoken(words, SpokenSamples.digits(number(random)), pause, random);
  }

  /** Words, and more words after a pause in milliseconds; said in one go if it is 0. */
  private Spoken spoken(String words, String more, int pause, Random random) {
    String all = (words + " " + more).strip();
    Intent meant = Interpreter.interpret(RecognisedPhrase.typed(all), allowed, 0);
    Speaker speaker = speakers.anyPlain(random);
    Speech speech = pause > 0 ? speaker.say(words) : speaker.say(all);
    if (pause > 0) {
      Sound sound = Sound.joined(speech.sound(), Sound.silence(pause), speaker.say(more).sound());
      speech = new Speech(sound, speech.activeRms());
    }
    return new Spoken(speech, heard -> same(heard, meant));
  }

  /** Whether two intents mean the same; how a number was said does not matter. */
  private static boolean same(Intent heard, Intent meant) {
    if (heard instanceof Intent.OfNumber h && meant instanceof Intent.OfNumber m) {
      return h.kind() == m.kind() && h.number().value().compareTo(m.number().value()) == 0;
    }
    return heard.equals(meant);
  }

  private static int number(Random random) {
    return 121 + random.nextInt(79) + 100 * random.nextInt(3);
  }

  private static String hundreds(int number) {
    return SpokenSamples.digits(number / 100) + " hundred";
  }

  private static String digit(Random random) {
    return SpokenSamples.digits(1 + random.nextInt(9));
  }
}
