package org.undercall;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.undercall.adapter.files.LoadedProcedure;
import org.undercall.adapter.files.LogContent;
import org.undercall.adapter.files.LogFault;
import org.undercall.adapter.files.ProcedureFaults;
import org.undercall.adapter.files.ProcedureFile;
import org.undercall.adapter.files.SessionFolder;
import org.undercall.adapter.files.SessionLogFile;
import org.undercall.core.decision.Session;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Procedure;

/** Finds the session to work on: an open one of the same procedure, or a new one. */
public final class Work implements AutoCloseable {
  private final OpenSession session;
  private final boolean takenUp;

  private Work(OpenSession session, boolean takenUp) {
    this.session = session;
    this.takenUp = takenUp;
  }

  /**
   * Takes up the latest session of this very procedure that is not complete, or begins one.
   *
   * @param sessions the folder of all sessions
   * @param fresh whether to begin a new one in any case
   * @throws LogFault LOG-027 if the latest one cannot be gone on with; none is begun then
   */
  public static Work on(Path procedure, Path sessions, boolean fresh)
      throws ProcedureFaults, LogFault, IOException {
    LoadedProcedure loaded = ProcedureFile.load(procedure);
    Optional<SessionFolder> open = fresh ? Optional.empty() : latestOpen(sessions, loaded.sha256());
    if (open.isPresent()) {
      return new Work(takenUp(open.get(), loaded.procedure()), true);
    }
    OffsetDateTime now = Time.ofMachine().now().wall();
    return new Work(OpenSession.begin(sessions, loaded, now), false);
  }

  /** Nothing is begun beside a session that should go on but cannot, unless that is asked for. */
  private static OpenSession takenUp(SessionFolder folder, Procedure procedure) throws LogFault {
    try {
      return OpenSession.takeUp(folder, procedure);
    } catch (LogFault e) {
      throw e.code() == LogFault.Code.IMPOSSIBLE ? LogFault.notTakenUp(folder.name(), e) : e;
    }
  }

  /**
   * Takes up a session, on the procedure that is kept in its folder.
   *
   * @throws LogFault LOG-013 if the session is complete
   */
  public static Work takeUp(SessionFolder folder) throws ProcedureFaults, LogFault {
    LogContent log = SessionLogFile.read(folder.log());
    if (isComplete(log)) {
      throw LogFault.complete(folder.name());
    }
    return new Work(OpenSession.takeUp(folder, kept(folder, log)), true);
  }

  /** The procedure that a session was begun with. */
  static Procedure kept(SessionFolder folder, LogContent log) throws ProcedureFaults, LogFault {
    folder.procedureBytes(log.started().sha256());
    return ProcedureFile.load(folder.procedure()).procedure();
  }

  /** Whether a session ended with every step closed. */
  static boolean isComplete(LogContent log) {
    return log.decisions().stream()
        .flatMap(decision -> decision.events().stream())
        .anyMatch(e -> e instanceof SessionEvent.SessionEnded ended && ended.complete());
  }

  private static Optional<SessionFolder> latestOpen(Path sessions, String sha256) throws LogFault {
    return SessionFolder.all(sessions).stream().filter(f -> isOpen(f, sha256)).findFirst();
  }

  private static boolean isOpen(SessionFolder folder, String sha256) {
    try {
      LogContent log = SessionLogFile.read(folder.log());
      return log.started().sha256().equals(sha256) && !isComplete(log);
    } catch (LogFault e) {
      return false;
    }
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

  /** Keeps the sound of phrases there; without this call it is not kept. */
  public void keep(Clips clips) {
    session.keep(clips);
  }

  /** Works until the session or the input ends. */
  public Session run(Ear ear, Voice voice, Time time) throws LogFault {
    return run(ear, voice, time, SessionLoop.REMIND_AFTER, Display.NONE);
  }

  /**
   * Works until the session or the input ends, and shows how it goes.
   *
   * @param remindAfter the quiet before the first reminder; zero for none
   */
  public Session run(Ear ear, Voice voice, Time time, Duration remindAfter, Display display)
      throws LogFault {
    return session.run(ear, voice, time, remindAfter, display);
  }

  @Override
  public void close() throws LogFault {
    session.close();
  }
}
