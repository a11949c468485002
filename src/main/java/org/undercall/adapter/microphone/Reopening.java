package org.undercall.adapter.microphone;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import org.undercall.port.Fault;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.SoundCode;

/**
 * Tries every second to open a microphone again, each time on a thread of its own: opening may
 * hang. A try counts when the first frame has come. One thread asks.
 */
final class Reopening {
  private static final long EVERY_MILLIS = 1_000;

  /** A sound server may take some seconds to deliver the first sound. */
  private static final long LIMIT_MILLIS = 6_000;

  /** So many tries may hang at once; then no other is begun. */
  private static final int MOST_AT_ONCE = 3;

  private final SteadyFrames.Opener opener;
  private final Pace pace;
  private final AtomicInteger running = new AtomicInteger();
  private CompletableFuture<Opened> attempt;
  private long beganAt;
  private long nextAt;

  /** What was opened, and the first frame of its sound. */
  record Opened(Frames frames, Frame first) {}

  Reopening(SteadyFrames.Opener opener, Pace pace) {
    this.opener = opener;
    this.pace = pace;
    this.nextAt = pace.nowMillis() + EVERY_MILLIS;
  }

  /** The open microphone, if a try has succeeded; begins and ends tries. Never waits. */
  Optional<Opened> look() {
    long now = pace.nowMillis();
    if (attempt == null && now >= nextAt && running.get() < MOST_AT_ONCE) {
      begin(now);
    }
    if (attempt == null || !attempt.isDone()) {
      if (attempt != null && now - beganAt >= LIMIT_MILLIS) {
        end(now);
      }
      return Optional.empty();
    }
    if (attempt.isCompletedExceptionally()) {
      end(now);
      return Optional.empty();
    }
    return Optional.of(attempt.join());
  }

  /** Gives up; what a try opens from now on is closed by that try. */
  void stop() {
    if (attempt != null && !attempt.cancel(false) && !attempt.isCompletedExceptionally()) {
      attempt.join().frames().close();
    }
    attempt = null;
  }

  private void begin(long now) {
    beganAt = now;
    attempt = new CompletableFuture<>();
    CompletableFuture<Opened> mine = attempt;
    running.incrementAndGet();
    pace.aside(() -> attempt(mine));
  }

  private void end(long now) {
    attempt.cancel(false);
    attempt = null;
    nextAt = now + EVERY_MILLIS;
  }

  private void attempt(CompletableFuture<Opened> mine) {
    try {
      Opened opened = open();
      if (!mine.complete(opened)) {
        opened.frames().close();
      }
    } catch (Fault | RuntimeException e) {
      mine.completeExceptionally(e);
    } finally {
      running.decrementAndGet();
    }
  }

  private Opened open() throws Fault {
    Frames frames = opener.open();
    Optional<Frame> first = Optional.empty();
    try {
      first = frames.next();
    } finally {
      if (first.isEmpty()) {
        frames.close();
      }
    }
    return new Opened(
        frames,
        first.orElseThrow(
            () -> new Fault(SoundCode.MICROPHONE_LOST, "microphone", "gives no sound yet")));
  }
}
