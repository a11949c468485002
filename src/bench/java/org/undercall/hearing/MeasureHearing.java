package org.undercall.hearing;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.port.Fault;

/**
 * Measures how well the program hears, prints the figures and writes them down. No figure makes it
 * fail.
 *
 * <p>Properties: {@code hearing.scale}, 1 for all trials, less for a quick look; {@code
 * hearing.parts}, names of parts with commas, the usual ones if absent; {@code hearing.page}, where
 * the page goes. Without it only a whole full run writes {@code docs/evidence/hearing.md}.
 */
public final class MeasureHearing {
  /** A part of the measurement. */
  private enum Part {
    SPEED,
    DIGITS,
    SPEAKERS,
    PAUSES,
    REPEATS,
    NUMBERS,
    PHRASES,
    NEARMISS,
    DENIALS,
    FALSE,
    PEER,
    MEMORY,
    /** What was tried and measured once, no part of a run of everything. */
    TRIED,
    END,
    /** What is said over the own voice. */
    OVER,
    WORDINGS;

    /** Whether it is measured if no part is named. */
    boolean isUsual() {
      return compareTo(MEMORY) <= 0;
    }

    List<Table> tables(Bench bench, Optional<MemoryFigures> memory) {
      return switch (this) {
        case SPEED ->
            List.of(
                bench.speed().table(bench),
                new DelayFigures(bench).table(),
                new IdleFigures(bench).table());
        case DIGITS -> new DigitFigures(bench).tables();
        case PAUSES -> new PauseFigures(bench).tables();
        case NUMBERS -> new NumberFigures(bench).tables();
        case PHRASES -> new PhraseFigures(bench).tables();
        case NEARMISS -> new NearMissFigures(bench).tables();
        case DENIALS -> new DenialFigures(bench).tables();
        case FALSE -> new FalseFigures(bench).tables();
        case PEER -> new PeerFigures(bench).tables();
        case MEMORY -> memory.map(MemoryFigures::table).stream().toList();
        case TRIED -> new TriedFigures(bench).tables();
        case OVER -> new OverVoiceFigures(bench).tables();
        case END -> new EndFigures(bench).tables();
        case SPEAKERS -> new SpeakerFigures(bench).tables();
        case REPEATS -> new RepeatFigures(bench).tables();
        case WORDINGS -> new WordingFigures(bench).tables();
      };
    }
  }

  private MeasureHearing() {}

  /**
   * Runs the measurement.
   *
   * @param args none
   */
  public static void main(String[] args) throws IOException, Fault {
    double scale = Double.parseDouble(System.getProperty("hearing.scale", "1"));
    Set<Part> parts = parts(System.getProperty("hearing.parts", ""));
    Optional<Recordings> recordings = Recordings.find();
    if (recordings.isEmpty()) {
      System.out.println(
          "hearing: no recordings, nothing measured; name their folder in UNDERCALL_SPEECH");
      return;
    }
    boolean whole = scale >= 1 && parts.equals(parts(""));
    Trials trials = new Trials(Runtime.getRuntime().availableProcessors(), scale);
    Pages pages = new Pages(System.getProperty("hearing.page", ""), whole);
    SpeedFigures speed = new SpeedFigures();
    try (SpeechModel model = speed.load()) {
      Recordings found = recordings.get();
      Goals goals = new Goals();
      Bench bench =
          new Bench(model, found, Noises.of(found), Speakers.find(), trials, speed, goals);
      Optional<MemoryFigures> memory =
          parts.contains(Part.MEMORY) ? Optional.of(new MemoryFigures(bench)) : Optional.empty();
      for (Part part : parts) {
        long start = System.nanoTime();
        pages.add(part.tables(bench, memory));
        System.out.printf("hearing: %s took %.0f s%n", part, (System.nanoTime() - start) / 1e9);
      }
      pages.write(bench, scale);
    }
  }

  private static Set<Part> parts(String names) {
    Set<Part> parts = new TreeSet<>();
    for (Part part : Part.values()) {
      if ((names.isBlank() && part.isUsual())
          || List.of(names.split(",", -1)).contains(part.name().toLowerCase(Locale.ROOT))) {
        parts.add(part);
      }
    }
    return parts;
  }
}
