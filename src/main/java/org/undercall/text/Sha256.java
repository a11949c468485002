package org.undercall.text;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), which every Java has. */
public final class Sha256 {
  private Sha256() {}

  /** A new digest, to be fed piece by piece. */
  public static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
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
