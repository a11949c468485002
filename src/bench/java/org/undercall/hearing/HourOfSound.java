package org.undercall.hearing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.adapter.speaker.MarySynthesiser;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.IntentKind;
import org.undercall.listen.SoundEar;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Listens to an hour of sound in a process of its own, as the program does: a new recogniser for
 * each phase, a spoken answer to each phrase. Prints a line each ten minutes of sound.
 *
 * <p>Arguments: how many minutes, and between which to print.
 */
final class HourOfSound {
  private static final List<Phase> PHASES =
      List.of(Phase.DO, Phase.TORQUE, Phase.READ_BACK, Phase.LOAD_READ_BACK);
  private static final Path CACHE = Path.of("target", "hearing-voices", "hour");
  private static final long CACHE_BYTES = 20L << 20;

  private HourOfSound() {}

  /** Runs it; prints minutes, resident and peak megabytes, heap megabytes, phrases. */
  public static void main(String[] args) throws IOException, Fault {
    int minutes = Integer.parseInt(args[0]);
    int between = Integer.parseInt(args[1]);
    Recordings recordings = Recordings.find().orElseThrow();
    Frames sound = new MixedFrames(recordings, 60L * minutes * Frames.RATE);
    try (SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
        SpokenCache voice =
            new SpokenCache(MarySynthesiser.plain(Frames.RATE), CACHE, CACHE_BYTES);
        SoundEar ear = SoundEar.standard(sound, model)) {
      print(0, 0);
      listen(ear, voice, between);
    }
  }

  private static void listen(SoundEar ear, SpokenCache voice, int between) {
    int phrases = 0;
    int next = between;
    try {
      while (true) {
        Set<IntentKind> allowed = PhaseWords.heard(PHASES.get(phrases % PHASES.size()));
        Optional<Heard> phrase = ear.next(allowed, 10_000);
        if (phrase.isPresent()) {
          phrases++;
          voice.speak("I heard phrase number " + phrases + ".");
          ear.forget();
        }
        if (ear.seconds() >= 60.0 * next) {
          print(next, phrases);
          next += between;
        }
      }
    } catch (Ear.EndOfInput e) {
      print(next, phrases);
    }
  }

  private static void print(int minutes, int phrases) {
    Runtime runtime = Runtime.getRuntime();
    System.out.printf(
        Locale.ROOT,
        "at %d %.0f %.0f %.0f %d%n",
        minutes,
        Machine.residentMegabytes(),
        Machine.peakMegabytes(),
        (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0,
        phrases);
  }

  /** Chatter, noise, digits and silence in turn, over and over; one recording in memory. */
  private static final class MixedFrames implements Frames {
    private static final List<String> TURNS = List.of("chatter", "silence", "noise", "digits");

    private final List<List<Recordings.Recording>> kinds;
    private final long samples;
    private Sound sound = Sound.silence(1000);
    private int at;
    private long place;
    private int turn;

    MixedFrames(Recordings recordings, long samples) {
      this.kinds = TURNS.stream().map(recordings::mixed).toList();
      this.samples = samples;
    }

    @Override
    public Optional<Frame> next() {
      if (place >= samples) {
        return Optional.empty();
      }
      if (at + FRAME_SAMPLES > sound.length()) {
        turn++;
        List<Recordings.Recording> kind = kinds.get(turn % TURNS.size());
        sound =
            kind.isEmpty()
                ? Sound.silence(5_000)
                : kind.get(turn / TURNS.size() % kind.size()).sound();
        at = 0;
        return next();
      }
      Frame frame = Frame.of(place, sound.frame(at).sound());
      at += FRAME_SAMPLES;
      place += FRAME_SAMPLES;
      return Optional.of(frame);
    }

    @Override
    public void close() {}
  }
}
