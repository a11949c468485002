package org.undercall.demo;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.adapter.speaker.WavVoice;
import org.undercall.core.decision.Session;
import org.undercall.core.decision.WalkThrough;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.listen.LazyEar;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.port.UncheckedFault;
import org.undercall.port.Voice;
import org.undercall.session.Dialogue;
import org.undercall.session.Work;
import org.undercall.sound.Pcm;
import org.undercall.sound.WavTimeline;

/** A walk of somebody who says what is asked for, again if it was not understood. */
final class SpokenWalk {
  private static final int MOST_TRIES = 4;
  private static final String SPEAKER = "tenor";
  private static final String PROGRAM = "mary";

  private final Path procedure;
  private final Path folder;
  private final Map<String, SpokenCache> speakers = new HashMap<>();
  private SessionFolder kept;
  private ScriptFrames frames;
  private int said;
  private int again;
  private double talking;

  SpokenWalk(Path procedure, Path folder) {
    this.procedure = procedure;
    this.folder = folder;
  }

  /** Walks it, and prints how it went. */
  void run() throws Exception {
    SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()));
    Dialogue dialogue = new Dialogue(new PrintWriter(System.out, true, UTF_8));
    try (WavTimeline timeline = new WavTimeline(folder.resolve("dialogue.wav"), DemoVoices.RATE);
        Work work = Work.on(procedure, folder, Job.NOT_GIVEN, Occasion.DEMONSTRATION, true);
        WavVoice voice = new WavVoice(speaker(PROGRAM), timeline, this::millis);
        Voice printed = dialogue.of(voice)) {
      kept = work.folder();
      frames =
          new ScriptFrames(
              new Answers(), (line, at) -> spoken(line, at, timeline), voice::endMillis);
      Time time = Time.ofSound(OffsetDateTime.parse("2026-01-05T08:00:00+01:00"), this::millis);
      try (Ear ear = dialogue.of(LazyEar.start(frames, () -> model))) {
        work.run(ear, printed, time);
      }
    } finally {
      speakers.values().forEach(SpokenCache::close);
    }
    List<Recorded> log = SessionLogFile.read(kept.log()).decisions();
    List<SessionEvent> events = log.get(log.size() - 1).events();
    System.out.printf(
        Locale.ROOT,
        "%s: %d phrases said (%.1f minutes), %d of them again, %.1f minutes of sound in all%n",
        events.get(events.size() - 1),
        said,
        talking / 60,
        again,
        millis() / 60_000.0);
  }

  private long millis() {
    return frames == null ? 0 : frames.millis();
  }

  private byte[] spoken(Script.Line line, long at, WavTimeline timeline) {
    Pcm sound = speaker(line.speaker()).speak(line.words());
    timeline.add(at, sound);
    talking += sound.bytes().length / 2.0 / DemoVoices.RATE;
    return sound.bytes();
  }

  private SpokenCache speaker(String name) {
    return speakers.computeIfAbsent(
        name, n -> DemoVoices.speaker(n, Path.of("target", "speech-cache")));
  }

  /** What is asked for after what stands in the log. */
  private final class Answers implements Iterator<Script.Line> {
    private Session before;
    private int tries;

    @Override
    public boolean hasNext() {
      return next(session()).isPresent();
    }

    @Override
    public Script.Line next() {
      Session session = session();
      String answer = next(session).orElseThrow(NoSuchElementException::new);
      boolean same =
          before != null
              && before.progress().equals(session.progress())
              && before.talk().pending().equals(session.talk().pending())
              && before.phase() == session.phase();
      tries = same ? tries + 1 : 0;
      again += same ? 1 : 0;
      said++;
      before = session;
      String words =
          RecognisedPhrase.typed(answer).words().stream()
              .map(RecognisedPhrase.Word::text)
              .collect(Collectors.joining(" "));
      return new Script.Line(SPEAKER, words, 0);
    }

    private Optional<String> next(Session session) {
      boolean ended = session.phase().name().equals("ENDED") || tries >= MOST_TRIES;
      return ended ? Optional.empty() : Optional.of(WalkThrough.answer(session));
    }

    private Session session() {
      try {
        Session session = Session.start(Walk.of(ProcedureFile.load(procedure).procedure()));
        for (Recorded decision : SessionLogFile.read(kept.log()).decisions()) {
          session = session.after(decision);
        }
        return session;
      } catch (Fault e) {
        throw new UncheckedFault(e.code(), e.getMessage());
      }
    }
  }
}
