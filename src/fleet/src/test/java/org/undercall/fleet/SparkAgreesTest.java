package org.undercall.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Apache Spark SQL in local mode and DuckDB give the same rows from the index")
class SparkAgreesTest {
  private static final Path SESSIONS = Path.of(System.getProperty("fleet.sessions"));
  private static final Path SQL = Path.of(System.getProperty("fleet.sql"));

  private static Connection duck;
  private static SparkSession spark;
  private static int sessions;
  private static long rows;
  private static long duckNanos;
  private static long sparkNanos;

  @BeforeAll
  static void read() throws Exception {
    try (var lines = Files.lines(SESSIONS.resolve("index.jsonl"))) {
      sessions = (int) lines.count();
    }
    duck = DriverManager.getConnection("jdbc:duckdb:");
    spark =
        SparkSession.builder()
            .master("local[2]")
            .appName("fleet")
            .config("spark.ui.enabled", "false")
            .config("spark.sql.shuffle.partitions", "4")
            .config("spark.sql.session.timeZone", "UTC")
            .config("spark.sql.warehouse.dir", "target/fleet/warehouse")
            .getOrCreate();
    spark.sparkContext().setLogLevel("ERROR");
    for (String file : List.of("index-%s.sql", "facts.sql", "compare.sql")) {
      for (String statement : statements(file.replace("%s", "duckdb"))) {
        try (Statement one = duck.createStatement()) {
          one.execute(statement);
        }
      }
      statements(file.replace("%s", "spark")).forEach(spark::sql);
    }
  }

  private static List<String> statements(String file) throws IOException {
    String folder = SESSIONS.toAbsolutePath().normalize().toString();
    String script =
        Files.readString(SQL.resolve(file))
            .replaceAll("(?m)^\\s*--.*$", "")
            .replace("FOLDER", folder);
    return List.of(script.split(";", -1)).stream().filter(one -> !one.isBlank()).toList();
  }

  @AfterAll
  static void end() throws SQLException, IOException {
    String figures =
        String.format(
            Locale.ROOT,
            "fleet: %,d sessions, %,d rows equal; DuckDB %.1f s, Spark %.1f s%n",
            sessions,
            rows,
            duckNanos / 1e9,
            sparkNanos / 1e9);
    System.out.print(figures);
    Files.writeString(SESSIONS.resolveSibling("figures.txt"), figures);
    spark.stop();
    duck.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "session_fact",
        "step_fact",
        "refusal_fact",
        "misheard_fact",
        "value_fact",
        "due_fact",
        "compared_steps",
        "compared_refusals",
        "compared_phrases",
        "compared_sides",
        "compared_side_spread"
      })
  @DisplayName("in")
  void same(String table) throws SQLException {
    long start = System.nanoTime();
    List<String> mine = duckRows(table);
    duckNanos += System.nanoTime() - start;
    start = System.nanoTime();
    List<Row> theirs = spark.table(table).collectAsList();
    sparkNanos += System.nanoTime() - start;
    assertTrue(mine.size() > 0, "there are rows");
    assertEquals(mine, theirs.stream().map(row -> told(values(row))).sorted().toList());
    if (table.equals("session_fact")) {
      assertEquals(sessions, theirs.size());
    }
    rows += theirs.size();
  }

  private static List<String> duckRows(String table) throws SQLException {
    List<String> found = new ArrayList<>();
    String columns = String.join(", ", spark.table(table).columns());
    try (Statement statement = duck.createStatement();
        ResultSet result = statement.executeQuery("SELECT " + columns + " FROM " + table)) {
      while (result.next()) {
        List<Object> row = new ArrayList<>();
        for (int i = 1; i <= result.getMetaData().getColumnCount(); i++) {
          row.add(result.getObject(i));
        }
        found.add(told(row));
      }
    }
    return found.stream().sorted().toList();
  }

  private static List<Object> values(Row row) {
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      values.add(row.get(i));
    }
    return values;
  }

  /** Whole numbers as such, whatever their type; decimals with all their digits. */
  private static String told(List<Object> values) {
    return values.stream()
        .map(
            value ->
                value instanceof Double d && d == Math.rint(d)
                    ? Long.toString(d.longValue())
                    : String.valueOf(value))
        .collect(Collectors.joining(" | "));
  }
}
