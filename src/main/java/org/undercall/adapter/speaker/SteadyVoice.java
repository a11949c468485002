package org.undercall.adapter.speaker;

import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.undercall.core.reply.Tell;
import org.undercall.port.Signal;
import org.undercall.port.Voice;
import org.undercall.sound.SpeakerException;

/**
 * A voice that goes on when the speaker fails: what the first voice cannot say, the second says.
 * The first is tried again each time, and when asked to retry.
 */
public final class SteadyVoice implements Voice {
  private static final long RETRY_MILLIS = 1_000;

  /** A try that hung for long is repeated after this many times as long. */
  private static final int TIMES_AS_LONG = 10;

  private final Voice first;
  private final Voice second;
  private final Consumer<String> trouble;
  private final LongSupplier nowMillis;
  private boolean failing;
  private String missed = "";
  private long retryAt;

  /**
   * Two voices.
   *
   * @param trouble gets the message when the first starts to fail, and a line when it works again
   */
  public SteadyVoice(Voice first, Voice second, Consumer<String> trouble) {
    this(first, second, trouble, () -> System.nanoTime() / 1_000_000);
  }

  SteadyVoice(Voice first, Voice second, Consumer<String> trouble, LongSupplier nowMillis) {
    this.first = first;
    this.second = second;
    this.trouble = trouble;
    this.nowMillis = nowMillis;
  }

  @Override
  public void say(String words) {
    if (!tried(words)) {
      second.say(words);
    }
  }

  @Override
  public void stop() {
    first.stop();
    second.stop();
  }

  @Override
  public void signal(Signal signal) {
    first.signal(signal);
  }

  @Override
  public boolean retry() {
    return failing && nowMillis.getAsLong() >= retryAt && tried(missed);
  }

  @Override
  public void close() {
    first.close();
    second.close();
  }

  private boolean tried(String words) {
    long began = nowMillis.getAsLong();
    try {
      first.say(words);
    } catch (SpeakerException e) {
      if (!failing) {
        trouble.accept(e.getMessage());
      }
      failing = true;
      missed = words;
      long now = nowMillis.getAsLong();
      retryAt = now + Math.max(RETRY_MILLIS, TIMES_AS_LONG * (now - began));
      return false;
    }
    if (failing) {
      trouble.accept(Tell.speakerBack().text());
    }
    failing = false;
    return true;
  }
}
