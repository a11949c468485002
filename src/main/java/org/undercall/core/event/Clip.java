package org.undercall.core.event;

import java.util.regex.Pattern;

/**
 * The sound of what was heard, as the log names it. The log holds the hash, not the sound: the file
 * may be deleted and the log stays whole.
 *
 * @param file its name in the session's folder of clips: the number of the decision in at least six
 *     digits, then {@code .flac} or {@code .wav}
 * @param sha256 SHA-256 of the file's bytes, 64 lower-case hex digits
 */
public record Clip(String file, String sha256) {
  /** The form of the name, in words. */
  public static final String FILE_FORM = "six or more digits, then .flac or .wav";

  /** The form of the hash, in words. */
  public static final String HASH_FORM = "64 lower-case hex digits";

  private static final Pattern FILE = Pattern.compile("[0-9]{6,18}\\.(flac|wav)");
  private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

  public Clip {
    if (!isFile(file) || !isHash(sha256)) {
      throw new IllegalArgumentException("no clip: " + file + " " + sha256);
    }
  }

  /** Whether a text is the name of a clip; no such name leads out of its folder. */
  public static boolean isFile(String text) {
    return FILE.matcher(text).matches();
  }

  /** Whether a text is a hash. */
  public static boolean isHash(String text) {
    return HASH.matcher(text).matches();
  }
}
