package org.undercall.session;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;

/**
 * Prints how long a decision takes in a procedure of 1,000 steps while 100 timers run: a hundred
 * steps that wait are started and left, then nine hundred others are closed one by one. It asserts
 * nothing.
 */
public final class LargeWorkSpeed {
  private static final int STEPS = 1000;
  private static final int TIMERS = 100;

  private final List<Long> thought = new ArrayList<>();
  private final List<Long> whole = new ArrayList<>();
  private final SessionLogFile log;
  private Session session;

  private LargeWorkSpeed(SessionLogFile log, Session start) throws Exception {
    this.log = log;
    session =
        start.after(
            DecisionSpeed.append(
                log, Decider.begin(start, new SessionEvent.SessionStarted("", "", "", ""))));
  }

  /** Takes no arguments. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("large-work");
    Path file = folder.resolve("large.json");
    write(file);
    long began = System.nanoTime();
    LoadedProcedure loaded = ProcedureFile.load(file);
    System.out.printf(
        "loading %,d steps, %,d bytes: %.0f ms%n",
        STEPS, Files.size(file), (System.nanoTime() - began) / 1e6);
    Path logFile = folder.resolve("log.jsonl");
    Session end;
    try (SessionLogFile log = SessionLogFile.open(logFile)) {
      LargeWorkSpeed work = new LargeWorkSpeed(log, Session.start(Walk.of(loaded.procedure())));
      work.walk();
      end = work.session;
    }
    System.out.printf(
        "at the end: %d steps open, %d timers run%n",
        end.openSteps(), end.timers().running().size());
    began = System.nanoTime();
    int read = SessionLogFile.read(logFile).decisions().size();
    Session replayed =
        OpenSession.replay(loaded.procedure(), SessionLogFile.read(logFile).decisions());
    System.out.printf(
        "reading and replaying %,d decisions: %.0f ms, the same state: %b%n",
        read, (System.nanoTime() - began) / 1e6, replayed.equals(end));
    System.gc();
    Runtime memory = Runtime.getRuntime();
    System.out.printf("heap in use: %d MB%n", (memory.totalMemory() - memory.freeMemory()) >> 20);
  }

  private void walk() throws Exception {
    say("cautions understood");
    for (int step = 1; step <= TIMERS; step++) {
      say("start the timer");
      say("go to step " + (step + 1));
    }
    print(TIMERS + " timers started and left");
    for (int closed = 1; closed <= STEPS - TIMERS; ) {
      int open = session.openSteps();
      say(session.phase() == Phase.WAITING ? "go to step " + (TIMERS + closed) : answer());
      if (session.openSteps() < open) {
        if (closed % 300 == 0) {
          print("closed up to step " + (TIMERS + closed));
        }
        closed++;
      }
    }
  }

  private String answer() {
    return switch (session.phase()) {
      case MEASURE -> "three eight two";
      case READ_BACK -> "that is correct";
      case TORQUE -> "torque reached 62";
      case ANGLE -> "angle turned 75";
      default -> "step completed";
    };
  }

  private void say(String words) throws Exception {
    long began = System.nanoTime();
    var decision = DecisionSpeed.decide(session, words);
    thought.add(System.nanoTime() - began);
    session = session.after(DecisionSpeed.append(log, decision));
    whole.add(System.nanoTime() - began);
    if (session.phase() == Phase.ENDED) {
      throw new IllegalStateException("ended by " + words);
    }
  }

  private void print(String until) {
    System.out.println(until + ":");
    DecisionSpeed.print("  reading and deciding", thought);
    DecisionSpeed.print("  ... and forced to the disk and applied", whole);
    thought.clear();
    whole.clear();
  }

  private static void write(Path file) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode top = mapper.createObjectNode();
    top.put("title", "Large work").put("vehicle", "invented").put("author", "nobody");
    top.put("revision", "1").put("values", "invented for this measurement");
    top.putArray("cautions").add("Stands, never a jack alone.");
    top.putArray("tools")
        .addObject()
        .put("id", "wrench 1")
        .put("least", 40)
        .put("most", 210)
        .put("unit", "N·m")
        .put("calibrated", "2026-03-03");
    ArrayNode phases = top.putArray("phases");
    for (int phase = 0; phase < STEPS / 100; phase++) {
      ObjectNode of = phases.addObject().put("name", "part " + (phase + 1)).put("each", "car");
      ArrayNode steps = of.putArray("steps");
      for (int i = 0; i < 100; i++) {
        step(steps.addObject(), 100 * phase + i);
      }
    }
    Files.write(file, mapper.writerWithDefaultPrettyPrinter().writeValueAsBytes(top));
  }

  private static void step(ObjectNode step, int number) {
    step.put("id", "step-" + (number + 1)).put("title", "Part " + (number + 1));
    if (number < TIMERS) {
      step.put("kind", "wait").put("seconds", 86_400);
    } else if (number % 3 == 0) {
      step.put("kind", "do");
    } else if (number % 3 == 1) {
      step.put("kind", "measure").put("unit", "mm");
    } else {
      ObjectNode fastener = step.put("kind", "fasten").putObject("fastener");
      fastener.put("name", "bolt").put("thread", "M12x1.5").put("drive", 18);
      fastener.put("hardware", "bolt").put("oneTimeUse", false).put("lubrication", "dry");
      ArrayNode stages = fastener.put("needs", "any").putArray("stages");
      stages.addObject().put("torque", 62).put("unit", "N·m").put("plusMinus", 3);
      stages.addObject().put("angle", 75).put("plusMinus", 5);
    }
  }
}
