package org.undercall.listen;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * Hears with all words of the language, while the sound comes in, what the ear hears with its list.
 * That takes several times as long, so a thread of its own does it, and is done soon after the
 * phrase is.
 *
 * <p>The ear's thread calls it.
 */
final class FreeHearing implements AutoCloseable {
  /** Frames that may wait, 9 s; who brings more has to wait. */
  private static final int MOST_WAITING = 300;

  private static final int BYTES_PER_SAMPLE = 2;

  /** Silence before and after, without which a word gets lost: 0.4 s. */
  private static final byte[] SILENCE = new byte[BYTES_PER_SAMPLE * Frames.RATE * 4 / 10];

  private final RecogniserMaker maker;
  private final BlockingQueue<Runnable> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
  private final ThreadPoolExecutor thread =
      new ThreadPoolExecutor(
          1, 1, 0, TimeUnit.SECONDS, waiting, FreeHearing::daemon, FreeHearing::waitToAdd);
  private final List<RecognisedPhrase.Word> words = new ArrayList<>();
  private Recogniser recogniser;
  private boolean active;

  /** Hears nothing yet; the maker is not closed. */
  FreeHearing(RecogniserMaker maker) {
    this.maker = maker;
  }

  /** Begins with sound that starts at a sample of the source. */
  void begin(long firstSample) {
    active = true;
    double lead = (double) SILENCE.length / BYTES_PER_SAMPLE / Frames.RATE;
    later(
        () -> {
          recogniser = maker.free((double) firstSample / Frames.RATE - lead);
          return hear(SILENCE, SILENCE.length);
        });
  }

  /** Takes a frame, if it has begun. */
  void take(Frame frame) {
    if (active) {
      later(() -> hear(frame.sound(), BYTES_PER_SAMPLE * frame.samples()));
    }
  }

  /**
   * A phrase is over: what was heard since the one before.
   *
   * @return without words if none was heard, or it has not begun
   */
  Future<RecognisedPhrase> phrase() {
    if (!active) {
      return CompletableFuture.completedFuture(Hearing.NONE);
    }
    return later(
        () -> {
          hear(SILENCE, SILENCE.length);
          words.addAll(recogniser.finalResult().words());
          RecognisedPhrase phrase = new RecognisedPhrase(words);
          words.clear();
          return phrase;
        });
  }

  /** Forgets what was heard until it begins again. */
  void end() {
    if (active) {
      active = false;
      later(
          () -> {
            words.clear();
            recogniser.close();
            recogniser = null;
            return true;
          });
    }
  }

  /** Waits for what was heard. */
  static RecognisedPhrase await(Future<RecognisedPhrase> phrase) {
    try {
      return phrase.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    end();
    thread.shutdown();
  }

  private boolean hear(byte[] sound, int length) {
    boolean over = recogniser.accept(sound, length);
    if (over) {
      words.addAll(recogniser.result().words());
    }
    return over;
  }

  private <T> Future<T> later(Callable<T> task) {
    return thread.submit(task);
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "free-hearing");
    thread.setDaemon(true);
    return thread;
  }

  private static void waitToAdd(Runnable task, ThreadPoolExecutor thread) {
    try {
      thread.getQueue().put(task);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
