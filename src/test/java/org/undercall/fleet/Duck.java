package org.undercall.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.duckdb.DuckDBDriver;

/** DuckDB beside the program, as a user has it. */
final class Duck implements AutoCloseable {
  private static final Path SQL = Path.of("src", "fleet", "sql");

  private final Connection connection;

  Duck() throws SQLException {
    Properties options = new Properties();
    options.setProperty("threads", "1");
    connection = new DuckDBDriver().connect("jdbc:duckdb:", options);
  }

  /** The facts and the comparison of the index in a folder of sessions, as tables. */
  static Duck of(Path sessions) throws SQLException, IOException {
    Duck duck = new Duck();
    for (String file : List.of("index-duckdb.sql", "facts.sql", "compare.sql")) {
      duck.script(Files.readString(SQL.resolve(file)), sessions);
    }
    return duck;
  }

  /** Runs the statements of a script, in which FOLDER stands for a folder. */
  void script(String sql, Path folder) throws SQLException {
    String plain = sql.replaceAll("(?m)^\\s*--.*$", "");
    String place = folder.toString().replace('\\', '/').replace("'", "''");
    try (Statement statement = connection.createStatement()) {
      for (String one : plain.replace("FOLDER", place).split(";", -1)) {
        if (!one.isBlank()) {
          statement.execute(one);
        }
      }
    }
  }

  List<List<Object>> rows(String sql) throws SQLException {
    List<List<Object>> rows = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet result = statement.executeQuery(sql)) {
      while (result.next()) {
        List<Object> row = new ArrayList<>();
        for (int i = 1; i <= result.getMetaData().getColumnCount(); i++) {
          row.add(result.getObject(i));
        }
        rows.add(row);
      }
    }
    return rows;
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
