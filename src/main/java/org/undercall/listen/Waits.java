package org.undercall.listen;

import org.undercall.core.intent.Continuation;

/**
 * How long to wait after a whole phrase, in milliseconds, by what could follow it. {@link #NEVER}
 * leaves the phrase to the recogniser.
 *
 * @param whole without speech, if nothing could follow
 * @param unit without speech, if only a unit or decimals could
 * @param digit without speech, if a last digit could
 * @param value without speech, if a value or more words could
 * @param steady with unchanged words, whatever is heard, if nothing could follow, not even a denial
 * @param steadyUnit the same, if only a unit or decimals could
 */
public record Waits(int whole, int unit, int digit, int value, int steady, int steadyUnit) {
  /** Longer than any phrase. */
  public static final int NEVER = Integer.MAX_VALUE;

  /** The program's own; {@code docs/evidence/hearing.md} shows what others come to. */
  public static final Waits STANDARD = new Waits(180, 180, 420, 540, 420, 600);

  /** How long no speech must have been heard. */
  public int quiet(Continuation next) {
    return switch (next) {
      case NOTHING, DENIAL -> whole;
      case UNIT -> unit;
      case DIGIT -> digit;
      case MORE -> value;
      case NUMBER -> NEVER;
    };
  }

  /** How long the words must have been the same, in noise that is taken for speech. */
  public int same(Continuation next) {
    return switch (next) {
      case NOTHING -> steady;
      case UNIT -> steadyUnit;
      default -> NEVER;
    };
  }
}
