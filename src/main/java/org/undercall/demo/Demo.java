package org.undercall.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.undercall.adapter.clips.ClipWriter;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.adapter.speaker.WavVoice;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.listen.LazyEar;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.session.Dialogue;
import org.undercall.session.Work;
import org.undercall.sound.Pcm;
import org.undercall.sound.WavTimeline;

/**
 * The main job without people and without sound hardware: invented technicians speak a script, the
 * real recogniser hears it, the replies are spoken, and all of it is written to a WAV file.
 */
public final class Demo {
  /** Every word of it is invented. */
  private static final Job INVENTED =
      new Job(
          Optional.of("INVENTED 1"),
          Optional.empty(),
          Optional.empty(),
          Optional.of("demonstration"),
          Optional.of("invented technician"));

  private static final int RATE = DemoVoices.RATE;

  private final Path procedure;
  private final Script script;
  private final Path cache;
  private final Map<String, SpokenCache> speakers = new TreeMap<>();

  private Demo(Path procedure, Script script, Path cache) {
    this.procedure = procedure;
    this.script = script;
    this.cache = cache;
  }

  /**
   * A demonstration of a procedure and a script.
   *
   * @param cache folder that keeps spoken sound
   */
  public static Demo of(Path procedure, Path script, Path cache) throws IOException {
    return new Demo(procedure, Script.read(script), cache);
  }

  /**
   * Runs it in a new session.
   *
   * @param sessions the folder it is kept in; it is no record of work
   * @param model loads the recogniser, on a thread of its own; the demonstration closes it
   * @param dialogue prints what is heard and said, as it happens
   * @return the folder of the session; {@code dialogue.wav} in it holds the sound of both sides
   */
  public SessionFolder run(Path sessions, Callable<RecogniserMaker> model, Dialogue dialogue)
      throws Fault, IOException {
    Files.createDirectories(sessions);
    Path sound = Files.createTempFile(sessions, "dialogue", ".wav");
    SessionFolder folder;
    try (WavTimeline timeline = new WavTimeline(sound, RATE);
        Work work = Work.on(procedure, sessions, INVENTED, Occasion.DEMONSTRATION, true)) {
      folder = work.folder();
      work.keep(new ClipWriter(folder.clips(), ClipWriter.Settings.STANDARD, dialogue::print));
      converse(work, timeline, model, dialogue);
    }
    Files.move(sound, folder.path().resolve("dialogue.wav"));
    return folder;
  }

  private void converse(
      Work work, WavTimeline timeline, Callable<RecogniserMaker> model, Dialogue dialogue)
      throws Fault {
    Clock clock = new Clock();
    try (WavVoice voice = new WavVoice(speaker("mary"), timeline, clock::millis);
        Voice printed = dialogue.of(voice)) {
      clock.frames =
          new ScriptFrames(
              script.lines().iterator(),
              (line, at) -> spoken(line, at, timeline),
              voice::endMillis);
      Time time = Time.ofSound(OffsetDateTime.now(ZoneId.systemDefault()), clock::millis);
      try (Ear ear = dialogue.of(LazyEar.start(clock.frames, model))) {
        work.run(ear, printed, time);
      }
    } finally {
      speakers.values().forEach(SpokenCache::close);
    }
  }

  private static final class Clock {
    private ScriptFrames frames;

    long millis() {
      return frames == null ? 0 : frames.millis();
    }
  }

  private byte[] spoken(Script.Line line, long atMillis, WavTimeline timeline) {
    Pcm sound = speaker(line.speaker()).speak(line.words());
    timeline.add(atMillis, sound);
    return sound.bytes();
  }

  private SpokenCache speaker(String name) {
    return speakers.computeIfAbsent(name, n -> DemoVoices.speaker(n, cache));
  }
}
