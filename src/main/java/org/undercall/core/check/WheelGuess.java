package org.undercall.core.check;

import java.util.regex.Pattern;
import org.undercall.core.procedure.Fastener;

/** Whether a fastener holds a wheel, and how that is known. */
enum WheelGuess {
  STATED,
  /** Three or more with "wheel" in their name: a session takes them so as well. */
  BY_NAME,
  /** Three or more with another word for it; a session does not take them so. */
  BY_OTHER_WORDS,
  NONE;

  private static final Pattern LUG =
      Pattern.compile("\\b(lug|lugs|lug ?nuts?|lug ?bolts?|rim|rims|road ?wheels?)\\b");
  private static final Pattern STUD = Pattern.compile("\\b(studs?|stud ?nuts?)\\b");
  private static final int FEWEST = 3;

  /** Of a fastener. */
  static WheelGuess of(Fastener fastener) {
    if (fastener.joint().wheel()) {
      return STATED;
    }
    if (fastener.holdsWheel()) {
      return BY_NAME;
    }
    String name = fastener.name().toLowerCase(java.util.Locale.ROOT).replace('-', ' ');
    boolean several = fastener.set().count() >= FEWEST;
    return several && (LUG.matcher(name).find() || studs(fastener, name)) ? BY_OTHER_WORDS : NONE;
  }

  /** Studs are of many parts: those that say nothing else and have the thread of a wheel. */
  private static boolean studs(Fastener fastener, String name) {
    boolean bare =
        STUD.matcher(name)
            .replaceAll("")
            .replaceAll("\\b(nuts?|left|right|front|rear)\\b", "")
            .isBlank();
    boolean thread = fastener.thread().startsWith("M12") || fastener.thread().startsWith("M14");
    return bare && thread && STUD.matcher(name).find();
  }

  /** Whether it is taken to hold a wheel. */
  boolean wheel() {
    return this != NONE;
  }

  /** What is found, and that it is a guess if it is one. */
  String told(String found, Fastener fastener) {
    return this == STATED
        ? found
        : found + ", a wheel guessed from the name \"" + fastener.name() + '"';
  }
}
