package org.undercall.adapter.fleet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.undercall.port.Fault;

/**
 * The sessions of a folder in an index that follows the files: what was written since is read, what
 * is gone is forgotten. The index is a cache and may be deleted at any time.
 *
 * <p>It is a file of JSON Lines, an {@link IndexRow} each in the order of their names, that takes
 * the place of the one before it in one step.
 */
public final class Fleet implements AutoCloseable {
  /** The name of the index in the folder of sessions. */
  public static final String INDEX = "index.jsonl";

  /** So many sessions are looked at together; no more of what they come to is in the memory. */
  private static final int BATCH = 128;

  private static final OpenOption[] NEW = {
    StandardOpenOption.CREATE,
    StandardOpenOption.WRITE,
    StandardOpenOption.TRUNCATE_EXISTING,
    LinkOption.NOFOLLOW_LINKS
  };

  private final Examiner examiner;
  private final List<String> notices = new ArrayList<>();
  private final Map<String, String> known = new HashMap<>();
  private Path file;
  private String made;
  private boolean passing;
  private int read;

  private Fleet(Examiner examiner, Path file, String now) {
    this.examiner = examiner;
    this.file = file;
    this.made = now;
  }

  /**
   * Opens the sessions of a folder and brings the index up to date.
   *
   * @param folder the folder of sessions; absent, it has none
   * @param kept whether the index is kept in the folder
   * @param now the time to be written into a new index
   * @throws Fault FLT-007 if it is no folder, FLT-003 if it cannot be read
   */
  public static Fleet open(Path folder, boolean kept, String now, Examiner examiner) throws Fault {
    boolean there = Files.isDirectory(folder);
    if (!there && Files.exists(folder)) {
      String name = String.valueOf(folder.getFileName());
      throw new Fault(FleetCode.NO_FOLDER, name, "a file", "a folder of sessions");
    }
    Fleet fleet = new Fleet(examiner, folder.resolve(INDEX), now);
    try {
      List<SessionFiles> files = there ? SessionFiles.in(folder) : List.of();
      if (kept && there) {
        fleet.follow(files);
      } else {
        fleet.writePassing(files);
      }
      return fleet;
    } catch (IOException e) {
      fleet.close();
      throw failed(e);
    }
  }

  private void follow(List<SessionFiles> files) throws IOException {
    try {
      if (Files.isSymbolicLink(file)) {
        throw new IOException("a link to another place");
      }
      if (Files.exists(file)) {
        learn();
      }
      if (!upToDate(files)) {
        replace(files);
      }
    } catch (IOException e) {
      notice(e);
      known.clear();
      writePassing(files);
    }
  }

  private void replace(List<SessionFiles> files) throws IOException {
    Path fresh = file.resolveSibling(INDEX + "." + ProcessHandle.current().pid() + ".new");
    try {
      write(files, fresh);
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private void notice(IOException e) {
    notices.add(
        new Fault(
                FleetCode.NO_INDEX,
                INDEX,
                Fault.reason(e),
                "an index that can be read and written; the logs were read anew."
                    + " It may be deleted")
            .getMessage());
  }

  private boolean upToDate(List<SessionFiles> files) {
    return Files.exists(file)
        && files.size() == known.size()
        && files.stream().noneMatch(this::isFresh);
  }

  private boolean isFresh(SessionFiles files) {
    return !files.stamp().equals(known.get(files.session()));
  }

  /** Which sessions the index has; one of another version has none, and is made anew. */
  private void learn() throws IOException {
    try (var lines = Files.newBufferedReader(file, UTF_8)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        IndexRow.Head head = IndexRow.Head.of(line);
        if (head.version() == IndexRow.VERSION) {
          known.put(head.session(), head.stamp());
          made = head.made();
        }
      }
    }
  }

  private void writePassing(List<SessionFiles> files) throws IOException {
    file = Files.createTempFile("undercall-index", ".jsonl");
    passing = true;
    write(files, file);
  }

  private void write(List<SessionFiles> files, Path to) throws IOException {
    read = 0;
    // Half a pair, which an old log may hold, becomes a question mark: no text keeps others out.
    try (Writer out =
            new BufferedWriter(new OutputStreamWriter(Files.newOutputStream(to, NEW), UTF_8));
        Rows old = known.isEmpty() ? Rows.none() : new Rows(file)) {
      for (int i = 0; i < files.size(); i += BATCH) {
        List<SessionFiles> batch = files.subList(i, Math.min(files.size(), i + BATCH));
        Map<String, String> fresh =
            batch.parallelStream()
                .filter(this::isFresh)
                .collect(Collectors.toMap(SessionFiles::session, f -> row(f).line()));
        for (SessionFiles one : batch) {
          String line = fresh.get(one.session());
          out.append(line == null ? old.of(one.session()) : line).append('\n');
        }
        read += fresh.size();
      }
    }
  }

  private IndexRow row(SessionFiles files) {
    return IndexRow.of(files, examiner.examine(files.session()), made);
  }

  /** Goes through the sessions, in the order of their names. */
  public void each(Consumer<IndexRow> taker) throws Fault {
    try (var lines = Files.newBufferedReader(file, UTF_8)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        taker.accept(IndexRow.of(line));
      }
    } catch (IOException e) {
      throw failed(e);
    }
  }

  /** How many sessions were read anew. */
  public int read() {
    return read;
  }

  /** When the index was begun. */
  public String made() {
    return made;
  }

  /** What went other than usual, a coded line each. */
  public List<String> notices() {
    return List.copyOf(notices);
  }

  private static Fault failed(IOException e) {
    return new Fault(FleetCode.NOT_READ, "the sessions", e, "a folder that can be read");
  }

  @Override
  public void close() throws Fault {
    try {
      if (passing) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw failed(e);
    }
  }
}
