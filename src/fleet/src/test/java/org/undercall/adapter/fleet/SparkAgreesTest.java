package org.undercall.adapter.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Apache Spark SQL in local mode and the embedded engine give the same rows")
class SparkAgreesTest {
  private static final Path SESSIONS = Path.of(System.getProperty("fleet.sessions"));

  /** The facts that the index keeps. */
  private static final List<String> FACTS = Batch.facts();

  private static Fleet fleet;
  private static SparkSession spark;
  private static int sessions;
  private static long rows;
  private static long duckNanos;
  private static long sparkNanos;

  @BeforeAll
  static void read() throws Exception {
    long start = System.nanoTime();
    fleet = Fleet.open(SESSIONS, false, new Limits(512, 2), "now", session -> Optional.empty());
    List<String> names = new ArrayList<>();
    Grid all = fleet.query("SELECT session FROM session_fact ORDER BY session");
    for (int i = 0; i < all.size(); i++) {
      names.add(all.text(i, "session"));
    }
    sessions = names.size();
    fleet.measureBy(names);
    duckNanos = System.nanoTime() - start;
    start = System.nanoTime();
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
    script(
        resource("read-spark.sql")
            .replace("FOLDER", SESSIONS.toAbsolutePath().normalize().toString()));
    spark.table("line").persist().createOrReplaceTempView("line");
    spark.table("event").persist().createOrReplaceTempView("event");
    script(SqlText.derive());
    for (String fact : FACTS) {
      spark.table(fact + "_row").persist().createOrReplaceTempView(fact + "_fact");
    }
    spark.sql("SELECT session FROM session_fact").createOrReplaceTempView("base");
    script(SqlText.compare());
  }

  @AfterAll
  static void end() throws FleetFault, IOException {
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
    fleet.close();
  }

  private static void script(String sql) {
    SqlText.statements(sql).forEach(spark::sql);
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = SqlText.class.getResourceAsStream("/org/undercall/fleet/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
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
  void same(String table) throws FleetFault {
    Grid mine = fleet.query("SELECT * FROM " + table);
    long start = System.nanoTime();
    List<Row> theirs = spark.table(table).collectAsList();
    sparkNanos += System.nanoTime() - start;
    List<String> columns = Arrays.asList(spark.table(table).columns());
    assertEquals(mine.columns(), columns, "columns");
    assertTrue(mine.size() > 0, "there are rows");
    assertEquals(
        mine.rows().stream().map(row -> told(row.stream().map(v -> v.orElse(null)))).sorted().toList(),
        theirs.stream().map(row -> told(values(row))).sorted().toList());
    rows += theirs.size();
  }

  private static Stream<Object> values(Row row) {
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      values.add(row.get(i));
    }
    return values.stream();
  }

  /** Whole numbers as such, whatever their type; decimals with all their digits. */
  private static String told(Stream<Object> values) {
    return values
        .map(
            value ->
                value instanceof Double d && d == Math.rint(d)
                    ? Long.toString(d.longValue())
                    : String.valueOf(value))
        .collect(Collectors.joining(" | "));
  }
}
