package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.listen.Attention;
import org.undercall.sound.Frames;

/** What listening costs while nobody speaks. */
final class IdleFigures {
  private static final int MINUTES = 2;

  /** -60 dBFS. */
  private static final double ROOM_RMS = 32.8;

  private final Bench bench;
  private final Table table =
      new Table(
          "Processor time while nobody speaks",
          "One thread, torque stage; seconds of processor time for one second of sound, so 0.03 is"
              + " 3 % of a core.",
          List.of("sound", "minutes", "the program", "without rest in silence"));

  IdleFigures(Bench bench) {
    this.bench = bench;
  }

  Table table() {
    int length = (int) Math.max(1, 60L * MINUTES * Frames.RATE * bench.trials().count(100) / 100);
    row("digital silence", new Sound(new short[length]));
    double silence = row("room noise at -60 dBFS", room(length));
    bench.goals().reached(Goal.IDLE, String.format(Locale.ROOT, "%.1f %%", 100 * silence));
    row("power tools, chainsaw, helicopter, rain, clatter", noise(length));
    return table;
  }

  private double row(String label, Sound sound) {
    double cost = cost(sound, Attention::standard);
    table.row(label, sound.seconds() / 60, cost, cost(sound, Attention::byRecogniser));
    return cost;
  }

  private double cost(Sound sound, Supplier<Attention> attention) {
    Listener listener = new Listener(bench.maker(), attention);
    long start = Machine.computingNanos();
    listener.hear(sound, PhaseWords.heard(Phase.TORQUE));
    return (Machine.computingNanos() - start) / 1e9 / sound.seconds();
  }

  private static Sound room(int length) {
    Random random = new Random(9);
    short[] samples = new short[length];
    for (int i = 0; i < length; i++) {
      samples[i] = (short) Math.round(ROOM_RMS * random.nextGaussian());
    }
    return new Sound(samples);
  }

  private Sound noise(int length) {
    List<Sound> parts = new ArrayList<>();
    int total = 0;
    for (Recordings.Recording recording : bench.recordings().mixed("noise")) {
      if (Noises.isNoise(recording) && total < length) {
        Sound sound = recording.sound();
        parts.add(sound);
        total += sound.length();
      }
    }
    return Sound.joined(parts.toArray(Sound[]::new)).part(0, length);
  }
}
