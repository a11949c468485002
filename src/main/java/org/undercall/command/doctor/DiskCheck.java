package org.undercall.command.doctor;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.undercall.port.Fault;

/**
 * The disk under the folder of sessions: can be written, keeps what is forced to it, and has space.
 *
 * @param sessions the folder of sessions; it is not made if it is absent
 * @param disk does it
 */
record DiskCheck(Path sessions, Disk disk) implements Check {
  private static final long MB = 1 << 20;
  private static final long NEEDED = 10 * MB;
  private static final long ENOUGH = 300 * MB;
  private static final long SLOW_MILLIS = 250;
  private static final String ELSE = ", or name another folder: --sessions FOLDER";

  /** What a disk can do. */
  interface Disk {
    /** Forces a small file to the disk and removes it again; gives the milliseconds it took. */
    long force(Path folder) throws IOException;

    /** Bytes that are free for this user. */
    long free(Path folder) throws IOException;
  }

  static DiskCheck of(Path sessions) {
    return new DiskCheck(sessions, new RealDisk());
  }

  @Override
  public String name() {
    return "disk";
  }

  @Override
  public Found look() throws IOException {
    Path folder = existing();
    try {
      if (!Files.isDirectory(folder)) {
        throw new IOException(folder.getFileName() + " is a file");
      }
      long millis = disk.force(folder);
      return judged(millis, disk.free(folder));
    } catch (IOException e) {
      String why = Fault.reason(e);
      return Found.fault(
          DoctorCode.NOT_WRITABLE.line("\"" + sessions + "\": " + why, "a folder to write in"),
          "make it writable for you" + ELSE);
    }
  }

  private static Found judged(long millis, long free) {
    String found = "a decision is on it in " + millis + " ms, " + free / MB + " MB free";
    if (free < NEEDED) {
      return Found.fault(
          DoctorCode.LITTLE_SPACE.line(free / MB + " MB free", "10 MB or more"),
          "delete what is not needed" + ELSE);
    }
    if (free < ENOUGH) {
      return Found.note(
          DoctorCode.LITTLE_SPACE.line(free / MB + " MB free", "300 MB, with the voice's sound"),
          "delete what is not needed" + ELSE);
    }
    return millis > SLOW_MILLIS
        ? Found.note(
            DoctorCode.SLOW_DISK.line(millis + " ms", "at most 250 ms"),
            "every answer waits for it: use a disk in this machine" + ELSE)
        : Found.well(found);
  }

  /** The folder, or the nearest one above it that is there. */
  private Path existing() {
    Path folder = sessions.toAbsolutePath().normalize();
    while (Files.notExists(folder) && folder.getParent() != null) {
      folder = folder.getParent();
    }
    return folder;
  }

  private static final class RealDisk implements Disk {
    @Override
    public long force(Path folder) throws IOException {
      Path file = Files.createTempFile(folder, ".doctor", ".tmp");
      try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
        long began = System.nanoTime();
        channel.write(ByteBuffer.wrap(new byte[512]));
        channel.force(true);
        return (System.nanoTime() - began) / 1_000_000;
      } finally {
        Files.deleteIfExists(file);
      }
    }

    @Override
    public long free(Path folder) throws IOException {
      return Files.getFileStore(folder).getUsableSpace();
    }
  }
}
