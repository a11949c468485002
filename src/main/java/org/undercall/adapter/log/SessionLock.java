package org.undercall.adapter.log;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.undercall.port.Fault;

/** Keeps other programs from writing to a session: a lock on a file beside its log. */
final class SessionLock {
  private SessionLock() {}

  /**
   * Takes the lock of a log, or fails at once.
   *
   * @throws Fault LOG-003 if another program has it, LOG-001 if nothing can be written there
   */
  static FileChannel of(Path path) throws Fault {
    Path beside = path.resolveSibling(path.getFileName() + ".lock");
    FileChannel channel = null;
    try {
      channel = written(beside);
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return channel;
      }
    } catch (OverlappingFileLockException e) {
      // The same program has it: as good as another one.
    } catch (IOException e) {
      closeQuietly(channel);
      throw SessionLogFile.cannotRead(beside, e);
    }
    closeQuietly(channel);
    throw new Fault(
        LogCode.IN_USE,
        SessionLogFile.named(path),
        "a session that is open",
        "a session nobody works on");
  }

  /** A file open for writing, created if absent; a link is not followed out of the folder. */
  static FileChannel written(Path path) throws Fault {
    try {
      return FileChannel.open(
          path, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    } catch (NoSuchFileException e) {
      throw SessionLogFile.cannotRead(path, e);
    } catch (IOException e) {
      throw new Fault(
          LogCode.CANNOT_RECORD, SessionLogFile.named(path), e, "a folder that can be written");
    }
  }

  static void closeQuietly(FileChannel channel) {
    try {
      if (channel != null) {
        channel.close();
      }
    } catch (IOException e) {
      // Nothing was written through it.
    }
  }
}
