package org.undercall.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.command.App;
import picocli.CommandLine;

@DisplayName("Worked out anew from the tables that are printed, outside the program,")
class OutsideArithmeticTest {
  private static final int SESSIONS = 40;

  @TempDir static Path sessions;
  @TempDir static Path tables;
  private static Duck engine;

  @BeforeAll
  static void print() throws Exception {
    MakeSessions.make(SESSIONS, sessions, 77);
    for (SessionFolder session : SessionFolder.all(sessions)) {
      String name = session.name();
      keep(name + ".events.csv", "review", name, "--csv", "events");
      keep(name + ".steps.csv", "review", name, "--csv");
      keep(name + ".review.json", "review", name, "--json");
    }
    engine = new Duck();
    try (InputStream in = OutsideArithmeticTest.class.getResourceAsStream("outside.sql")) {
      engine.script(new String(in.readAllBytes(), StandardCharsets.UTF_8), tables);
    }
  }

  @AfterAll
  static void close() throws SQLException {
    engine.close();
  }

  private static void keep(String file, String... words) throws Exception {
    Files.writeString(tables.resolve(file), run(words));
  }

  private static String run(String... words) {
    StringWriter out = new StringWriter();
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(out));
    List<String> all = new ArrayList<>(Arrays.asList(words));
    all.addAll(List.of("--sessions", sessions.toString()));
    int status = line.execute(all.toArray(String[]::new));
    assertTrue(status == 0 || status == 3, out.toString());
    return out.toString();
  }

  private static void same(String what, String counted, int least) throws SQLException {
    List<List<Object>> reviewed = engine.rows("SELECT * FROM " + what + "_reviewed ORDER BY ALL");
    assertEquals(reviewed, engine.rows("SELECT * FROM " + what + "_worked_out ORDER BY ALL"));
    assertTrue(reviewed.size() >= least, "too few: " + reviewed.size());
    Object some = engine.rows("SELECT " + counted + " FROM " + what + "_reviewed").get(0).get(0);
    assertTrue(((Number) some).longValue() > 0, "never happened: " + counted);
  }

  @Test
  @DisplayName(
      "every step has the time at work, put aside, under its timer and whole of its review")
  void steps() throws SQLException {
    same(
        "steps", "least(" + happened("working", "aside", "timed", "reopened") + ")", 30 * SESSIONS);
  }

  @Test
  @DisplayName("every session has the whole time, at work, held and away of its review")
  void totals() throws SQLException {
    same("totals", "least(" + happened("working", "away") + ")", SESSIONS);
    assertTrue(
        (Long) engine.rows("SELECT count(*) FROM totals_reviewed WHERE held > 0").get(0).get(0)
            > 0);
  }

  private static String happened(String... columns) {
    return String.join(
        ", ",
        Arrays.stream(columns).map(c -> "count(*) FILTER (" + c + " > 0)").toArray(String[]::new));
  }

  @Test
  @DisplayName("every fastener has the seconds of its table")
  void fasteners() throws SQLException {
    same("fasteners", "least(" + happened("whole", "working", "aside") + ")", 2 * SESSIONS);
  }

  @Test
  @DisplayName("the comparison has the spread that a library of statistics gives")
  void compared() throws Exception {
    String last =
        (String)
            engine
                .rows(
                    "SELECT session FROM procedure_of WHERE session LIKE '%van%' ORDER BY began"
                        + " DESC")
                .get(0)
                .get(0);
    Map<String, List<String>> expected = expected(last);
    Map<String, List<String>> found = new TreeMap<>();
    String csv = run("compare", last, "--csv", "steps");
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(csv, format)) {
      for (CSVRecord row : parser) {
        if (!row.get("median_ms").isEmpty()) {
          List<String> values = new ArrayList<>();
          for (String column : List.of("median_ms", "q1_ms", "q3_ms")) {
            values.add(String.valueOf(Double.parseDouble(row.get(column))));
          }
          for (String column : List.of("least_ms", "most_ms", "sessions", "slow", "reopened")) {
            values.add(row.get(column));
          }
          found.put(row.get("step"), values);
        }
      }
    }
    assertEquals(expected, found);
    assertTrue(expected.size() > 20, csv);
  }

  private static Map<String, List<String>> expected(String last) throws SQLException {
    Map<String, List<List<Object>>> closed = new LinkedHashMap<>();
    List<List<Object>> earlier =
        engine.rows(
            "SELECT w.step, w.working, w.reopened FROM steps_worked_out w JOIN procedure_of p"
                + " ON p.session = w.session JOIN procedure_of l ON p.sha256 = l.sha256"
                + " AND p.began < l.began WHERE w.closed AND l.session = '"
                + last
                + "'");
    for (List<Object> row : earlier) {
      closed.computeIfAbsent((String) row.get(0), s -> new ArrayList<>()).add(row);
    }
    Map<String, List<String>> expected = new TreeMap<>();
    closed.forEach((step, all) -> expected.put(step, spread(all)));
    return expected;
  }

  private static List<String> spread(List<List<Object>> rows) {
    long[] times = rows.stream().mapToLong(row -> (Long) row.get(1)).sorted().toArray();
    double[] values = LongStream.of(times).asDoubleStream().toArray();
    Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
    double lower = percentile.evaluate(values, 25);
    double upper = percentile.evaluate(values, 75);
    double fence = upper + 1.5 * (upper - lower);
    return List.of(
        String.valueOf(percentile.evaluate(values, 50)),
        String.valueOf(lower),
        String.valueOf(upper),
        String.valueOf(times[0]),
        String.valueOf(times[times.length - 1]),
        String.valueOf(times.length),
        String.valueOf(LongStream.of(times).filter(t -> t > fence).count()),
        String.valueOf(rows.stream().mapToLong(row -> (Long) row.get(2)).sum()));
  }
}
