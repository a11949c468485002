package org.undercall.adapter.board;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import org.undercall.port.Heard;

/**
 * Hands over one press at a time, from any thread to the one that owns the session. A press is
 * taken once or not at all, and who made it learns which.
 */
public final class PressSlot {
  /** What became of a press. */
  public enum Fate {
    /** The session has it. */
    TAKEN,
    /** The session had moved on. */
    STALE,
    /** Another press waits. */
    BUSY,
    /** The session did not take it in time; it was withdrawn. */
    WITHDRAWN,
    /** There is no session any more. */
    CLOSED
  }

  /** A press that waits, known by its identity. */
  private static final class Waiting {
    private final Press press;
    private final CompletableFuture<Fate> fate = new CompletableFuture<>();

    Waiting(Press press) {
      this.press = press;
    }
  }

  private static final Waiting NO_MORE = new Waiting(new Press(-1, "", Heard.How.PRESSED));

  private final AtomicReference<Waiting> slot = new AtomicReference<>();

  /** An empty slot. */
  public PressSlot() {}

  /**
   * Puts a press here and waits until it is taken.
   *
   * @param patienceMillis after which it is withdrawn
   */
  public Fate put(Press press, long patienceMillis) {
    Waiting mine = new Waiting(press);
    Waiting other = slot.compareAndExchange(null, mine);
    if (other != null) {
      return other == NO_MORE ? Fate.CLOSED : Fate.BUSY;
    }
    try {
      return mine.fate.get(patienceMillis, TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      return withdraw(mine);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return withdraw(mine);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a fate is never a fault", e);
    }
  }

  /** Takes back what was not taken; what was, has its fate at once. */
  private Fate withdraw(Waiting mine) {
    return slot.compareAndSet(mine, null) ? Fate.WITHDRAWN : mine.fate.join();
  }

  /**
   * Takes the press that waits, if it was made for this state. One made for another state is gone.
   *
   * @param state the number of the session's state now
   */
  public Optional<Press> take(long state) {
    Waiting waiting = slot.get();
    if (waiting == null || waiting == NO_MORE || !slot.compareAndSet(waiting, null)) {
      return Optional.empty();
    }
    boolean fits = waiting.press.state() == state;
    waiting.fate.complete(fits ? Fate.TAKEN : Fate.STALE);
    return Optional.of(waiting.press).filter(press -> fits);
  }

  /** Takes no more presses; one that waits is told so. */
  public void close() {
    Waiting waiting = slot.getAndSet(NO_MORE);
    if (waiting != null) {
      waiting.fate.complete(Fate.CLOSED);
    }
  }
}
