package org.undercall.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.log.SessionFolder;

@DisplayName("SQL on the index, by an engine of one's own, gives the rows of the program:")
class SqlAgreesTest {
  private static final String SUBJECT =
      "(SELECT max(session) FROM session_fact WHERE state <> 'damaged')";

  @TempDir static Path folder;
  private static Duck duck;

  @BeforeAll
  static void make() throws Exception {
    MakeSessions.make(120, folder, 11);
    Path log = SessionFolder.all(folder).get(7).log();
    Files.writeString(log, Files.readString(log).replaceFirst("\"said\":\".", "\"said\":\"#"));
    Program.run(folder, "sessions");
    duck = Duck.of(folder);
  }

  @AfterAll
  static void close() throws Exception {
    duck.close();
  }

  private static void base(String condition) throws Exception {
    duck.script(
        "CREATE OR REPLACE TEMP VIEW base AS SELECT session FROM session_fact WHERE " + condition,
        folder);
  }

  private static List<List<String>> program(String... words) throws Exception {
    List<List<String>> rows = new ArrayList<>();
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(Program.run(folder, words), format)) {
      parser.forEach(record -> rows.add(record.toList()));
    }
    assertTrue(!rows.isEmpty(), "no rows");
    return rows;
  }

  private static List<List<String>> sql(String query) throws Exception {
    return duck.rows(query).stream()
        .map(row -> row.stream().map(v -> v == null ? "" : v.toString()).toList())
        .toList();
  }

  @Test
  @DisplayName("the list of sessions")
  void list() throws Exception {
    assertEquals(
        program("sessions", "--csv"),
        sql(
            "SELECT session, state, title, revision, vehicle, first_at, last_at,"
                + " CASE WHEN state <> 'damaged' THEN working_ms END, events,"
                + " (SELECT string_agg(CASE WHEN d.kind = 'before-driving' AND d.what = 'handed over'"
                + " THEN 'BEFORE DRIVING ' ELSE '' END || d.step || ': ' || d.what || ' ' || d.detail,"
                + " '; ' ORDER BY d.kind <> 'before-driving', d.step, d.what)"
                + " FROM due_fact d WHERE d.session = f.session), damage, occasion, verdict"
                + " FROM session_fact f ORDER BY state = 'damaged', first_ms DESC, session DESC"));
  }

  @ParameterizedTest(name = "{0} of all sessions of a procedure")
  @CsvSource(
      delimiter = ':',
      value = {
        "steps: step, NULL, median_ms, q1_ms, q3_ms, least_ms, most_ms, sessions, slow, reopened,"
            + " '' FROM compared_steps ORDER BY place, step",
        "sides: step, left_median_ms, right_median_ms, sessions, right_longer"
            + " FROM compared_side_spread ORDER BY step",
        "refusals: times, sessions, step, what FROM compared_refusals"
            + " ORDER BY times DESC, step, what",
        "phrases: times, sessions, heard, what FROM compared_phrases"
            + " ORDER BY times DESC, heard, what"
      })
  void all(String table, String query) throws Exception {
    String title = (String) duck.rows("SELECT max(title) FROM session_fact").get(0).get(0);
    base("state <> 'damaged' AND title = '" + title + "'");
    assertEquals(program("compare", "--procedure", title, "--csv", table), sql("SELECT " + query));
  }

  @ParameterizedTest(name = "{0} of the last session against earlier ones")
  @CsvSource(
      delimiter = ':',
      value = {
        "steps: coalesce(c.step, s.step) AS step, s.working_ms, c.median_ms, c.q1_ms, c.q3_ms,"
            + " c.least_ms, c.most_ms, coalesce(c.sessions, 0), c.slow, c.reopened, CASE WHEN"
            + " c.sessions >= 5 AND s.working_ms > c.q3_ms + 1.5 * (c.q3_ms - c.q1_ms) THEN 'slow'"
            + " ELSE '' END FROM compared_steps c FULL JOIN (SELECT * FROM step_fact WHERE"
            + " session = SUBJECT AND state = 'closed') s ON s.step = c.step"
            + " ORDER BY coalesce(c.place, s.begun), 1",
        "sides: split_part(l.step, '/', 1), l.working_ms, r.working_ms, (SELECT coalesce(sum(n), 0)"
            + " FROM refusal_fact f WHERE f.session = l.session AND f.step = l.step), (SELECT"
            + " coalesce(sum(n), 0) FROM refusal_fact f WHERE f.session = r.session AND f.step ="
            + " r.step), l.state, r.state FROM step_fact l JOIN step_fact r ON r.session ="
            + " l.session AND r.step = split_part(l.step, '/', 1) || '/right' WHERE l.session ="
            + " SUBJECT AND l.step LIKE '%/left' ORDER BY l.begun",
        "values: split_part(l.step, '/', 1), l.what, l.value, r.value FROM value_fact l JOIN"
            + " value_fact r ON r.session = l.session AND r.what = l.what AND r.step ="
            + " split_part(l.step, '/', 1) || '/right' WHERE l.session = SUBJECT AND l.step LIKE"
            + " '%/left' ORDER BY 1, 2"
      })
  void last(String table, String query) throws Exception {
    base(
        "first_ms < (SELECT first_ms FROM session_fact WHERE session = "
            + SUBJECT
            + ") AND state <> 'damaged' AND sha256 = (SELECT sha256 FROM session_fact"
            + " WHERE session = "
            + SUBJECT
            + ")");
    assertEquals(
        program("compare", "last", "--csv", table),
        sql("SELECT " + query.replace("SUBJECT", SUBJECT)));
  }
}
