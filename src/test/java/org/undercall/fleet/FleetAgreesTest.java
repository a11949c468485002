package org.undercall.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;

@DisplayName("Many sessions together")
class FleetAgreesTest {
  private static final int SESSIONS = 200;

  @TempDir static Path folder;
  private static Duck duck;

  @BeforeAll
  static void make() throws Exception {
    long events = MakeSessions.make(SESSIONS, folder, 20_261_125);
    System.out.printf("%d sessions made, %,d events%n", SESSIONS, events);
    Program.run(folder, "sessions");
    duck = Duck.of(folder);
  }

  @AfterAll
  static void close() throws Exception {
    duck.close();
  }

  private static Review review(SessionFolder session) throws Exception {
    Walk walk = Walk.of(ProcedureFile.load(session.procedure()).procedure());
    return Review.of(walk, SessionLogFile.read(session.log()).decisions());
  }

  @Test
  @DisplayName("have the times, states and refusals of their reviews, to the millisecond")
  void agreesWithReview() throws Exception {
    Map<String, String> expected = new TreeMap<>();
    Map<String, String> sessions = new TreeMap<>();
    for (SessionFolder session : SessionFolder.all(folder)) {
      Review review = review(session);
      sessions.put(session.name(), inWords(review));
      for (StepReview step : review.steps()) {
        if (step.times().start().isPresent()) {
          expected.put(session.name() + " " + step.place().ref(), inWords(step));
        }
      }
    }
    assertEquals(
        sessions,
        found(
            "SELECT session, concat_ws(' ', state, elapsed_ms, away_ms, working_ms)"
                + " FROM session_fact"));
    assertEquals(
        expected,
        found(
            "SELECT session || ' ' || step, concat_ws(' ', state, working_ms, whole_ms, reopened,"
                + " (SELECT coalesce(sum(n), 0) FROM refusal_fact r"
                + " WHERE r.session = s.session AND r.step = s.step)) FROM step_fact s"
                + " WHERE begun > 0"));
    assertTrue(expected.size() > 20 * SESSIONS, "too few steps: " + expected.size());
  }

  private static Map<String, String> found(String sql) throws Exception {
    Map<String, String> found = new TreeMap<>();
    duck.rows(sql).forEach(row -> found.put((String) row.get(0), (String) row.get(1)));
    return found;
  }

  private static String inWords(Review review) {
    return String.join(
        " ",
        review.complete() ? "complete" : "open",
        "" + review.totals().elapsed().length().toMillis(),
        "" + review.totals().away().toMillis(),
        "" + review.totals().working().toMillis());
  }

  private static String inWords(StepReview step) {
    String state =
        switch (step.state()) {
          case CLOSED -> "closed";
          case OPEN -> "open";
          case PUT_OFF -> "put off";
          case STARTED_NOT_TIGHTENED -> "started";
        };
    boolean closed = step.state() == StepReview.State.CLOSED;
    return String.join(
        " ",
        state,
        "" + step.times().working().toMillis(),
        closed ? "" + step.times().whole().length().toMillis() : "0",
        "" + step.work().reopened().size(),
        "" + step.work().refusals().size());
  }

  @Test
  @DisplayName("have the quartiles that a library of statistics gives")
  void quartiles() throws Exception {
    Map<String, List<Double>> times = new TreeMap<>();
    for (SessionFolder session : SessionFolder.all(folder)) {
      for (StepReview step : review(session).steps()) {
        if (step.state() == StepReview.State.CLOSED) {
          times
              .computeIfAbsent(step.place().ref().toString(), s -> new ArrayList<>())
              .add((double) step.times().working().toMillis());
        }
      }
    }
    List<List<Object>> rows =
        duck.rows("SELECT step, sessions, q1_ms, median_ms, q3_ms FROM compared_steps");
    assertEquals(times.size(), rows.size());
    for (List<Object> row : rows) {
      double[] all = times.get((String) row.get(0)).stream().mapToDouble(t -> t).toArray();
      Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
      assertEquals((long) all.length, row.get(1));
      assertEquals(percentile.evaluate(all, 25), row.get(2));
      assertEquals(percentile.evaluate(all, 50), row.get(3));
      assertEquals(percentile.evaluate(all, 75), row.get(4));
    }
  }

  @Test
  @DisplayName("do not fail for damaged lines and strange files, and name them")
  void strange(@TempDir Path odd) throws Exception {
    MakeSessions.make(6, odd, 5);
    List<SessionFolder> made = SessionFolder.all(odd);
    Files.writeString(made.get(0).log(), "{\"seq\": no\n", StandardOpenOption.APPEND);
    String text = Files.readString(made.get(1).log());
    Files.writeString(made.get(1).log(), text.replaceFirst("\"mono\":[1-9]", "\"mono\":-"));
    Files.writeString(made.get(2).procedure(), "{");
    Files.writeString(made.get(3).log(), text.replace("\n", "\r\n"));
    Files.write(
        Files.createDirectory(odd.resolve("a[b]* c'd")).resolve("log.jsonl"), new byte[5000]);
    Files.createFile(odd.resolve("a[b]* c'd").resolve("procedure.json"));
    Files.createDirectories(odd.resolve("no file").resolve("log.jsonl"));
    Files.writeString(odd.resolve("read me.txt"), "words");
    String list = Program.run(odd, "sessions", "--csv");
    assertEquals(9, list.lines().count(), list);
    assertEquals(6, list.lines().filter(l -> l.contains(",damaged,")).count(), list);
    assertTrue(list.contains("a[b]* c'd") && list.contains("no file"), list);
  }

  @Test
  @DisplayName("are read again only where a file changed, and the index may be deleted")
  void cache(@TempDir Path kept) throws Exception {
    MakeSessions.make(5, kept, 6);
    assertEquals("5", readAnew(kept));
    Path index = kept.resolve(Fleet.INDEX);
    String whole = Files.readString(index);
    assertEquals("0", readAnew(kept));
    List<SessionFolder> made = SessionFolder.all(kept);
    Files.setLastModifiedTime(made.get(1).log(), FileTime.fromMillis(1_000_000));
    assertEquals("1", readAnew(kept));
    Files.setLastModifiedTime(made.get(1).log(), FileTime.fromMillis(2_000_000));
    Files.writeString(index, whole);
    Files.delete(made.get(2).log());
    assertEquals("1", readAnew(kept));
    assertEquals(4, Files.readAllLines(index).size());
    Files.delete(index);
    assertEquals("4", readAnew(kept));
  }

  @Test
  @DisplayName("are read anew if the index is of another version or is none, which is said")
  void otherIndex(@TempDir Path kept) throws Exception {
    MakeSessions.make(3, kept, 6);
    assertEquals("3", readAnew(kept));
    Path index = kept.resolve(Fleet.INDEX);
    String whole = Files.readString(index);
    Files.writeString(index, whole.replace("{\"version\":", "{\"version\":9"));
    assertEquals("3", readAnew(kept));
    assertEquals(3, Files.readAllLines(index).size());
    Files.writeString(index, "no index at all");
    assertEquals("3", readAnew(kept));
    assertEquals("no index at all", Files.readString(index));
    assertTrue(Program.run(kept, "sessions").contains("FLT-002 index.jsonl"));
    Files.delete(index);
    Program.run(kept, "sessions", "--no-index");
    assertTrue(Files.notExists(index));
  }

  private static String readAnew(Path sessions) {
    String list = Program.run(sessions, "sessions");
    return list.replaceAll("(?s).*read anew: ([0-9]+)\\..*", "$1");
  }
}
