package org.undercall.session;

import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Replay;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Job;
import org.undercall.core.term.Occasion;
import org.undercall.port.Clips;
import org.undercall.port.Display;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Journal;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.text.ProgramVersion;

/** A session that is begun or taken up again, with its log open. */
final class OpenSession implements AutoCloseable {
  private final SessionFolder folder;
  private final SessionLogFile log;
  private final Session session;
  private final String sha256;
  private final Function<Optional<SessionEvent.TalkSet>, Decision> first;
  private Optional<SessionEvent.TalkSet> talk = Optional.empty();
  private List<SessionEvent> given = List.of();
  private Clips clips = Clips.NONE;

  private OpenSession(
      SessionFolder folder,
      SessionLogFile log,
      Session session,
      String sha256,
      Function<Optional<SessionEvent.TalkSet>, Decision> first) {
    this.folder = folder;
    this.log = log;
    this.session = session;
    this.sha256 = sha256;
    this.first = first;
  }

  /** Begins a session in a new folder, which keeps the whole procedure. */
  static OpenSession begin(
      Path sessions,
      LoadedProcedure loaded,
      Job job,
      Occasion occasion,
      Optional<SessionEvent.VisitBegun> visit,
      OffsetDateTime now)
      throws Fault {
    SessionFolder folder =
        SessionFolder.create(sessions, loaded.wholeName(), loaded.wholeBytes(), now);
    folder.procedureBytes(loaded.sha256());
    Procedure procedure = loaded.procedure();
    Session session = Session.start(Walk.of(procedure));
    SessionEvent.SessionStarted started =
        new SessionEvent.SessionStarted(
                procedure.about().title(),
                procedure.about().revision(),
                loaded.sha256(),
                ProgramVersion.TEXT,
                job)
            .with(occasion);
    SessionLogFile log = SessionLogFile.open(folder.log());
    return new OpenSession(
        folder,
        log,
        session,
        loaded.sha256(),
        talk -> Decider.begin(session, started, visit, talk));
  }

  /**
   * Takes a session up again: its log is replayed on the procedure it began with.
   *
   * @throws Fault LOG-011 if the log, now that no other program can change it, tells of another
   *     procedure; LOG-027 if no session follows from the log
   */
  static OpenSession takeUp(SessionFolder folder, LoadedProcedure loaded) throws Fault {
    SessionLogFile log = SessionLogFile.open(folder.log());
    try {
      StoredSession.requireSame(loaded, LogContent.started(log.decisions()).sha256());
      Session session = replay(loaded.procedure(), log.decisions());
      Duration away = away(log.decisions());
      Optional<SessionEvent.LogDoubted> doubted = doubted(log);
      return new OpenSession(
          folder,
          log,
          session,
          loaded.sha256(),
          talk -> Decider.takeUp(session, ProgramVersion.TEXT, away, doubted, talk));
    } catch (Fault e) {
      log.close();
      throw e;
    }
  }

  private static Optional<SessionEvent.LogDoubted> doubted(SessionLogFile log) {
    Optional<Integer> gone = log.gone() > 0 ? Optional.of(log.gone()) : Optional.empty();
    return log.trouble().map(trouble -> new SessionEvent.LogDoubted(trouble, gone));
  }

  private static Duration away(List<Recorded> decisions) {
    OffsetDateTime last = decisions.get(decisions.size() - 1).at().wall();
    return Duration.between(last, Time.ofMachine().now().wall());
  }

  /**
   * The session that recorded decisions lead to.
   *
   * @throws Fault LOG-027 if no session follows from them
   */
  static Session replay(Procedure procedure, List<Recorded> decisions) throws Fault {
    Replay replay = Replay.of(Walk.of(procedure), decisions);
    if (replay instanceof Replay.Broken broken) {
      throw LogCode.impossible(broken);
    }
    return ((Replay.Done) replay).session();
  }

  SessionFolder folder() {
    return folder;
  }

  /** What is wrong with the end of the log, if a torn line was dropped. */
  Optional<String> dropped() {
    return log.dropped();
  }

  /** The session as it is before the first decision of this run. */
  Session session() {
    return session;
  }

  /** The checksum of its procedure. */
  String sha256() {
    return sha256;
  }

  /** How much to say. */
  void talk(SessionEvent.TalkSet wanted) {
    talk = Optional.of(wanted);
  }

  /** What is recorded with the first decision. */
  void given(List<SessionEvent> crew) {
    given = List.copyOf(crew);
  }

  /** Where to keep the sound of phrases. */
  void keep(Clips sounds) {
    clips = sounds;
  }

  /** Why the sum file could not be written last; empty if it is up to date. */
  Optional<String> sumTrouble() {
    return log.sumTrouble();
  }

  /** Runs the loop with these ports until the session or the input ends. */
  Session run(Ear ear, Voice voice, Time time, Duration remindAfter, Display display) throws Fault {
    display.earlier(session, log.decisions());
    SessionLoop.Ports ports = new SessionLoop.Ports(ear, voice, new Kept(), time, display);
    return new SessionLoop(session, ports, log.decisions().size(), remindAfter)
        .run(first.apply(talk).with(given));
  }

  @Override
  public void close() throws Fault {
    log.close();
  }

  /** The log and the clips of this session. */
  private final class Kept implements Journal {
    @Override
    public void append(Recorded decision) throws Fault {
      log.append(decision);
    }

    @Override
    public Clips clips() {
      return clips;
    }
  }
}
