package org.undercall.core.intent;

import java.util.List;

/**
 * How sure the program must be of a phrase it has heard twice: the poorer the sound, the surer.
 *
 * <p>Found by measuring real people's values in noise and over a narrow band: with these limits,
 * what is heard as another value becomes rare, and is asked again instead.
 *
 * @param decibels how far the speech stands above the noise
 * @param narrow whether the sound holds next to nothing above 4.5 kHz, as over some headsets
 */
public record Certainty(double decibels, boolean narrow) {
  private static final double QUIET = 30;
  private static final double NOISY = 20;

  /**
   * For two digits without a unit or a word about them: chatter sounds like that now and then. For
   * "seven three eight" and its like: so does "seventy eight".
   */
  private static final double ALIKE = 0.99;

  /** A lead that no denial, spoken in quiet or noise, was measured to reach by far. */
  static final double BEYOND_DOUBT = 5.5;

  /** Whether there is noise; over a narrow band alone, denials are told as well as otherwise. */
  public boolean poor() {
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
   * The least share of the likelihood, from 0 to 1.
   *
   * @param digits whether a number was said digit by digit, which is heard more safely
   */
  public double needed(boolean digits) {
    if (decibels < NOISY || !digits) {
      return 0.9;
    }
    return narrow || decibels < QUIET ? 0.85 : 0.7;
  }

  /**
   * A choice's share as a confidence: what is just enough comes out as the least confidence that
   * counts.
   *
   * @param least from 0 to 1
   */
  public double confidence(Meanings.Choice choice, double least) {
    double needed = isAlike(choice) ? ALIKE : needed(choice.digits());
    double share = choice.share();
    return share < needed
        ? least * share / needed
        : least + (1 - least) * (share - needed) / (1 - needed);
  }

  private static boolean isAlike(Meanings.Choice choice) {
    if (!choice.digits()) {
      return false;
    }
    List<Integer> digits =
        choice.words().stream().map(w -> NumberWords.digit(w.text())).filter(d -> d >= 0).toList();
    return choice.words().size() == 2
        || (digits.size() == 3 && digits.get(0) >= 4 && digits.get(1) == 3);
  }
}
