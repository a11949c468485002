package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.undercall.core.event.Recorded;

/** Writes whole sessions at once, byte for byte as the program does line by line. */
public final class WrittenLog {
  private WrittenLog() {}

  /** Writes log, checksum and procedure into a new folder, without waiting for the disk. */
  public static void write(Path folder, byte[] procedure, List<Recorded> decisions)
      throws IOException {
    Files.createDirectories(folder);
    ByteArrayOutputStream log = new ByteArrayOutputStream();
    RunningSum sum = new RunningSum();
    String last = LogLine.FIRST;
    for (Recorded decision : decisions) {
      LogLine.Sealed line = LogLine.write(decision, last);
      log.write(line.bytes());
      sum.add(line.bytes());
      last = line.sum();
    }
    Files.write(folder.resolve("log.jsonl"), log.toByteArray());
    Files.write(folder.resolve("log.jsonl.sha256"), SumFile.text(sum).getBytes(UTF_8));
    Files.write(folder.resolve("procedure.json"), procedure);
  }
}
