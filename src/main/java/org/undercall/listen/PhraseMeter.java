package org.undercall.listen;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.Level;
import org.undercall.sound.LevelMeter;

/** Measures the level of a phrase and of what is around it. One thread uses it. */
final class PhraseMeter {
  /** What is kept: the last 20 s. */
  private static final int MOST = 20 * Frames.RATE / Frames.FRAME_SAMPLES;

  /** Words are a little longer than the recogniser says: 0.15 s. */
  private static final double EDGE_SECONDS = 0.15;

  /** The share of the quieter frames around the phrase whose level is taken for the noise. */
  private static final double NOISE_SHARE = 0.5;

  private final Deque<Piece> pieces = new ArrayDeque<>();

  private record Piece(double from, double to, Level level) {}

  void add(Frame frame) {
    LevelMeter meter = new LevelMeter();
    meter.add(frame);
    double from = (double) frame.firstSample() / Frames.RATE;
    double to = from + (double) frame.samples() / Frames.RATE;
    pieces.add(new Piece(from, to, meter.level()));
    if (pieces.size() > MOST) {
      pieces.remove();
    }
  }

  /** The levels of a phrase just heard; empty if there is no sound of it, or none around it. */
  Optional<SoundLevels> of(RecognisedPhrase phrase) {
    double start = phrase.words().get(0).start();
    double end = phrase.words().get(phrase.words().size() - 1).end();
    List<Level> inside = new ArrayList<>();
    List<Level> around = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece.from() >= start && piece.to() <= end) {
        inside.add(piece.level());
      } else if (piece.to() < start - EDGE_SECONDS || piece.from() > end + EDGE_SECONDS) {
        around.add(piece.level());
      }
    }
    if (inside.isEmpty() || around.isEmpty()) {
      return Optional.empty();
    }
    double clipped = inside.stream().mapToDouble(Level::clipped).average().orElse(0);
    return Optional.of(new SoundLevels(power(inside), noise(around), clipped));
  }

  /** The middle of what is around: other phrases and short bangs in it do not count. */
  private static double noise(List<Level> around) {
    List<Double> sorted = around.stream().map(Level::rms).sorted().toList();
    return sorted.get((int) (NOISE_SHARE * (sorted.size() - 1)));
  }

  private static double power(List<Level> levels) {
    double mean = levels.stream().mapToDouble(l -> Math.pow(10, l.rms() / 10)).average().orElse(0);
    return 10 * Math.log10(mean);
  }
}
