package org.undercall.text;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), which every Java has. */
public final class Sha256 {
  private static final MessageDigest FRESH = fresh();

  private Sha256() {}

  private static MessageDigest fresh() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** A new digest, to be fed piece by piece. */
  public static MessageDigest digest() {
    return copy(FRESH);
  }

  /** The same digest once more, fed with what this one was fed with up to now. */
  public static MessageDigest copy(MessageDigest digest) {
    try {
      return (MessageDigest) digest.clone();
    } catch (CloneNotSupportedException e) {
      throw new IllegalStateException("the SHA-256 of every Java can be copied", e);
    }
  }

  /** The sum of bytes: 32 bytes. */
  public static byte[] of(byte[] bytes) {
    return digest().digest(bytes);
  }

  /** The sum of bytes as 64 small hexadecimal digits. */
  public static String hex(byte[] bytes) {
    return HexFormat.of().formatHex(of(bytes));
  }
}
