package org.undercall.adapter.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The sessions of a folder in an index that follows the files: what was written since is read, what
 * is gone is forgotten. The index is a cache and may be deleted at any time.
 */
public final class Fleet implements AutoCloseable {
  /** The name of the index in the folder of sessions. */
  public static final String INDEX = "index.duckdb";

  private static final String VERSION = "1";
  private static final int BATCH = 500;
  private static final long BATCH_BYTES = 16L << 20;

  private final Engine engine;
  private final Examiner examiner;
  private final List<String> notices;
  private int read;

  /** Looks at a session line by line. */
  public interface Examiner {
    /** What is wrong with a session, with its code; empty if it is whole after all. */
    Optional<String> damage(String session);
  }

  private Fleet(Engine engine, Examiner examiner, List<String> notices) {
    this.engine = engine;
    this.examiner = examiner;
    this.notices = notices;
  }

  /**
   * Opens the sessions of a folder and brings the index up to date.
   *
   * @param folder the folder of sessions; absent, it has none
   * @param kept whether the index is kept in the folder
   * @param now the time to be written into a new index
   * @throws FleetFault if the engine does not work
   */
  public static Fleet open(Path folder, boolean kept, Limits limits, String now, Examiner examiner)
      throws FleetFault {
    List<String> notices = new ArrayList<>();
    boolean there = Files.isDirectory(folder);
    if (!there && Files.exists(folder)) {
      String name = String.valueOf(folder.getFileName());
      throw new FleetFault(FleetFault.Code.NO_FOLDER, name, "a file", "a folder of sessions");
    }
    Fleet fleet = null;
    try {
      fleet = new Fleet(engine(folder, kept && there, limits, notices), examiner, notices);
      fleet.refresh(there ? SessionFiles.in(folder) : List.of(), now);
      return fleet;
    } catch (SQLException | IOException e) {
      if (fleet != null) {
        fleet.close();
      }
      throw failed(e);
    }
  }

  private static Engine engine(Path folder, boolean kept, Limits limits, List<String> notices)
      throws SQLException, IOException, FleetFault {
    if (kept) {
      Path index = folder.resolve(INDEX);
      try {
        if (Files.isSymbolicLink(index)) {
          throw new SQLException("a link to another place");
        }
        Engine engine = Engine.open(Optional.of(index), limits);
        engine.script(SqlText.index());
        if (engine.query("SELECT 1 FROM made WHERE version <> ?", VERSION).size() == 0) {
          return engine;
        }
        engine.close();
        throw new SQLException("an index of another version");
      } catch (SQLException e) {
        notices.add(
            new FleetFault(
                    FleetFault.Code.NO_INDEX,
                    INDEX,
                    firstLine(e).replace(folder.toString(), ""),
                    "an index that can be opened; the logs were read anew."
                        + " If no other program has it open, delete it")
                .getMessage());
      }
    }
    Engine engine = Engine.open(Optional.empty(), limits);
    engine.script(SqlText.index());
    return engine;
  }

  private void refresh(List<SessionFiles> files, String now) throws SQLException {
    if (engine.query("SELECT 1 FROM made").size() == 0) {
      engine.insert("INSERT INTO made VALUES (?, ?)", List.of(List.of(VERSION, now)));
    }
    Map<String, String> known = new TreeMap<>();
    Grid indexed = engine.query("SELECT session, stamp FROM file_fact");
    for (int i = 0; i < indexed.size(); i++) {
      known.put(indexed.text(i, "session"), indexed.text(i, "stamp"));
    }
    Map<String, String> there =
        files.stream().collect(Collectors.toMap(SessionFiles::session, SessionFiles::stamp));
    List<SessionFiles> fresh =
        files.stream().filter(f -> !f.stamp().equals(known.get(f.session()))).toList();
    Batch batch = new Batch(engine);
    batch.prepare();
    batch.forget(known.keySet().stream().filter(s -> !known.get(s).equals(there.get(s))).toList());
    for (int i = 0; i < fresh.size(); ) {
      int end = end(fresh, i);
      read(batch, fresh.subList(i, end));
      i = end;
    }
    read = fresh.size();
  }

  /** How far the sessions go that are read together; logs are bounded by bytes, at least one is. */
  private static int end(List<SessionFiles> files, int first) {
    long bytes = 0;
    int end = first;
    while (end < files.size() && end - first < BATCH && (end == first || bytes < BATCH_BYTES)) {
      bytes += files.get(end).size();
      end++;
    }
    return end;
  }

  /** Reads sessions together, and one by one if the engine cannot take one of them. */
  private void read(Batch batch, List<SessionFiles> files) throws SQLException {
    for (SessionFiles file : files) {
      if (!file.trouble().isEmpty()) {
        unreadable(file, file.trouble());
      }
    }
    List<SessionFiles> sound = files.stream().filter(f -> f.trouble().isEmpty()).toList();
    try {
      add(batch, sound);
    } catch (SQLException e) {
      engine.rollback();
      for (SessionFiles file : sound) {
        try {
          add(batch, List.of(file));
        } catch (SQLException one) {
          engine.rollback();
          unreadable(file, firstLine(one));
        }
      }
    }
  }

  private void add(Batch batch, List<SessionFiles> files) throws SQLException {
    engine.begin();
    if (!files.isEmpty()) {
      for (String session : batch.read(files)) {
        Optional<String> damage = examiner.damage(session);
        if (damage.isPresent()) {
          batch.damaged(session, damage.get());
        }
      }
      batch.keep();
    }
    engine.commit();
  }

  private void unreadable(SessionFiles file, String found) throws SQLException {
    String damage =
        new FleetFault(
                FleetFault.Code.UNREADABLE_SESSION,
                "session " + file.session(),
                found,
                "a session that can be read")
            .getMessage();
    String shown = examiner.damage(file.session()).orElse(damage);
    engine.insert(
        "INSERT INTO file_fact VALUES (?, ?, NULL, ?)",
        List.of(List.of(file.session(), file.stamp(), shown)));
  }

  /** Answers a question about the sessions. */
  public Grid query(String sql, Object... values) throws FleetFault {
    try {
      return engine.query(sql, values);
    } catch (SQLException e) {
      throw failed(e);
    }
  }

  /** Makes the views of the comparison, with these sessions as the measure. */
  public void measureBy(List<String> sessions) throws FleetFault {
    try {
      engine.run("CREATE OR REPLACE TEMP TABLE base (session VARCHAR)");
      engine.insert(
          "INSERT INTO base VALUES (?)", sessions.stream().map(s -> List.<Object>of(s)).toList());
      engine.script(SqlText.compare());
    } catch (SQLException e) {
      throw failed(e);
    }
  }

  /** How many sessions were read anew. */
  public int read() {
    return read;
  }

  /** When the index was begun. */
  public String made() throws FleetFault {
    return query("SELECT made_at FROM made").text(0, "made_at");
  }

  /** What went other than usual, a coded line each. */
  public List<String> notices() {
    return List.copyOf(notices);
  }

  private static FleetFault failed(Exception e) {
    return new FleetFault(
        FleetFault.Code.ENGINE_FAILED,
        "the engine for many sessions",
        firstLine(e),
        "an answer; with too little memory, give --memory more");
  }

  private static String firstLine(Exception e) {
    String message = String.valueOf(e.getMessage());
    return message.lines().findFirst().orElse("").strip();
  }

  @Override
  public void close() throws FleetFault {
    try {
      engine.close();
    } catch (SQLException e) {
      throw failed(e);
    }
  }
}
