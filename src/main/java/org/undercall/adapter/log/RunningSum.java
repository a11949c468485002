package org.undercall.adapter.log;

import java.security.MessageDigest;
import java.util.HexFormat;
import org.undercall.text.Sha256;

/** The SHA-256 of a log that grows line by line, known after every line. */
final class RunningSum {
  private final MessageDigest digest = Sha256.digest();
  private long lines;
  private long bytes;

  /** Takes in one more line, with its line feed. */
  void add(byte[] line) {
    add(line, 0, line.length, 1);
  }

  /** Takes in lines that lie between two places of some bytes. */
  void add(byte[] log, int start, int end, long count) {
    digest.update(log, start, end - start);
    lines += count;
    bytes += end - start;
  }

  /** Lines taken in. */
  long lines() {
    return lines;
  }

  /** Bytes taken in. */
  long bytes() {
    return bytes;
  }

  /** The sum of all lines taken in, in lower-case hex; more lines may follow. */
  String hex() {
    return HexFormat.of().formatHex(Sha256.copy(digest).digest());
  }
}
