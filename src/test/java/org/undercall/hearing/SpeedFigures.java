package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.undercall.adapter.recogniser.ModelFault;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;

/** How long loading and hearing take, and how much memory. One thread. */
final class SpeedFigures {
  private static final int LATENCY_TRIALS = 200;
  private static final double FULL_MINUTES = 20;

  private final Table table =
      new Table(
          "Speed and memory",
          "One thread, torque stage. The end of speech is the last block of 10 ms within 30 dB of"
              + " the loudest, plus 40 ms; the delay counts sound time and processor time, as if"
              + " the sound came live. Memory is that of the whole process, this measurement's own"
              + " heap included.",
          List.of("figure", "value", "unit"));
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);

  /** Checks and loads the model, with the times taken. */
  SpeechModel load() throws ModelFault {
    table.row("resident memory before the model", Machine.residentMegabytes(), "MB");
    long start = System.nanoTime();
    ModelFolder folder = ModelFolder.verify(ModelFolder.standard());
    long checked = System.nanoTime();
    SpeechModel model = SpeechModel.load(folder);
    long loaded = System.nanoTime();
    table.row("checking the model's checksums", (checked - start) / 1e9, "s");
    table.row("loading the model", (loaded - checked) / 1e9, "s");
    table.row("resident memory after loading", Machine.residentMegabytes(), "MB");
    return model;
  }

  /** The table, complete. */
  Table table(Bench bench) {
    Trials trials = bench.trials();
    Listener listener = bench.listener();
    List<Recordings.Recording> chatter = bench.recordings().of("chatter");
    if (chatter.isEmpty()) {
      System.out.println("speed: no recordings, only loading is measured");
      return table;
    }
    listen(listener, chatter, FULL_MINUTES * trials.count(100) / 100);
    delays(listener, Digits.of(bench.recordings().of("digits")), trials.count(LATENCY_TRIALS));
    return table;
  }

  private void listen(Listener listener, List<Recordings.Recording> chatter, double minutes) {
    double seconds = 0;
    long busy = 0;
    table.row("resident memory before listening", Machine.residentMegabytes(), "MB");
    for (int i = 0; seconds < 60 * minutes; i++) {
      Sound sound = chatter.get(i % chatter.size()).sound();
      long start = Machine.computingNanos();
      listener.hear(sound, allowed);
      busy += Machine.computingNanos() - start;
      seconds += sound.seconds();
    }
    table.row("sound listened to", seconds / 60, "min");
    table.row("processor time for one second of it", busy / 1e9 / seconds, "s");
    table.row("resident memory after it", Machine.residentMegabytes(), "MB");
  }

  private void delays(Listener listener, Digits digits, int count) {
    List<Double> delays = new ArrayList<>();
    int late = 0;
    for (int i = 0; i < count; i++) {
      Random random = new Random(500 + i);
      Mixing.Clip clip = Mixing.clean(digits.threeDigits(random).speech());
      List<Listener.Heard> heard = listener.hear(clip.sound(), allowed);
      if (!heard.isEmpty() && heard.get(heard.size() - 1).at().isPresent()) {
        double end = clip.endOfSpeech() / 16_000.0;
        delays.add(heard.get(heard.size() - 1).at().getAsDouble() - end);
      } else {
        late++;
      }
    }
    delays.sort(null);
    table.row("phrases timed (real people's values, clean)", delays.size(), "phrases");
    table.row("phrases not reported within 1.5 s", late, "phrases");
    if (!delays.isEmpty()) {
      table.row("from the end of speech to the phrase, median", at(delays, 0.5), "s");
      table.row("... fastest tenth below", at(delays, 0.1), "s");
      table.row("... slowest tenth above", at(delays, 0.9), "s");
    }
  }

  private static double at(List<Double> sorted, double quantile) {
    return sorted.get((int) Math.min(sorted.size() - 1, quantile * sorted.size()));
  }
}
