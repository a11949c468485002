package org.undercall.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Locale;

/** Makes and compares what nobody may guess. */
public final class Secrets {
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int BYTES = 24;
  private static final int HALF = 10_000;

  private Secrets() {}

  /** A word of 192 random bits, in letters that may stand in a cookie. */
  public static String word() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** Eight random digits, in two groups of four. */
  public static String code() {
    return String.format(Locale.ROOT, "%04d %04d", RANDOM.nextInt(HALF), RANDOM.nextInt(HALF));
  }

  /** Whether two texts are equal, in a time that does not tell where they differ. */
  public static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }
}
