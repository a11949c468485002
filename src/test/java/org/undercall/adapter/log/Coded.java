package org.undercall.adapter.log;

import java.util.regex.Pattern;

/** What every message to a user must have: a code first, and one line of bounded length. */
public final class Coded {
  private static final int LONGEST = 4_000;
  private static final Pattern CODE = Pattern.compile("[A-Z]{3}-[0-9]{3} ");

  private Coded() {}

  /** Fails unless a message begins with or, after its file and place, holds a code of that part. */
  public static void requireCode(String part, String message) {
    boolean coded = CODE.matcher(message).find() && message.contains(part + "-");
    if (!coded || message.length() > LONGEST || message.indexOf('\n') >= 0) {
      throw new AssertionError("no short line with a code: " + message.length() + " " + message);
    }
  }
}
