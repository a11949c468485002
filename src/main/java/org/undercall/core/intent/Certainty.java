package org.undercall.core.intent;

/** How sure the program must be of a phrase it has heard twice. */
public final class Certainty {
  /** Below this the sound is poor, in decibels from the quiet parts to the loud ones. */
  private static final double NOISY = 20;

  /**
   * How the log-odds that a number is right follow from those of its share of the likelihood, found
   * by logistic regression over real people's values in quiet, in noise and over a narrow band: the
   * share alone says nearly all, however the sound is. {@code docs/evidence/hearing.md} shows how
   * true it is for people it was not found with.
   */
  private static final double SLOPE = 0.78;

  private static final double OFFSET = -0.6;

  /**
   * The same where a number was not heard as one at first: "take six seven". The regression gave
   * -1, on few; this is on the safe side.
   */
  private static final double BADLY = -1.5;

  /** The least probability that a number is right; on average it is far more often. */
  private static final double LEAST_PROBABILITY = 0.9;

  /** The least share of a phrase without a number. */
  private static final double LEAST_SHARE = 0.9;

  /** A lead that no denial, spoken in quiet or noise, was measured to reach by far. */
  static final double BEYOND_DOUBT = 5.5;

  private Certainty() {}

  /**
   * Whether there is noise; over a narrow band alone, denials are told as well as otherwise.
   *
   * @param decibels how far the speech stands above the noise
   */
  public static boolean isPoor(double decibels) {
    return decibels < NOISY;
  }

  /**
   * How far a phrase that closes must lead what it could be mistaken for. Measured: spoken denials
   * came to 3.6 at most, but for one of 572 that came to 4.5 in noise.
   *
   * @param poor whether the sound is
   * @param witness what the same sound says when it is heard freely
   * @return natural logarithm of a ratio of likelihoods
   */
  static double lead(boolean poor, Witness.Says witness) {
    return switch (witness) {
      case THE_SAME -> poor ? 4.2 : 3;
      case NOTHING -> poor ? 4.7 : 4;
      case OTHERWISE -> poor ? Double.POSITIVE_INFINITY : 4;
    };
  }

  /**
   * A choice's certainty as a confidence: what is just enough comes out as the least confidence
   * that counts.
   *
   * @param first as heard at first
   * @param least from 0 to 1
   */
  public static double confidence(Meanings.Choice choice, RecognisedPhrase first, double least) {
    return choice.number()
        ? scaled(probability(choice, first), LEAST_PROBABILITY, least)
        : scaled(choice.share(), LEAST_SHARE, least);
  }

  /** How likely a number is right, from 0 to 1. */
  static double probability(Meanings.Choice choice, RecognisedPhrase first) {
    double odds = Math.log(choice.share() / (1 - choice.share()));
    boolean well = Meanings.isOfNumber(first.known());
    return 1 / (1 + Math.exp(-(SLOPE * odds + (well ? OFFSET : BADLY))));
  }

  private static double scaled(double certainty, double needed, double least) {
    return certainty < needed
        ? least * certainty / needed
        : least + (1 - least) * (certainty - needed) / (1 - needed);
  }
}
