package org.undercall.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Session;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.reply.Lesson;
import org.undercall.core.review.Origin;
import org.undercall.core.term.Job;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.TalkLevel;
import org.undercall.port.Clips;
import org.undercall.port.Display;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.text.Sha256;

/** Finds the session to work on: an open one of the same procedure, or a new one. */
public final class Work implements AutoCloseable {
  private final OpenSession session;
  private final boolean takenUp;
  private final List<String> passedOver;

  private Work(OpenSession session, boolean takenUp, List<String> passedOver) {
    this.session = session;
    this.takenUp = takenUp;
    this.passedOver = List.copyOf(passedOver);
  }

  /**
   * Takes up the latest session of this very procedure that is not complete, or begins one.
   *
   * @param sessions the folder of the sessions that are looked at and begun
   * @param job which car, which job and who, for a new session
   * @param occasion what it is for; one that was begun for something else is passed by
   * @param fresh whether to begin a new one in any case
   * @throws Fault LOG-027 if the latest one cannot be gone on with; none is begun then
   */
  public static Work on(Path procedure, Path sessions, Job job, Occasion occasion, boolean fresh)
      throws Fault {
    return on(ProcedureFile.load(procedure), sessions, job, occasion, fresh);
  }

  /** The same for a procedure that was read. */
  public static Work on(
      LoadedProcedure loaded, Path sessions, Job job, Occasion occasion, boolean fresh)
      throws Fault {
    List<String> passedOver = new ArrayList<>();
    Optional<SessionFolder> open =
        fresh
            ? Optional.empty()
            : latestOpen(sessions, loaded.sha256(), occasion, log -> true, passedOver);
    if (open.isPresent()) {
      return new Work(takenUp(open.get(), loaded), true, passedOver);
    }
    OffsetDateTime now = Time.ofMachine().now().wall();
    return new Work(
        OpenSession.begin(sessions, loaded, job, occasion, Optional.empty(), now),
        false,
        passedOver);
  }

  /**
   * Takes up the latest visit to the same session that is not complete, or begins one.
   *
   * @param fresh whether to begin a new one in any case
   */
  public static Work on(Visit visit, Path sessions, Occasion occasion, boolean fresh) throws Fault {
    List<String> passedOver = new ArrayList<>();
    Optional<SessionFolder> open =
        fresh
            ? Optional.empty()
            : latestOpen(
                sessions,
                visit.procedure().sha256(),
                occasion,
                log -> visit.isOf(log.decisions()),
                passedOver);
    if (open.isPresent()) {
      return new Work(takenUp(open.get(), visit.procedure()), true, passedOver);
    }
    OffsetDateTime now = Time.ofMachine().now().wall();
    OpenSession begun =
        OpenSession.begin(
            sessions, visit.procedure(), visit.job(), occasion, Optional.of(visit.begun()), now);
    return new Work(begun, false, passedOver);
  }

  /** Nothing is begun beside a session that should go on but cannot, unless that is asked for. */
  private static OpenSession takenUp(SessionFolder folder, LoadedProcedure procedure) throws Fault {
    try {
      return OpenSession.takeUp(folder, procedure);
    } catch (Fault e) {
      throw e.code() == LogCode.IMPOSSIBLE ? notTakenUp(folder.name(), e.first()) : e;
    }
  }

  /** How to begin another session, where this one cannot be gone on with. */
  private static Fault notTakenUp(String session, Fault.Finding why) {
    return new Fault(
        why.code(),
        "session " + session + ", " + why.place(),
        why.found(),
        why.expected() + "; --new begins another session, \"undercall review\" shows this one");
  }

