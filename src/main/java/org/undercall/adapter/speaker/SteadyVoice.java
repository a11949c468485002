package org.undercall.adapter.speaker;

import java.util.function.Consumer;
import org.undercall.Voice;

/**
 * A voice that goes on when the speaker fails: what the first voice cannot say, the second says.
 * The first is tried again each time.
 */
public final class SteadyVoice implements Voice {
  private final Voice first;
  private final Voice second;
  private final Consumer<String> trouble;
  private boolean failing;

  /**
   * Two voices.
   *
   * @param trouble gets the message when the first starts to fail, and once only until it works
   */
  public SteadyVoice(Voice first, Voice second, Consumer<String> trouble) {
    this.first = first;
    this.second = second;
    this.trouble = trouble;
  }

  @Override
  public void say(String words) {
    try {
      first.say(words);
      failing = false;
    } catch (SpeakerException e) {
      if (!failing) {
        trouble.accept(e.getMessage());
      }
      failing = true;
      second.say(words);
    }
  }

  @Override
  public void close() {
    first.close();
    second.close();
  }
}
