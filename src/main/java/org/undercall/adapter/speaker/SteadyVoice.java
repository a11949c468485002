package org.undercall.adapter.speaker;

import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.undercall.core.reply.Tell;
import org.undercall.port.Signal;
import org.undercall.port.UncheckedFault;
import org.undercall.port.Voice;

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
  private final Consumer<SpeakerNews> news;
  private final LongSupplier nowMillis;
  private boolean failing;
  private String missed = "";
  private long retryAt;

  /**
   * Two voices.
   *
   * @param news is told when the first starts to fail, and when it works again
   */
  public SteadyVoice(Voice first, Voice second, Consumer<SpeakerNews> news) {
    this(first, second, news, () -> System.nanoTime() / 1_000_000);
  }

  SteadyVoice(Voice first, Voice second, Consumer<SpeakerNews> news, LongSupplier nowMillis) {
    this.first = first;
    this.second = second;
    this.news = news;
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
  public void hold() {
    first.hold();
    second.hold();
  }

  @Override
  public void goOn() {
    first.goOn();
    second.goOn();
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
    } catch (UncheckedFault e) {
      if (!failing) {
        news.accept(new SpeakerNews(false, e.getMessage()));
      }
      failing = true;
      missed = words;
      long now = nowMillis.getAsLong();
      retryAt = now + Math.max(RETRY_MILLIS, TIMES_AS_LONG * (now - began));
      return false;
    }
    if (failing) {
      news.accept(new SpeakerNews(true, Tell.speakerBack().text()));
    }
    failing = false;
    return true;
  }
}
