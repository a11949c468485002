package org.undercall.adapter.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.duckdb.DuckDBDriver;

/** DuckDB with limits; it asks the network for nothing. */
final class Engine implements AutoCloseable {
  private final Connection connection;
  private final Path spill;

  private Engine(Connection connection, Path spill) {
    this.connection = connection;
    this.spill = spill;
  }

  /**
   * Opens the engine.
   *
   * @param file where its tables are kept; empty for memory
   * @throws SQLException if the file cannot be used
   * @throws IOException if there is no folder for temporary files
   * @throws FleetFault FLT-001 if its native library cannot be loaded
   */
  static Engine open(Optional<Path> file, Limits limits)
      throws SQLException, IOException, FleetFault {
    Path spill = Files.createTempDirectory("undercall-fleet");
    Properties options = new Properties();
    options.setProperty("memory_limit", limits.memoryMegabytes() + "MB");
    options.setProperty("threads", String.valueOf(limits.threads()));
    options.setProperty("preserve_insertion_order", "false");
    options.setProperty("autoinstall_known_extensions", "false");
    options.setProperty("autoload_known_extensions", "false");
    options.setProperty("temp_directory", spill.toString());
    String url = "jdbc:duckdb:" + file.map(Path::toString).orElse("");
    Engine engine = null;
    try {
      engine = new Engine(new DuckDBDriver().connect(url, options), spill);
      engine.run("CREATE OR REPLACE TEMP MACRO percentile(x, p) AS quantile_cont(x, p)");
      return engine;
    } catch (LinkageError e) {
      throw new FleetFault(
          FleetFault.Code.NO_ENGINE,
          "the engine for many sessions",
          "a native library that does not load (" + first(e) + ")",
          "Linux, macOS or Windows on x64, or Linux or macOS on ARM, and a folder for temporary"
              + " files that allows programs; name one with -Djava.io.tmpdir=FOLDER."
              + " review and verify work without it");
    } finally {
      if (engine == null) {
        clear(spill);
      }
    }
  }

  /** Each engine has a folder of its own: two that share one overwrite what the other put there. */
  private static void clear(Path spill) {
    try (Stream<Path> files = Files.walk(spill)) {
      for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      spill.toFile().deleteOnExit();
    }
  }

  private static String first(LinkageError e) {
    String message = String.valueOf(e.getCause() == null ? e.getMessage() : e.getCause());
    return message.lines().findFirst().orElse("");
  }

  void run(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  /** Runs every statement of a script, each ended by a semicolon. */
  void script(String sql) throws SQLException {
    for (String statement : SqlText.statements(sql)) {
      run(statement);
    }
  }

  /** What follows is kept together or not at all. */
  void begin() throws SQLException {
    connection.setAutoCommit(false);
  }

  void commit() throws SQLException {
    connection.commit();
    connection.setAutoCommit(true);
  }

  void rollback() throws SQLException {
    connection.rollback();
    connection.setAutoCommit(true);
  }

  void insert(String sql, List<List<Object>> rows) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (List<Object> row : rows) {
        set(statement, row.toArray());
        statement.addBatch();
      }
      if (!rows.isEmpty()) {
        statement.executeBatch();
      }
    }
  }

  Grid query(String sql, Object... values) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      set(statement, values);
      try (ResultSet result = statement.executeQuery()) {
        return grid(result);
      }
    }
  }

  private static void set(PreparedStatement statement, Object... values) throws SQLException {
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
  }

  private static Grid grid(ResultSet result) throws SQLException {
    ResultSetMetaData about = result.getMetaData();
    List<String> columns = new ArrayList<>();
    for (int i = 1; i <= about.getColumnCount(); i++) {
      columns.add(about.getColumnLabel(i));
    }
    List<List<Optional<Object>>> rows = new ArrayList<>();
    while (result.next()) {
      List<Optional<Object>> row = new ArrayList<>();
      for (int i = 1; i <= columns.size(); i++) {
        row.add(Optional.ofNullable(result.getObject(i)));
      }
      rows.add(List.copyOf(row));
    }
    return new Grid(columns, rows);
  }

  @Override
  public void close() throws SQLException {
    try {
      connection.close();
    } finally {
      clear(spill);
    }
  }
}
