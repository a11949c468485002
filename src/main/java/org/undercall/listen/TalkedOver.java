package org.undercall.listen;

/**
 * Tells when somebody talks over the voice, and when he has ended. What is left of the voice itself
 * in the sound is no talk: how loud that is against what was played is learned while the voice
 * speaks.
 */
final class TalkedOver {
  /** What the voice is to do. */
  enum Turn {
    /** Somebody talks: fall silent. */
    HOLD,
    /** Nobody talks any more: go on. */
    GO_ON,
    /** As before. */
    NOTHING
  }

  /** So much talk holds the voice: not a cough. */
  private static final int LEAST_MILLIS = 90;

  /** After so much quiet no phrase comes any more. */
  private static final int QUIET_MILLIS = 1_000;

  /** However long somebody talks, the voice goes on after this. */
  private static final int MOST_MILLIS = 8_000;

  /** A reply is held so often at most, so that in lasting chatter it is said in the end. */
  private static final int MOST_HOLDS = 2;

  /** Talk is so far above what is mostly left of the voice, in decibels. */
  private static final double ABOVE = 8;

  /** What is left of the voice at first: nothing was taken out. */
  private static final double FIRST_LEFT = -10;

  /** What is left is below this in so many of the frames. */
  private static final double SHARE = 0.8;

  /** How far one frame moves it, in decibels. */
  private static final double STEP = 0.6;

  /** How fast the loudest sound fades out of a room, in decibels a millisecond. */
  private static final double FADING = 0.02;

  private static final double SILENCE = -90;

  private double left = FIRST_LEFT;
  private double loudest = SILENCE;
  private double talk;
  private int talkedMillis;
  private int quietMillis;
  private int heldMillis;
  private int holds;
  private boolean held;

  /** The loudspeaker is given sound as loud as this, in decibels of full scale. */
  synchronized void plays(double level) {
    loudest = Math.max(loudest, level);
  }

  /** A reply begins. */
  synchronized void replies() {
    holds = 0;
  }

  /** What was said was understood, or cannot have been: the voice needs not be held for it. */
  synchronized void answered() {
    held = false;
    talkedMillis = 0;
  }

  /**
   * Takes a frame of what is left of the sound.
   *
   * @param speech whether it sounds like speech
   * @param level how loud it is, in decibels of full scale
   * @param over whether the voice sounds meanwhile
   */
  synchronized Turn take(int millis, boolean speech, double level, boolean over) {
    loudest = Math.max(SILENCE, loudest - FADING * millis);
    return held ? holding(millis, speech) : speaking(millis, speech, level, over);
  }

  private Turn speaking(int millis, boolean speech, double level, boolean over) {
    if (!over || loudest <= SILENCE) {
      talkedMillis = 0;
      return Turn.NOTHING;
    }
    double against = level - loudest;
    boolean talks = speech && against >= left + ABOVE;
    left += against > left ? SHARE * STEP : (SHARE - 1) * STEP;
    talkedMillis = talks ? talkedMillis + millis : Math.max(0, talkedMillis - millis);
    if (talkedMillis < LEAST_MILLIS || holds == MOST_HOLDS) {
      return Turn.NOTHING;
    }
    talk = against;
    held = true;
    holds++;
    quietMillis = 0;
    heldMillis = 0;
    return Turn.HOLD;
  }

  private Turn holding(int millis, boolean speech) {
    quietMillis = speech ? 0 : quietMillis + millis;
    heldMillis += millis;
    if (quietMillis < QUIET_MILLIS && heldMillis < MOST_MILLIS) {
      return Turn.NOTHING;
    }
    answered();
    // No phrase came of it: it may have been the voice.
    left = Math.max(left, talk);
    return Turn.GO_ON;
  }
}
