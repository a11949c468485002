package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.undercall.EndOfSpeech;
import org.undercall.adapter.microphone.Frames;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SpokenSamples;

/** Ways to notice the end of a phrase: how soon, and how often a phrase is cut in two. */
final class EndFigures {
  private static final int A_SET = 60;
  private static final int NEVER = Integer.MAX_VALUE;
  private static final List<String> FIXED =
      List.of(
          "step completed",
          "cancel that",
          "say again",
          "where am i",
          "what is left",
          "hold the work",
          "jack moved",
          "fitted hand tight");

  private final Bench bench;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);
  private final List<String> list = Phrasebook.wordList(allowed);

  /** Something said, with what would be right. */
  private record Said(Speech speech, Predicate<Intent> right) {}

  private record Trial(Result result, double delay) {}

  private interface Saying {
    Said by(Random random);
  }

  EndFigures(Bench bench) {
    this.bench = bench;
  }

  List<Table> tables() {
    Table table =
        new Table(
            "Ways to notice the end of a phrase",
            "Plain synthetic speakers, clean, torque stage. The delay is from the end of speech"
                + " until the phrase is reported, median. With a pause: the value in words, such as"
                + " one hundred ... seventy five, with so much silence after the hundreds.",
            List.of(
                "end by",
                "fixed phrases, s",
                "right %",
                "values, s",
                "values right %",
                "pause 300 ms, right %",
                "pause 500 ms, right %"));
    row(table, "the recogniser (as it is)", EndOfSpeech::byRecogniser);
    for (int millis : List.of(240, 360)) {
      row(
          table,
          "words unchanged " + millis + " ms; by the recogniser if they could go on",
          () -> new EarlyEnd(allowed, list, millis, NEVER));
    }
    row(
        table,
        "words unchanged 240 ms; 600 ms if they could go on",
        () -> new EarlyEnd(allowed, list, 240, 600));
    return List.of(table);
  }

  private void row(Table table, String label, Supplier<EndOfSpeech> end) {
    Listener listener = new Listener(bench.maker(), end);
    List<Trial> fixed = trials(listener, 801, this::fixed);
    List<Trial> values = trials(listener, 802, random -> value(0, random));
    table.row(
        label,
        median(fixed),
        right(fixed),
        median(values),
        right(values),
        right(trials(listener, 803, random -> value(300, random))),
        right(trials(listener, 804, random -> value(500, random))));
  }

  private Said fixed(Random random) {
    String words = FIXED.get(random.nextInt(FIXED.size()));
    Intent meant = Interpreter.interpret(RecognisedPhrase.typed(words), allowed, 0);
    return new Said(bench.speakers().anyPlain(random).say(words), meant::equals);
  }

  private Said value(int pause, Random random) {
    int number = 121 + random.nextInt(79) + 100 * random.nextInt(3);
    String hundreds = SpokenSamples.digits(number / 100) + " hundred";
    String rest = NumberFigures.inWords(number % 100, random);
    Speaker speaker = bench.speakers().anyPlain(random);
    Speech speech = speaker.say(hundreds + " " + rest);
    if (pause > 0) {
      Speech first = speaker.say(hundreds);
      Sound sound = Sound.joined(first.sound(), Sound.silence(pause), speaker.say(rest).sound());
      speech = new Speech(sound, first.activeRms());
    }
    return new Said(speech, DigitFigures.isValue(Integer.toString(number)));
  }

  private List<Trial> trials(Listener listener, long seed, Saying saying) {
    return bench
        .trials()
        .run(
            A_SET,
            seed,
            (i, random) -> {
              Said said = saying.by(random);
              Mixing.Clip clip = Mixing.clean(said.speech());
              List<Listener.Heard> heard = listener.hear(clip.sound(), allowed);
              double end = (double) clip.endOfSpeech() / Frames.RATE;
              double at =
                  heard.isEmpty()
                      ? clip.sound().seconds()
                      : heard.get(heard.size() - 1).at().orElse(clip.sound().seconds());
              return new Trial(Listener.result(heard, said.right()), at - end);
            });
  }

  private static Share right(List<Trial> trials) {
    int count = (int) trials.stream().filter(t -> t.result() == Result.RIGHT).count();
    return new Share(count, trials.size());
  }

  private static double median(List<Trial> trials) {
    List<Double> delays = new ArrayList<>(trials.stream().map(Trial::delay).toList());
    delays.sort(null);
    return delays.get(delays.size() / 2);
  }
}
