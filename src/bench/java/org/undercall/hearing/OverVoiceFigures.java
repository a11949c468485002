package org.undercall.hearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import org.undercall.adapter.activity.Activities;
import org.undercall.adapter.echo.EchoCanceller;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.OwnSpeech;
import org.undercall.listen.Residue;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.OwnVoice;

/**
 * How what is said over the program's own voice is heard: by the level of the voice against the
 * speaker, by the way the sound takes, with and without taking the voice out.
 */
final class OverVoiceFigures {
  private static final int TRIALS = 40;
  private static final int ALONE = 40;

  /** What a technician answers or calls over a prompt. */
  private static final List<String> PHRASES =
      List.of(
          "torque reached",
          "step completed",
          "check passed",
          "that is correct",
          "say again",
          "jack moved",
          "angle turned",
          "cautions understood");

  private static final Set<IntentKind> ALLOWED = allowed();

  /** Takes of real people that are a phrase by themselves. */
  private static final Set<String> REAL = Set.of("stop");

  private static final int[] LEVELS = {10, 0, -10, -20};

  private final Bench bench;
  private final List<Map.Entry<String, Sound>> own =
      List.copyOf(org.undercall.hearing.OwnVoice.spoken().entrySet());
  private final Table table =
      new Table(
          "Over the own voice",
          "Prompts of two sentences of the program's own voice, and a phrase of a synthetic speaker"
              + " or the \"stop\" of a real one said somewhere in them. Level: the voice against the"
              + " speaker at the microphone, over the active part of both. Heard: the right phrase and"
              + " nothing else that is understood, with what the voice may have said left out, as at"
              + " work. False, alone: phrases understood in prompts over which nothing is said, and"
              + " those left that the voice cannot have said. Tone: the low tone for what was not"
              + " heard, over speech that was missed, and in prompts alone.",
          List.of(
              "way",
              "delay ms",
              "voice dB",
              "taken out",
              "heard",
              "of real",
              "wrong",
              "tone when missed",
              "alone",
              "false, alone",
              "of these counted",
              "tone, alone"));

  OverVoiceFigures(Bench bench) {
    this.bench = bench;
  }

  private static Set<IntentKind> allowed() {
    Set<IntentKind> kinds = EnumSet.copyOf(PhaseWords.heard(Phase.TORQUE));
    kinds.addAll(PhaseWords.heard(Phase.READ_BACK));
    kinds.addAll(PhaseWords.heard(Phase.DO));
    kinds.addAll(PhaseWords.heard(Phase.BRIEFING));
    kinds.addAll(PhaseWords.heard(Phase.ANGLE));
    kinds.remove(IntentKind.NOTE_TEXT);
    return kinds;
  }

  /** A prompt, what the loudspeaker gives, and what it is at the microphone. */
  private record Prompt(Set<String> words, Sound played, List<Double> echo) {}

  /**
   * What came of a clip.
   *
   * @param understood how many phrases
   * @param counted those that the voice cannot have said
   */
  private record Came(int understood, List<String> counted, boolean tone) {}

  /** What came of one trial. */
  private record Trial(boolean real, boolean right, boolean wrong, boolean tone) {}

  List<Table> tables() {
    if (EchoCanceller.load().isEmpty()) {
      System.out.println("hearing: nothing takes the own voice out here");
    }
    List<Way> ways =
        List.of(
            new Way("direct", 20, false, false),
            new Way("direct", 200, false, false),
            new Way("small room", 80, true, false),
            new Way("small room, changes", 80, true, true));
    for (Way way : ways) {
      for (int level : LEVELS) {
        row(way, level, true);
        if (way.room() && !way.changes()) {
          row(way, level, false);
        }
      }
    }
    return List.of(table);
  }

  private void row(Way way, int level, boolean out) {
    List<Trial> trials =
        bench.trials().run(TRIALS, 71, (i, random) -> trial(i, way, level, out, random));
    List<Came> alone = bench.trials().run(ALONE, 72, (i, random) -> alone(way, level, out, random));
    long real = trials.stream().filter(Trial::real).count();
    long realRight = trials.stream().filter(t -> t.real() && t.right()).count();
    long right = trials.stream().filter(Trial::right).count();
    long missed = trials.stream().filter(t -> !t.right() && !t.wrong()).count();
    long told = trials.stream().filter(t -> !t.right() && !t.wrong() && t.tone()).count();
    table.row(
        way.name(),
        way.delayMillis(),
        (level > 0 ? "+" : "") + level,
        out ? "yes" : "no",
        right + " of " + trials.size(),
        realRight + " of " + real,
        trials.stream().filter(Trial::wrong).count(),
        told + " of " + missed,
        alone.size(),
        alone.stream().mapToInt(Came::understood).sum(),
        alone.stream().mapToInt(c -> c.counted().size()).sum(),
        alone.stream().filter(Came::tone).count());
    System.out.println(table.markdown().lines().reduce((a, b) -> b.isBlank() ? a : b).orElse(""));
  }

