package org.undercall.session;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.listen.SoundEar;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.WavFrames;

/**
 * Work with the recogniser, in a process of its own that never ends: what a WAV file holds is
 * heard, then noise. Replies are printed, a line each.
 *
 * <p>Arguments: the procedure, the folder of sessions, the WAV file, the model's folder.
 */
final class HeardWork {
  private HeardWork() {}

  /** Runs until it is killed. */
  public static void main(String[] args) throws Exception {
    Frames sound = new EndlessFrames(WavFrames.open(Path.of(args[2])));
    try (SpeechModel model = SpeechModel.load(ModelFolder.verify(Path.of(args[3])));
        SoundEar ear = SoundEar.standard(sound, model);
        Work work =
            Work.on(Path.of(args[0]), Path.of(args[1]), Job.NOT_GIVEN, Occasion.WORK, false)) {
      work.run(ear, new Printed(), Time.ofMachine());
    }
  }

  /** Prints what is said. */
  private static final class Printed implements Voice {
    @Override
    public void say(String words) {
      System.out.println(NativeCrashTest.SAID + words);
      System.out.flush();
    }

    @Override
    public void close() {}
  }

  /** A file, and after it noise like speech in loudness, so that the recogniser is at work. */
  private static final class EndlessFrames implements Frames {
    private final Frames file;
    private final Random random = new Random(5);
    private long place;

    EndlessFrames(Frames file) {
      this.file = file;
    }

    @Override
    public Optional<Frame> next() throws Fault {
      Optional<Frame> frame = file.next().filter(f -> f.samples() == FRAME_SAMPLES);
      if (frame.isPresent()) {
        place = frame.get().firstSample() + FRAME_SAMPLES;
        return frame;
      }
      byte[] noise = new byte[FRAME_BYTES];
      for (int i = 0; i < noise.length; i += 2) {
        noise[i + 1] = (byte) (40 * random.nextGaussian());
      }
      place += FRAME_SAMPLES;
      return Optional.of(Frame.of(place - FRAME_SAMPLES, noise));
    }

    @Override
    public void close() {
      file.close();
    }
  }
}
