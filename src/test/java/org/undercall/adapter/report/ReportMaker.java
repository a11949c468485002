package org.undercall.adapter.report;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.LongWork;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.core.review.Review;
import org.undercall.core.term.StepRef;

/** Makes what reports are made from: a whole session with the texts of an attacker put in. */
public final class ReportMaker {
  private static final Path PROCEDURES = Path.of("shared", "procedures");
  private static final String SUM = "0123456789abcdef".repeat(4);

  private ReportMaker() {}

  /** A session in which all was done, with a procedure as it is. */
  public static Dossier of(String file, Dossier.Paper paper) throws Exception {
    return of(PROCEDURES.resolve(file), Optional.empty(), paper);
  }

  /** The same with a text as the title of a step, a note, words heard and the names. */
  public static Dossier with(String payload, Path folder) throws Exception {
    Path file = folder.resolve("procedure.json");
    String json = Files.readString(PROCEDURES.resolve("demo-lateral-link.json"));
    String put = payload.codePoints().mapToObj(ReportMaker::json).reduce("", String::concat);
    Files.writeString(file, json.replace("Tighten the joint nut", put));
    return of(file, Optional.of(payload), Dossier.Paper.A4);
  }

  private static String json(int c) {
    return c == '"' || c == '\\' ? "\\" + (char) c : Character.toString(c);
  }

  private static Dossier of(Path file, Optional<String> payload, Dossier.Paper paper)
      throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(file);
    Walk walk = Walk.of(loaded.procedure());
    StepRef step = walk.places().get(0).ref();
    List<Recorded> log =
        LogMaker.allDone(walk, loaded.sha256()).stream()
            .map(d -> d.seq() == 3 && payload.isPresent() ? spiked(d, payload.get(), step) : d)
            .toList();
    Dossier.Given given = new Dossier.Given(payload, payload, paper);
    Dossier.Seal seal = new Dossier.Seal(SUM, SUM, log.size(), false, Optional.empty());
    return new Dossier(Review.of(walk, log), loaded.procedure(), log, seal, given);
  }

  /** A session of a random procedure of so many steps, worked by the real rules. */
  public static Dossier random(long seed, int steps, Dossier.Paper paper) {
    LongWork work = new LongWork(steps, new SplittableRandom(seed));
    List<Recorded> log = work.work();
    Dossier.Given given = new Dossier.Given(Optional.empty(), Optional.empty(), paper);
    Dossier.Seal seal = new Dossier.Seal(SUM, SUM, log.size(), false, Optional.empty());
    return new Dossier(Review.of(work.walk(), log), work.walk().procedure(), log, seal, given);
  }

  private static Recorded spiked(Recorded d, String payload, StepRef step) {
    List<SessionEvent> events = new java.util.ArrayList<>(d.events());
    events.add(new SessionEvent.NoteKept(step, payload));
    events.add(new SessionEvent.NotNow("note", "do"));
    Recorded.Heard heard = new Recorded.Heard(payload, "note", 0.9, "typed");
    return new Recorded(d.seq(), d.at(), Optional.of(heard), events, payload);
  }
}