  private Trial trial(int index, Way way, int level, boolean out, Random random) {
    Prompt prompt = prompt(way, random);
    boolean real = index % 4 == 3;
    String words = real ? "stop" : PHRASES.get(random.nextInt(PHRASES.size()));
    Speech speech = real ? realStop(random) : bench.speakers().anyPlain(random).say(words);
    int room = Math.max(1, prompt.echo().size() - speech.sound().length() - Frames.RATE / 2);
    int at = Math.min(Frames.RATE / 2 + random.nextInt(room), room);
    Came came = came(prompt, Optional.of(speech), at, level, out);
    boolean heard = came.counted().contains(words);
    boolean wrong = came.counted().stream().anyMatch(phrase -> !phrase.equals(words));
    return new Trial(real, heard && !wrong, wrong, came.tone());
  }

  private Came alone(Way way, int level, boolean out, Random random) {
    Came came = came(prompt(way, random), Optional.empty(), 0, level, out);
    came.counted().forEach(phrase -> System.out.println("  heard in the voice alone: " + phrase));
    return came;
  }

  private Speech realStop(Random random) {
    List<Recordings.Recording> takes =
        bench.recordings().of("words").stream().filter(r -> REAL.contains(r.spoken())).toList();
    return Speech.word(takes.get(random.nextInt(takes.size())).sound());
  }

  private Prompt prompt(Way way, Random random) {
    Set<String> words = new TreeSet<>();
    List<Sound> parts = new ArrayList<>();
    int first = random.nextInt(own.size());
    for (int i = 0; i < 2; i++) {
      Map.Entry<String, Sound> sentence = own.get((first + i) % own.size());
      words.addAll(
          List.of(
              sentence
                  .getKey()
                  .toLowerCase(Locale.ROOT)
                  .replaceAll("[^a-z' ]+", " ")
                  .strip()
                  .split("\\s+", -1)));
      parts.add(sentence.getValue());
    }
    Sound played = Sound.joined(parts.toArray(new Sound[0]));
    return new Prompt(words, played, Arrays.stream(way.echo(played)).boxed().toList());
  }

  private Came came(Prompt prompt, Optional<Speech> speech, int at, int level, boolean out) {
    double[] echo = prompt.echo().stream().mapToDouble(Double::doubleValue).toArray();
    short[] whole = new short[echo.length];
    for (int i = 0; i < whole.length; i++) {
      whole[i] = (short) Math.max(-32768, Math.min(32767, Math.round(echo[i])));
    }
    double loud = Speech.in(new Sound(whole)).activeRms();
    // The louder of both is at a tenth of full scale.
    double speaker = 3_000 / Math.max(1, Math.pow(10, level / 20.0));
    double gain = speaker * Math.pow(10, level / 20.0) / Math.max(1, loud);
    Sound alone = mixed(echo, gain, Optional.empty(), at, speaker);
    // The prompt once before, so that what takes the voice out knows the way, as at work.
    return heard(prompt, alone, mixed(echo, gain, speech, at, speaker), out);
  }

  private static Sound mixed(
      double[] echo, double gain, Optional<Speech> speech, int at, double speaker) {
    int length = echo.length + 2 * Frames.RATE;
    short[] mixed = new short[length];
    Random noise = new Random(9);
    for (int i = 0; i < length; i++) {
      double sum = (i < echo.length ? gain * echo[i] : 0) + 8 * noise.nextGaussian();
      if (speech.isPresent() && i >= at && i < at + speech.get().sound().length()) {
        sum += speaker / speech.get().activeRms() * speech.get().sound().samples()[i - at];
      }
      mixed[i] = (short) Math.max(-32768, Math.min(32767, Math.round(sum)));
    }
    return new Sound(mixed);
  }

  private Came heard(Prompt prompt, Sound warm, Sound mixed, boolean out) {
    short[] left = mixed.samples().clone();
    boolean tone;
    AtomicLong nanos = new AtomicLong();
    try (OwnVoice taken = out ? EchoCanceller.load(nanos::get).orElseThrow() : OwnVoice.unheard();
        Residue residue = new Residue(Activities.best())) {
      pass(taken, nanos, prompt, warm, residue, new short[warm.length()]);
      residue.forget();
      tone = pass(taken, nanos, prompt, mixed, residue, left);
    }
    List<Listener.Heard> clear =
        bench.listener().hear(new Sound(left), ALLOWED).stream()
            .filter(Listener.Heard::isClear)
            .toList();
    List<String> counted =
        clear.stream()
            .filter(h -> !OwnSpeech.mayBe(h.phrase(), h.intent(), prompt.words()))
            .map(h -> h.phrase().text())
            .toList();
    return new Came(clear.size(), counted, tone);
  }

  /** Plays the prompt and keeps what is left of the sound; gives whether the tone would sound. */
  private static boolean pass(
      OwnVoice taken, AtomicLong nanos, Prompt prompt, Sound mixed, Residue residue, short[] left) {
    boolean tone = false;
    for (int at = 0; at + Frames.FRAME_SAMPLES <= mixed.length(); at += Frames.FRAME_SAMPLES) {
      boolean over = at < prompt.played().length();
      if (over) {
        byte[] given = prompt.played().frame(at).sound();
        taken.plays(given, 0, given.length, Frames.RATE);
      }
      nanos.addAndGet(30_000_000);
      Frame frame = taken.without(mixed.frame(at));
      for (int i = 0; i < frame.samples(); i++) {
        left[at + i] = (short) frame.sample(i);
      }
      tone |= residue.take(frame, over);
    }
    return tone;
  }
}
