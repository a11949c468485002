package org.undercall.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.adapter.fleet.Grid;
import org.undercall.adapter.fleet.Limits;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;

@DisplayName("Many sessions together")
class FleetAgreesTest {
  private static final int SESSIONS = 200;
  private static final Limits LIMITS = new Limits(256, 2);

  @TempDir static Path folder;

  @BeforeAll
  static void make() throws Exception {
    long events = MakeSessions.make(SESSIONS, folder, 20_261_125);
    System.out.printf("%d sessions made, %,d events%n", SESSIONS, events);
  }

  private static Fleet open(Path sessions) throws Exception {
    return Fleet.open(sessions, false, LIMITS, "now", session -> Optional.empty());
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
    Map<String, String> found = new TreeMap<>();
    try (Fleet fleet = open(folder)) {
      Grid rows =
          fleet.query(
              "SELECT s.*, (SELECT coalesce(sum(n), 0) FROM refusal_fact r"
                  + " WHERE r.session = s.session AND r.step = s.step) AS refused"
                  + " FROM step_fact s WHERE first_touch IS NOT NULL");
      for (int i = 0; i < rows.size(); i++) {
        found.put(
            rows.text(i, "session") + " " + rows.text(i, "step"),
            String.join(
                " ",
                rows.text(i, "state"),
                rows.text(i, "working_ms"),
                rows.text(i, "whole_ms"),
                rows.text(i, "reopened"),
                rows.text(i, "refused")));
      }
      assertEquals(sessions, sessions(fleet));
    }
    assertEquals(expected, found);
    assertTrue(expected.size() > 20 * SESSIONS, "too few steps: " + expected.size());
  }

  private static Map<String, String> sessions(Fleet fleet) throws Exception {
    Map<String, String> found = new TreeMap<>();
    Grid rows = fleet.query("SELECT * FROM session_fact");
    for (int i = 0; i < rows.size(); i++) {
      found.put(
          rows.text(i, "session"),
          String.join(
              " ",
              rows.text(i, "state"),
              rows.text(i, "elapsed_ms"),
              rows.text(i, "away_ms"),
              rows.text(i, "working_ms")));
    }
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
        closed ? "" + step.times().whole().length().toMillis() : "",
        "" + step.work().reopened().size(),
        "" + step.work().refusals().size());
  }

  @Test
  @DisplayName("have the quartiles that a library of statistics gives")
  void quartiles() throws Exception {
    Map<String, List<Double>> times = new TreeMap<>();
    List<String> names = new ArrayList<>();
    for (SessionFolder session : SessionFolder.all(folder)) {
      names.add(session.name());
      for (StepReview step : review(session).steps()) {
        if (step.state() == StepReview.State.CLOSED) {
          times
              .computeIfAbsent(step.place().ref().toString(), s -> new ArrayList<>())
              .add((double) step.times().working().toMillis());
        }
      }
    }
    try (Fleet fleet = open(folder)) {
      fleet.measureBy(names);
      Grid rows = fleet.query("SELECT * FROM compared_steps ORDER BY step");
      assertEquals(times.size(), rows.size());
      for (int i = 0; i < rows.size(); i++) {
        double[] all =
            times.get(rows.text(i, "step")).stream().mapToDouble(Double::doubleValue).toArray();
        Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        assertEquals(all.length, rows.whole(i, "sessions"));
        assertEquals(percentile.evaluate(all, 25), rows.number(i, "q1_ms").orElseThrow());
        assertEquals(percentile.evaluate(all, 50), rows.number(i, "median_ms").orElseThrow());
        assertEquals(percentile.evaluate(all, 75), rows.number(i, "q3_ms").orElseThrow());
      }
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
    List<String> suspects = new ArrayList<>();
    try (Fleet fleet =
        Fleet.open(
            odd,
            false,
            LIMITS,
            "now",
            session -> {
              suspects.add(session);
              return Optional.of("LOG-004 " + session);
            })) {
      Grid damaged = fleet.query("SELECT session FROM file_fact WHERE damage IS NOT NULL");
      assertEquals(6, damaged.size(), suspects.toString());
      assertEquals(2, fleet.query("SELECT * FROM session_fact WHERE state <> 'damaged'").size());
      assertEquals(8, fleet.query("SELECT * FROM file_fact").size());
    }
  }

  @Test
  @DisplayName("are read again only where a file changed, and the index may be deleted")
  void cache(@TempDir Path kept) throws Exception {
    MakeSessions.make(5, kept, 6);
    assertEquals(5, indexed(kept));
    assertEquals(0, indexed(kept));
    Path log = SessionFolder.all(kept).get(0).log();
    Files.write(log, Files.readAllBytes(log));
    Files.setLastModifiedTime(log, java.nio.file.attribute.FileTime.fromMillis(1_000_000));
    assertEquals(1, indexed(kept));
    Files.delete(kept.resolve(Fleet.INDEX));
    assertEquals(5, indexed(kept));
    Files.writeString(kept.resolve(Fleet.INDEX), "no index at all");
    assertEquals(5, indexed(kept));
  }

  private static int indexed(Path sessions) throws Exception {
    try (Fleet fleet =
        Fleet.open(sessions, true, LIMITS, "now", session -> Optional.of("LOG-004"))) {
      assertEquals(5, fleet.query("SELECT * FROM session_fact WHERE state <> 'damaged'").size());
      return fleet.read();
    }
  }

  @Test
  @DisplayName("have a temporary folder for each run, which is gone afterwards")
  void temporary(@TempDir Path empty) throws Exception {
    List<Path> folders = new ArrayList<>();
    try (Fleet one = open(empty);
        Fleet other = open(empty)) {
      for (Fleet fleet : List.of(one, other)) {
        Grid grid = fleet.query("SELECT current_setting('temp_directory') AS folder");
        folders.add(Path.of(grid.text(0, "folder")));
      }
      assertEquals(2, folders.stream().distinct().filter(Files::isDirectory).count());
    }
    assertTrue(folders.stream().noneMatch(Files::exists), folders.toString());
  }
}
