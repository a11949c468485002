package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The file {@code log.jsonl.sha256} beside a log: the SHA-256 of the whole log in the format of
 * {@code sha256sum}, after a comment with the count of its lines and bytes.
 *
 * <p>It shows what the chain of sums cannot: whole lines cut off the end.
 */
final class SumFile {
  private static final Pattern COMMENT =
      Pattern.compile("^# ([0-9]{1,15}) lines?, ([0-9]{1,18}) bytes?$", Pattern.MULTILINE);
  private static final Pattern SUM =
      Pattern.compile("^([0-9a-f]{64}) [ *]log\\.jsonl$", Pattern.MULTILINE);
  private static final int LONGEST = 4096;

  private SumFile() {}

  /**
   * What a sum file says.
   *
   * @param sha256 of the log it was made for, in lower-case hex
   * @param lines how many lines that log had; 0 if it is not said
   * @param bytes how many bytes that log had; 0 if it is not said
   */
  record Said(String sha256, long lines, long bytes) {}

  static Path beside(Path log) {
    return log.resolveSibling(log.getFileName() + ".sha256");
  }

  static String text(RunningSum sum) {
    return "# " + sum.lines() + " lines, " + sum.bytes() + " bytes\n" + sum.hex() + "  log.jsonl\n";
  }

  /** What the file says; empty if it has another form. */
  static Optional<Said> parse(String text) {
    Matcher sum = SUM.matcher(text);
    if (!sum.find()) {
      return Optional.empty();
    }
    Matcher comment = COMMENT.matcher(text);
    return Optional.of(
        comment.find()
            ? new Said(sum.group(1), number(comment.group(1)), number(comment.group(2)))
            : new Said(sum.group(1), 0, 0));
  }

  private static long number(String digits) {
    return Long.parseLong(digits);
  }

  /** The text of the file; empty if there is none. */
  static Optional<String> read(Path file) throws IOException {
    if (Files.notExists(file)) {
      return Optional.empty();
    }
    try (var in = Files.newInputStream(file)) {
      return Optional.of(new String(in.readNBytes(LONGEST), UTF_8));
    }
  }

  /** Puts a new text in the place of the old one; a crash leaves one of the two, whole. */
  static void replace(Path file, String text) throws IOException {
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try (FileChannel channel =
        FileChannel.open(
            fresh,
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            StandardOpenOption.TRUNCATE_EXISTING,
            LinkOption.NOFOLLOW_LINKS)) {
      LogChannel all = LogChannel.of(channel);
      all.write(text.getBytes(UTF_8), 0);
      all.force();
    }
    Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }
}
