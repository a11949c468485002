package org.undercall.listen;

import org.undercall.adapter.activity.Activities;
import org.undercall.adapter.activity.Activity;

/**
 * How an ear notices that somebody speaks and that a phrase is over.
 *
 * @param activity tells speech from other sound; the ear closes it
 * @param end ends phrases early
 */
public record Attention(Activity activity, EndOfSpeech end) {

  /** As the program listens: nothing is recognised in silence, phrases end early. */
  public static Attention standard() {
    return new Attention(Activities.best(), new QuickEnd(Waits.STANDARD));
  }

  /** All sound is recognised, and the recogniser alone tells where a phrase ends. */
  public static Attention byRecogniser() {
    return new Attention(Activity.always(), EndOfSpeech.byRecogniser());
  }
}
