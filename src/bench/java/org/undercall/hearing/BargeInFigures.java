package org.undercall.hearing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.StopPhrases;
import org.undercall.listen.Overheard;
import org.undercall.sound.Frames;

/**
 * Prints how often a call over the program's own voice is heard, how late, and how often the voice
 * alone stops itself. The speakers are synthetic. It asserts nothing.
 */
public final class BargeInFigures {
  private static final List<String> STOP = StopPhrases.ALL;

  /** What a technician could call before the program has finished asking. */
  private static final List<String> WITH_ANSWERS =
      Stream.concat(
              STOP.stream(),
              Stream.of(
                  "torque reached",
                  "angle turned",
                  "step completed",
                  "check passed",
                  "that is correct",
                  "say again"))
          .toList();

  private final SpeechModel model;
  private final Speakers speakers = Speakers.find();
  private final List<Map.Entry<String, Sound>> own = new ArrayList<>(OwnVoice.spoken().entrySet());
  private final int trials;

  private BargeInFigures(SpeechModel model, int trials) {
    this.model = model;
    this.trials = trials;
  }

  /** What was heard, and in which sample of the clip; -1 if nothing was. */
  private record Heard(Optional<String> phrase, int sample) {}

  /** A prompt of three sentences. */
  private record Prompt(String words, Sound sound) {}

  /**
   * Measures.
   *
   * @param args how many calls a row; 60 without
   */
  public static void main(String[] args) throws Exception {
    int trials = args.length > 0 ? Integer.parseInt(args[0]) : 60;
    try (SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()))) {
      BargeInFigures figures = new BargeInFigures(model, trials);
      figures.alone("stop phrases", STOP);
      figures.alone("stop phrases and answers", WITH_ANSWERS);
      for (int decibels : new int[] {10, 0, -10}) {
        figures.called("stop phrases", STOP, decibels);
      }
      for (int decibels : new int[] {10, 0, -10}) {
        figures.called("stop phrases and answers", WITH_ANSWERS, decibels);
      }
    }
  }

  private void alone(String title, List<String> list) {
    Random random = new Random(1);
    Collections.shuffle(own, random);
    int triggers = 0;
    double seconds = 0;
    for (int i = 0; i < own.size(); i++) {
      Prompt prompt = prompt(i);
      Heard heard = listen(prompt.sound(), StopPhrases.over(prompt.words(), list));
      seconds += prompt.sound().seconds();
      if (heard.phrase().isPresent()) {
        triggers++;
        System.out.println("  heard " + heard.phrase().get() + " in: " + prompt.words());
      }
    }
    System.out.printf(
        Locale.ROOT,
        "own voice alone, %s: %d of %d prompts stopped, %.0f s%n",
        title,
        triggers,
        own.size(),
        seconds);
  }

  private void called(String title, List<String> list, int decibels) {
    Random random = new Random(2);
    int total = 0;
    int right = 0;
    int other = 0;
    List<Integer> late = new ArrayList<>();
    while (total < trials) {
      Prompt prompt = prompt(random.nextInt(own.size()));
      List<String> listed = StopPhrases.over(prompt.words(), list);
      String call = listed.get(random.nextInt(listed.size()));
      Speech speech = speakers.anyPlain(random).say(call);
      int room = prompt.sound().length() - speech.sound().length();
      if (room <= 0) {
        continue;
      }
      int at = random.nextInt(room);
      Heard heard = listen(over(prompt.sound(), speech, at, decibels), listed);
      total++;
      if (heard.phrase().isPresent()) {
        boolean same = heard.phrase().get().equals(call);
        right += same ? 1 : 0;
        other += same ? 0 : 1;
        late.add((heard.sample() - at - speech.sound().length()) * 1000 / Frames.RATE);
      }
    }
    Collections.sort(late);
    System.out.printf(
        Locale.ROOT,
        "called %d dB over the voice, %s: %d of %d heard, %d as another; "
            + "%d ms after the end of the call in the middle, %d at most%n",
        decibels,
        title,
        right,
        total,
        other,
        late.isEmpty() ? 0 : late.get(late.size() / 2),
        late.isEmpty() ? 0 : late.get(late.size() - 1));
  }

  private Prompt prompt(int first) {
    StringBuilder words = new StringBuilder();
    List<Sound> parts = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Map.Entry<String, Sound> sentence = own.get((first + i) % own.size());
      words.append(sentence.getKey()).append(' ');
      parts.add(sentence.getValue());
    }
    return new Prompt(words.toString(), Sound.joined(parts.toArray(new Sound[0])));
  }

  /** The call mixed into the prompt, so loud over the prompt's own active loudness. */
  private static Sound over(Sound prompt, Speech call, int at, int decibels) {
    double gain = Math.pow(10, decibels / 20.0) * Speech.in(prompt).activeRms() / call.activeRms();
    double[] mixed = new double[prompt.length()];
    double peak = 1;
    for (int i = 0; i < mixed.length; i++) {
      boolean inside = i >= at && i < at + call.sound().length();
      mixed[i] = prompt.samples()[i] + (inside ? gain * call.sound().samples()[i - at] : 0);
      peak = Math.max(peak, Math.abs(mixed[i]));
    }
    double down = Math.min(1, Short.MAX_VALUE / peak);
    short[] samples = new short[mixed.length];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) Math.round(mixed[i] * down);
    }
    return new Sound(samples);
  }

  private Heard listen(Sound sound, List<String> phrases) {
    List<String> listed = new ArrayList<>(phrases);
    listed.add(RecognisedPhrase.UNKNOWN);
    Sound whole = Sound.joined(sound, Sound.silence(500));
    try (Overheard overheard = new Overheard(model.withWordList(listed, 0), phrases)) {
      for (int at = 0; at < whole.length(); at += Frames.FRAME_SAMPLES) {
        Optional<String> phrase = overheard.take(whole.frame(at));
        if (phrase.isPresent()) {
          return new Heard(phrase, at + Frames.FRAME_SAMPLES);
        }
      }
    }
    return new Heard(Optional.empty(), -1);
  }
}
