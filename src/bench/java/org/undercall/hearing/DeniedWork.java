package org.undercall.hearing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Random;
import org.undercall.core.decision.Phase;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.listen.SoundEar;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.session.SessionLoop;
import org.undercall.session.Work;

/**
 * Denials at work: a session is led to a phase by typed phrases, then every natural denial of that
 * phase is said by one speaker, through the program's own ear, loop and log.
 */
final class DeniedWork {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
  private static final int BETWEEN_MILLIS = 2_500;
  private static final List<Phase> PHASES =
      NearPhrases.NATURAL.stream().map(NearPhrases.Spoken::phase).distinct().toList();

  private final Bench bench;

  /** What came of one session: the denials said, and the decisions that closed something. */
  record Came(int said, int closing) {}

  DeniedWork(Bench bench) {
    this.bench = bench;
  }

  /** One session. */
  Came session(int index, int level, Random random) {
    Phase phase = PHASES.get(index % PHASES.size());
    Speaker speaker = bench.speakers().anyPlain(random);
    List<NearPhrases.Spoken> denials =
        NearPhrases.NATURAL.stream().filter(said -> said.phase() == phase).toList();
    Sound sound = Mixing.LEAD;
    for (NearPhrases.Spoken said : denials) {
      Conditions conditions = Conditions.any(level, bench.noises(), random);
      Sound clip = conditions.clip(speaker.say(said.words()), bench.noises(), random).sound();
      sound = Sound.joined(sound, clip, Sound.silence(BETWEEN_MILLIS));
    }
    return new Came(denials.size(), closing(sound, phase));
  }

  private int closing(Sound sound, Phase phase) {
    try (SoundEar ear = SoundEar.standard(new ClipFrames(sound), bench.maker());
        Work work =
            Work.on(
                DEMO,
                Files.createTempDirectory("denied-work"),
                Job.NOT_GIVEN,
                Occasion.WORK,
                true)) {
      NoisyWork heard = new NoisyWork(ear, phase, sound.seconds());
      Time time = Time.ofSound(START, () -> (long) (1000 * ear.seconds()));
      work.run(heard, NoisyWork.NO_VOICE, time, SessionLoop.REMIND_AFTER, heard);
      if (!heard.settled()) {
        throw new IllegalStateException(phase + " was not reached");
      }
      if (heard.closing() > 0) {
        System.out.println("denied at work: " + phase + " " + heard.believed());
      }
      return heard.closing();
    } catch (IOException | Fault e) {
      throw new IllegalStateException(e);
    }
  }
}
