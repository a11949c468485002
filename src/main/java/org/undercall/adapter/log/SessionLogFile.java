package org.undercall.adapter.log;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.term.LogTrouble;
import org.undercall.port.Fault;

/**
 * The log of a session, open for appending: JSON Lines in UTF-8, one line for each decision.
 *
 * <p>While it is open, a lock on the file {@code <name>.lock} beside it keeps other programs from
 * appending; reading stays possible. One thread uses it. The chain of sums shows every change to a
 * line and every line lost before the last one; the file {@code <name>.sha256} beside it, kept
 * after each line, shows whole lines cut off the end.
 */
public final class SessionLogFile implements AutoCloseable {
  private final String name;
  private final LogChannel file;
  private final FileChannel lockFile;
  private final Optional<String> dropped;
  private final List<Recorded> decisions;
  private final SumKeeper sum;
  private Optional<SumState> odd = Optional.empty();
  private long end;
  private String last;

  SessionLogFile(
      String name, LogChannel file, FileChannel lockFile, LogContent content, SumKeeper sum) {
    this.sum = sum;
    this.name = name;
    this.file = file;
    this.lockFile = lockFile;
    this.dropped = content.dropped();
    this.decisions = new ArrayList<>(content.decisions());
    this.end = content.end();
    this.last = content.last();
  }

  /**
   * Opens a log for appending and reads what it holds; an absent file is created.
   *
   * @throws Fault LOG-001 if nothing can be written there, LOG-003 if another program has it open,
   *     LOG-002 if it cannot be read
   */
  public static SessionLogFile open(Path path) throws Fault {
    FileChannel lockFile = SessionLock.of(path);
    try {
      boolean fresh = Files.notExists(path);
      FileChannel file = SessionLock.written(path);
      if (fresh) {
        SessionFolder.forceNames(path.toAbsolutePath().getParent());
      }
      try {
        return opened(path, file, lockFile);
      } catch (Fault | IOException e) {
        file.close();
        throw e;
      }
    } catch (IOException e) {
      SessionLock.closeQuietly(lockFile);
      throw cannotRead(path, e);
    } catch (Fault e) {
      SessionLock.closeQuietly(lockFile);
      throw e;
    }
  }

  private static SessionLogFile opened(Path path, FileChannel file, FileChannel lockFile)
      throws Fault, IOException {
    byte[] bytes = Files.readAllBytes(path);
    LogContent content = LogContent.of(bytes, named(path));
    Path beside = SumFile.beside(path);
    byte[] whole = java.util.Arrays.copyOf(bytes, (int) content.end());
    SumState state = SumState.of(whole, SumFile.read(beside));
    SumKeeper keeper = new SumKeeper(state.sum(), text -> SumFile.replace(beside, text));
    SessionLogFile log =
        new SessionLogFile(named(path), LogChannel.of(file), lockFile, content, keeper);
    if (state.usual()) {
      keeper.repair();
    } else {
      log.odd = Optional.of(state);
    }
    return log;
  }

  /** Reads a log without locking or changing it. */
  public static LogContent read(Path path) throws Fault {
    return LogContent.of(bytes(path), named(path));
  }

  /**
   * The bytes of a log or a file beside it.
   *
   * @throws Fault if it cannot be read
   */
  public static byte[] bytes(Path path) throws Fault {
    try {
      return Files.readAllBytes(path);
    } catch (IOException e) {
      throw cannotRead(path, e);
    }
  }

  /** Every decision on disk, in order; it grows with {@link #append}. */
  public List<Recorded> decisions() {
    return Collections.unmodifiableList(decisions);
  }

  /** The text of a torn last line found when the log was opened; the next append cuts it off. */
  public Optional<String> dropped() {
    return dropped;
  }

  /**
   * What was wrong with the log as a whole when it was opened; the next append hides it, so what is
   * appended next must say it.
   */
  public Optional<LogTrouble> trouble() {
    return odd.map(
        state ->
            switch (state.kind()) {
              case CUT -> LogTrouble.LINES_GONE;
              case OTHER -> LogTrouble.SUM_DIFFERS;
              default -> LogTrouble.SUM_MISSING;
            });
  }

  /** How many lines were gone when it was opened, as far as is known. */
  public int gone() {
    return odd.map(state -> (int) Math.min(Integer.MAX_VALUE, state.gone())).orElse(0);
  }

  /** Why the sum file could not be written last; empty if it is up to date. */
  public Optional<String> sumTrouble() {
    return sum.trouble();
  }

  /**
   * Puts a decision on the disk. When this returns, it is there; when it throws, the log is as it
   * was before, and the decision may be tried again.
   *
   * @throws Fault with {@code LOG-001} if it could not be recorded
   * @throws IllegalArgumentException if the decision does not have the next number
   */
  public void append(Recorded decision) throws Fault {
    if (decision.seq() != decisions.size() + 1L) {
      throw new IllegalArgumentException(
          "decision " + decision.seq() + " after " + decisions.size());
    }
    LogLine.Sealed line = LogLine.write(decision, last);
    byte[] bytes = line.bytes();
    try {
      file.cut(end);
      file.write(bytes, end);
      file.force();
    } catch (IOException e) {
      throw cannotRecord(decision, e);
    }
    end += bytes.length;
    last = line.sum();
    decisions.add(decision);
    sum.appended(bytes);
  }

  private Fault cannotRecord(Recorded decision, IOException cause) {
    String cut = "the log ends with the last whole line";
    try {
      file.cut(end);
      file.force();
    } catch (IOException e) {
      cause.addSuppressed(e);
      cut = "the log may end with a torn line, which is dropped when it is opened again";
    }
    return new Fault(
        LogCode.CANNOT_RECORD,
        name + " decision " + decision.seq(),
        Fault.reason(cause) + "; " + cut,
        "a disk that takes it");
  }

  @Override
  public void close() throws Fault {
    try (lockFile) {
      file.close();
    } catch (IOException e) {
      throw new Fault(LogCode.CANNOT_RECORD, name, e, "a log that can be closed");
    }
  }

  static Fault cannotRead(Path path, IOException cause) {
    return new Fault(LogCode.CANNOT_READ, named(path), cause, "a readable file");
  }

  /** The folder and the file, as a user knows them. */
  static String named(Path path) {
    Path folder = path.toAbsolutePath().getParent();
    String file = String.valueOf(path.getFileName());
    return folder == null || folder.getFileName() == null
        ? file
        : folder.getFileName() + "/" + file;
  }
}
