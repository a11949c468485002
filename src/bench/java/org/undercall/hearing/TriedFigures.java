package org.undercall.hearing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Phrasebook;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SpokenSamples;

/** Guards on called values that were tried, each on the very same hearings. */
final class TriedFigures {
  private static final int A_SET = 50;
  private static final List<Double> LIMITS = List.of(0.7, 0.8, 0.9, 0.95, 0.99);

  private final Bench bench;
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);
  private final List<String> numbers;

  /** One value that was said, everything heard, and what the witnesses heard. */
  private record Hearing(String said, List<Listener.Heard> heard, Witness free, Witness narrow) {

    /** What would have come of it had a guard let only some phrases through. */
    Result with(Predicate<RecognisedPhrase> guard) {
      List<Listener.Heard> kept =
          heard.stream().filter(h -> !h.isClear() || guard.test(h.phrase())).toList();
      Result result = Listener.result(kept, DigitFigures.isValue(said));
      return result == Result.SILENT && !heard.isEmpty() ? Result.ASKED : result;
    }
  }

  TriedFigures(Bench bench) {
    this.bench = bench;
    List<String> list = new ArrayList<>(Phrasebook.wordList(Set.of(IntentKind.VALUE_CALLED)));
    list.add(RecognisedPhrase.UNKNOWN);
    this.numbers = List.copyOf(list);
  }

  List<Table> tables() {
    Digits wide = Digits.of(bench.recordings().of("digits"));
    Digits narrow = Digits.of(bench.recordings().of("digits-narrowband"));
    List<Table> tables = new ArrayList<>();
    tables.add(table("real people, clean", hearings(700, r -> real(wide, Conditions.clean(), r))));
    tables.add(table("real people, 10 dB", hearings(701, r -> real(wide, noise(10, r), r))));
    tables.add(
        table("real people, narrow band", hearings(702, r -> real(narrow, Conditions.clean(), r))));
    tables.add(
        table(
            "plain synthetic speakers, clean",
            hearings(703, r -> synthetic(Conditions.clean(), r))));
    tables.add(
        table("plain synthetic speakers, 10 dB", hearings(704, r -> synthetic(noise(10, r), r))));
    return tables;
  }

  private interface Saying {
    Hearing by(Random random);
  }

  private List<Hearing> hearings(long seed, Saying saying) {
    return bench.trials().run(A_SET, seed, (i, random) -> saying.by(random));
  }

  private Hearing real(Digits digits, Conditions conditions, Random random) {
    Digits.Said said = digits.threeDigits(random);
    return hear(said.digits(), said.speech(), conditions, random);
  }

  private Hearing synthetic(Conditions conditions, Random random) {
    int number = 5 + random.nextInt(396);
    String words =
        random.nextBoolean() ? SpokenSamples.digits(number) : NumberFigures.inWords(number, random);
    Speech speech = bench.speakers().anyPlain(random).say(words);
    return hear(Integer.toString(number), speech, conditions, random);
  }

  private Hearing hear(String said, Speech speech, Conditions conditions, Random random) {
    Sound sound = conditions.clip(speech, bench.noises(), random).sound();
    return new Hearing(
        said,
        bench.listener().hear(sound, allowed),
        Witness.hears(bench.maker().free(0), sound),
        Witness.hears(bench.maker().withWordList(numbers, 0), sound));
  }

  private Conditions noise(int level, Random random) {
    List<String> kinds = bench.noises().kinds();
    return new Conditions(kinds.get(random.nextInt(kinds.size())), level);
  }

  private static Table table(String label, List<Hearing> hearings) {
    Table table =
        new Table(
            "Guards tried on called values: " + label,
            "The same hearings for every row.",
            Tally.columns("guard"));
    guards()
        .forEach(
            (name, guard) ->
                table.row(
                    Tally.of(
                            hearings.stream()
                                .map(h -> h.with(phrase -> guard.passes(h, phrase)))
                                .toList())
                        .cells(name)));
    return table;
  }

  private interface Guard {
    boolean passes(Hearing hearing, RecognisedPhrase phrase);
  }

  private static Map<String, Guard> guards() {
    Map<String, Guard> guards = new LinkedHashMap<>();
    guards.put("none, as the program is", (h, p) -> true);
    for (double limit : LIMITS) {
      guards.put("every word at least " + limit, (h, p) -> p.confidence() >= limit);
    }
    guards.put("free witness does not contradict", (h, p) -> !h.free().contradicts(p));
    guards.put("free witness confirms", (h, p) -> h.free().confirms(p));
    guards.put("numbers-only witness does not contradict", (h, p) -> !h.narrow().contradicts(p));
    guards.put("numbers-only witness confirms", (h, p) -> h.narrow().confirms(p));
    guards.put(
        "free does not contradict, every word at least 0.9",
        (h, p) -> !h.free().contradicts(p) && p.confidence() >= 0.9);
    return guards;
  }
}
