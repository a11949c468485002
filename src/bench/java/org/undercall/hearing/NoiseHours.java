package org.undercall.hearing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.decision.Phase;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.listen.SoundEar;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.session.SessionLoop;
import org.undercall.session.Work;
import org.undercall.sound.Frames;

/**
 * Hours of made noise, faster than real time, through the program's own ear, loop and log. Every
 * five minutes of sound another session is led to another phase by typed phrases, and the noise has
 * it from there. Prints what was believed, what it did, and the memory each half hour.
 *
 * <p>Arguments: hours, and a seed.
 */
final class NoiseHours {
  private static final List<Phase> PHASES =
      List.of(
          Phase.TORQUE,
          Phase.READ_BACK,
          Phase.LOAD_READ_BACK,
          Phase.DO,
          Phase.ANGLE,
          Phase.GATE,
          Phase.CHECK,
          Phase.MARKING,
          Phase.HARDWARE,
          Phase.MEASURE,
          Phase.BRIEFING);
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
  private static final int TURN_SECONDS = 300;
  private static final int BETWEEN_SECONDS = 1800;

  private final SoundEar ear;
  private final Path sessions;
  private final Map<String, Integer> believed = new TreeMap<>();
  private int heard;
  private int changing;
  private int closing;
  private int faults;

  private NoiseHours(SoundEar ear, Path sessions) {
    this.ear = ear;
    this.sessions = sessions;
  }

  /** Runs it. */
  public static void main(String[] args) throws IOException, Fault {
    double hours = Double.parseDouble(args[0]);
    long seed = args.length > 1 ? Long.parseLong(args[1]) : 20_261_125;
    Path folder = Files.createTempDirectory("noise-hours");
    Frames noise = new MadeNoise(seed);
    try (SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
        SoundEar ear = SoundEar.standard(noise, model)) {
      new NoiseHours(ear, folder).listen(3600 * hours);
    }
  }

  private void listen(double seconds) throws IOException, Fault {
    print();
    double next = BETWEEN_SECONDS;
    for (int turn = 0; ear.seconds() < seconds; turn++) {
      turn(PHASES.get(turn % PHASES.size()));
      if (ear.seconds() >= next && ear.seconds() < seconds) {
        print();
        next += BETWEEN_SECONDS;
      }
    }
    print();
    System.out.println("noise: believed " + believed);
  }

  /** Five minutes of noise for one session. */
  private void turn(Phase phase) throws IOException, Fault {
    NoisyWork noisy = new NoisyWork(ear, phase, ear.seconds() + TURN_SECONDS);
    Time time = Time.ofSound(START, () -> (long) (1000 * ear.seconds()));
    try (Work work = Work.on(DEMO, sessions, Job.NOT_GIVEN, Occasion.WORK, true)) {
      work.run(noisy, NoisyWork.NO_VOICE, time, SessionLoop.REMIND_AFTER, noisy);
    } catch (Fault | RuntimeException e) {
      faults++;
      System.out.println("noise: fault " + e);
    }
    if (!noisy.settled()) {
      throw new IllegalStateException(phase + " was not reached");
    }
    heard += noisy.heard();
    changing += noisy.changing();
    closing += noisy.closing();
    noisy.believed().forEach(words -> believed.merge(phase + ": " + words, 1, Integer::sum));
  }

  private void print() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    Duration passed = Duration.ofMillis((long) (1000 * ear.seconds()));
    System.out.printf(
        Locale.ROOT,
        "noise: %d:%02d h, heap %.1f MB, resident %.0f MB (most %.0f), heard %d, believed %d,"
            + " changing %d, closing %d, faults %d, processor %.0f s%n",
        passed.toHours(),
        passed.toMinutesPart(),
        (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0,
        Machine.residentMegabytes(),
        Machine.peakMegabytes(),
        heard,
        believed.values().stream().mapToInt(Integer::intValue).sum(),
        changing,
        closing,
        faults,
        Machine.computingNanos() / 1e9);
  }
}
