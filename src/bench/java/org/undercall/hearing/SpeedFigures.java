package org.undercall.hearing;

import java.util.List;
import java.util.Set;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;
import org.undercall.port.Fault;

/** How long loading and hearing take, and how much memory. One thread. */
final class SpeedFigures {
  private static final double FULL_MINUTES = 5;

  private final Table table =
      new Table(
          "Speed and memory",
          "One thread, torque stage, chatter. Memory is that of the whole process, this"
              + " measurement's own heap included.",
          List.of("figure", "value", "unit"));
  private final Set<IntentKind> allowed = PhaseWords.heard(Phase.TORQUE);

  /** Checks and loads the model, with the times taken. */
  SpeechModel load() throws Fault {
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
}
