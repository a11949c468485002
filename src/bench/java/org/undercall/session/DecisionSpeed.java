package org.undercall.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Decision;
import org.undercall.core.decision.Session;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.procedure.Walk;

/**
 * Prints how long a decision takes: reading the phrase, deciding, forcing the line to the disk,
 * applying it; and how long it takes to replay them. It asserts nothing.
 */
public final class DecisionSpeed {
  private static final List<String> ROUND =
      List.of("where am i", "take a break now", "resume the work", "jack moved", "what is left");

  private DecisionSpeed() {}

  /** Takes the number of decisions, 2000 without one. */
  public static void main(String[] args) throws Exception {
    int count = args.length > 0 ? Integer.parseInt(args[0]) : 2000;
    LoadedProcedure loaded =
        ProcedureFile.load(Path.of("shared", "procedures", "light-van-rear-axle.json"));
    Path folder = Files.createTempDirectory("decision-speed");
    Session start = Session.start(Walk.of(loaded.procedure()));
    try (SessionLogFile log = SessionLogFile.open(folder.resolve("log.jsonl"))) {
      Session session =
          start.after(
              append(log, Decider.begin(start, new SessionEvent.SessionStarted("", "", "", ""))));
      session = session.after(append(log, decide(session, "cautions understood")));
      List<Long> thought = new ArrayList<>();
      List<Long> whole = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        long began = System.nanoTime();
        Decision decision = decide(session, ROUND.get(i % ROUND.size()));
        thought.add(System.nanoTime() - began);
        session = session.after(append(log, decision));
        whole.add(System.nanoTime() - began);
      }
      print("reading and deciding", thought);
      print("... and forced to the disk and applied", whole);
      long began = System.nanoTime();
      List<Recorded> read = SessionLogFile.read(folder.resolve("log.jsonl")).decisions();
      Session replayed = OpenSession.replay(loaded.procedure(), read);
      System.out.printf(
          "reading and replaying %d decisions: %.0f ms, the same state: %b%n",
          read.size(), (System.nanoTime() - began) / 1e6, replayed.equals(session));
    }
  }

  static Decision decide(Session session, String words) {
    RecognisedPhrase phrase = RecognisedPhrase.typed(words);
    return Decider.decide(
        session, Interpreter.interpret(phrase, Decider.heard(session), 0.6), now());
  }

  static Recorded append(SessionLogFile log, Decision decision) throws Exception {
    long seq = log.decisions().size() + 1L;
    String said = decision.reply().text();
    Recorded recorded = new Recorded(seq, now(), Optional.empty(), decision.events(), said);
    log.append(recorded);
    return recorded;
  }

  private static Moment now() {
    return new Moment(OffsetDateTime.parse("2026-01-05T08:00:00+01:00"), 0);
  }

  static void print(String what, List<Long> nanos) {
    List<Long> sorted = nanos.stream().sorted().toList();
    System.out.printf(
        "%s: median %.2f ms, 95th percentile %.2f ms%n",
        what, sorted.get(sorted.size() / 2) / 1e6, sorted.get(sorted.size() * 95 / 100) / 1e6);
  }
}