  /**
   * Takes up a session, on the procedure that is kept in its folder.
   *
   * @param occasion what it is taken up for
   * @throws Fault LOG-013 if the session is complete, LOG-028 if it was begun for something else
   */
  public static Work takeUp(SessionFolder folder, Occasion occasion) throws Fault {
    LogContent log = SessionLogFile.read(folder.log());
    log.started();
    Occasion begun = Origin.of(log.decisions()).occasion();
    if (begun != occasion) {
      throw new Fault(
          LogCode.OTHER_OCCASION,
          "session " + folder.name(),
          Kebab.of(begun),
          Kebab.of(occasion)
              + "; \"undercall rehearse --resume\" goes on with a rehearsal, \"undercall work"
              + " --resume\" with work");
    }
    if (log.complete()) {
      throw new Fault(
          LogCode.COMPLETE,
          "session " + folder.name(),
          "a complete session",
          "one with open steps");
    }
    return new Work(
        OpenSession.takeUp(folder, StoredSession.of(folder, log).kept()), true, List.of());
  }

  private static Optional<SessionFolder> latestOpen(
      Path sessions,
      String sha256,
      Occasion occasion,
      Predicate<LogContent> wanted,
      List<String> passedOver)
      throws Fault {
    for (SessionFolder folder : SessionFolder.all(sessions)) {
      try {
        LogContent log = SessionLogFile.read(folder.log());
        if (log.started().sha256().equals(sha256)
            && !log.complete()
            && Origin.of(log.decisions()).occasion() == occasion
            && wanted.test(log)) {
          return Optional.of(folder);
        }
      } catch (Fault e) {
        if (keeps(folder, sha256)) {
          passedOver.add(OpenSessions.named(folder, e.getMessage()));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether the procedure of a session whose log cannot be read is this very one. */
  private static boolean keeps(SessionFolder folder, String sha256) {
    try {
      return Sha256.hex(Files.readAllBytes(folder.procedure())).equals(sha256);
    } catch (IOException e) {
      return false;
    }
  }

  /** What is wrong with later sessions of this procedure, which were not taken up; one a line. */
  public List<String> passedOver() {
    return passedOver;
  }

  /** Whether an open session was found. */
  public boolean takenUp() {
    return takenUp;
  }

  /** The folder the session is kept in. */
  public SessionFolder folder() {
    return session.folder();
  }

  /** The text of a torn last line that was dropped, if there was one. */
  public Optional<String> dropped() {
    return session.dropped();
  }

  /**
   * Says as much as this technician wants to hear. Nothing is recorded if that is as it would be in
   * any case.
   *
   * @param known what he knows from earlier sessions; nothing for a session that is taken up
   */
  public void talk(TalkLevel level, Optional<String> technician, Set<Lesson> known) throws Fault {
    boolean stays = session.session().talk().habit().level() == level;
    if (takenUp) {
      if (!stays) {
        session.talk(new SessionEvent.TalkSet(level));
      }
      return;
    }
    CautionsHeard heard = CautionsHeard.today(session.folder(), technician);
    if (heard.any() || !stays || !known.isEmpty()) {
      Optional<String> names = Optional.of(Lesson.names(known)).filter(text -> !text.isEmpty());
      session.talk(
          new SessionEvent.TalkSet(
              level,
              heard.any(),
              heard.of(session.session().walk().procedure().cautions()),
              names));
    }
  }

  /** What was given of who may see the work, and whose it is. */
  public void given(List<SessionEvent> crew) {
    session.given(crew);
  }

  /** The checksum of the procedure that is worked on. */
  public String procedure() {
    return session.sha256();
  }

  /** Keeps the sound of phrases there; without this call it is not kept. */
  public void keep(Clips clips) {
    session.keep(clips);
  }

  /** Works until the session or the input ends. */
  public Session run(Ear ear, Voice voice, Time time) throws Fault {
    return run(ear, voice, time, SessionLoop.REMIND_AFTER, Display.NONE);
  }

  /**
   * Works until the session or the input ends, and shows how it goes.
   *
   * @param remindAfter the quiet before the first reminder; zero for none
   */
  public Session run(Ear ear, Voice voice, Time time, Duration remindAfter, Display display)
      throws Fault {
    return session.run(ear, voice, time, remindAfter, display);
  }

  @Override
  public void close() throws Fault {
    session.close();
  }
}
