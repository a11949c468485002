package org.undercall.adapter.fleet;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.event.EventKind;

/** Reads the logs of some sessions into the index. */
final class Batch {
  private static final List<String> FACTS =
      List.of("session", "step", "refusal", "misheard", "value", "due");

  private final Engine engine;

  Batch(Engine engine) {
    this.engine = engine;
  }

  /** The tables that hold something about sessions. */
  static List<String> facts() {
    return FACTS;
  }

  /** Tells the engine which events this version knows. */
  void prepare() throws SQLException {
    String ids =
        Arrays.stream(EventKind.values())
            .map(kind -> "('" + kind.id() + "')")
            .collect(Collectors.joining(", "));
    engine.run("CREATE OR REPLACE TEMP TABLE known AS SELECT col0 AS id FROM (VALUES " + ids + ")");
    engine.run(
        "CREATE OR REPLACE TEMP TABLE batch (path VARCHAR, session VARCHAR, size BIGINT, stamp"
            + " VARCHAR, sum_path VARCHAR, procedure_path VARCHAR, said_bytes BIGINT,"
            + " procedure_sha256 VARCHAR, vehicle VARCHAR)");
    engine.run("CREATE OR REPLACE TEMP TABLE damaged (session VARCHAR, damage VARCHAR)");
  }

  /** Reads the lines of the logs; sessions that may be damaged are given back by name. */
  List<String> read(List<SessionFiles> files) throws SQLException {
    engine.run("DELETE FROM batch");
    engine.run("DELETE FROM damaged");
    engine.insert(
        "INSERT INTO batch VALUES (?, ?, ?, ?, ?, ?, NULL, NULL, NULL)",
        files.stream().map(Batch::row).toList());
    beside(files);
    String paths = list(files.stream().map(SessionFiles::log).toList());
    engine.script(
        SqlText.readWithDuckDb()
            .replace("FROM read_ndjson_objects(PATHS", "FROM read_ndjson_objects(" + paths));
    Grid suspects = engine.query("SELECT session FROM suspect ORDER BY session");
    return suspects.rows().stream().map(row -> row.get(0).orElseThrow().toString()).toList();
  }

  private static List<Object> row(SessionFiles f) {
    return List.of(
        f.log().toString(),
        f.session(),
        f.size(),
        f.stamp(),
        f.sum().toString(),
        f.procedure().toString());
  }

  /** What the checksum file counts, and the hash and the vehicle of the procedure. */
  private void beside(List<SessionFiles> files) throws SQLException {
    List<Path> sums = files.stream().filter(SessionFiles::hasSum).map(SessionFiles::sum).toList();
    if (!sums.isEmpty()) {
      engine.run(
          "UPDATE batch SET said_bytes = coalesce(TRY_CAST(regexp_extract(r.content,"
              + " '# [0-9]+ lines?, ([0-9]+) bytes?', 1) AS BIGINT), 0)"
              + " FROM (SELECT filename, decode(content) AS content FROM read_blob("
              + list(sums)
              + ") WHERE size < 4096) r WHERE r.filename = batch.sum_path");
    }
    engine.run(
        "UPDATE batch SET procedure_sha256 = r.hash, vehicle = r.vehicle FROM (SELECT filename,"
            + " sha256(content) AS hash,"
            + " TRY(json_extract_string(decode(content), '$.vehicle')) AS vehicle FROM read_blob("
            + list(files.stream().map(SessionFiles::procedure).toList())
            + ")) r WHERE r.filename = batch.procedure_path");
  }

  /** The vehicle of a procedure that the engine cannot read. */
  void vehicle(String session, Optional<String> vehicle) throws SQLException {
    if (vehicle.isPresent()) {
      engine.insert(
          "UPDATE batch SET vehicle = ? WHERE session = ?",
          List.of(List.of(vehicle.get(), session)));
    }
  }

  /** A damaged session keeps its place in the list, but nothing is computed from it. */
  void damaged(String session, String damage) throws SQLException {
    engine.insert("INSERT INTO damaged VALUES (?, ?)", List.of(List.of(session, damage)));
  }

  /** Computes the facts of what was read and keeps them. */
  void keep() throws SQLException {
    engine.run(
        "INSERT INTO session_fact SELECT session, max(title), max(revision), max(sha256), '', NULL,"
            + " '', NULL, NULL, count(*), NULL, NULL, NULL, 'damaged' FROM event"
            + " WHERE session IN (SELECT session FROM damaged) GROUP BY session");
    engine.run("DELETE FROM line WHERE session IN (SELECT session FROM damaged) OR seq IS NULL");
    engine.run("DELETE FROM event WHERE session IN (SELECT session FROM damaged)");
    engine.script(SqlText.derive().replace("TEMP VIEW", "TEMP TABLE"));
    for (String fact : FACTS) {
      engine.run("INSERT INTO " + fact + "_fact SELECT * FROM " + fact + "_row");
    }
    engine.run(
        "INSERT INTO file_fact SELECT b.session, b.stamp, b.vehicle, d.damage FROM batch b"
            + " LEFT JOIN damaged d ON d.session = b.session");
  }

  /** Takes sessions out of the index. */
  void forget(List<String> sessions) throws SQLException {
    engine.run("CREATE OR REPLACE TEMP TABLE gone (session VARCHAR)");
    engine.insert(
        "INSERT INTO gone VALUES (?)", sessions.stream().map(s -> List.<Object>of(s)).toList());
    for (String fact : FACTS) {
      engine.run("DELETE FROM " + fact + "_fact WHERE session IN (SELECT session FROM gone)");
    }
    engine.run("DELETE FROM file_fact WHERE session IN (SELECT session FROM gone)");
  }

  /** A list of paths for the engine; signs that would stand for other names are taken literally. */
  private static String list(List<Path> paths) {
    return paths.stream()
        .map(p -> "'" + p.toString().replaceAll("[\\[*?]", "[$0]").replace("'", "''") + "'")
        .collect(Collectors.joining(", ", "[", "]"));
  }
}
