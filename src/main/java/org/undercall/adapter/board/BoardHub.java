package org.undercall.adapter.board;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.LongSupplier;
import org.undercall.core.board.Board;

/**
 * Keeps the newest state for everyone who shows it. To publish takes a moment however many wait and
 * however slow they are; who is slow misses states in between.
 */
public final class BoardHub {
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private final LongSupplier clock;
  private Optional<Shown> newest = Optional.empty();
  private long number;
  private boolean closed;

  /**
   * A hub with nothing to show.
   *
   * @param clock milliseconds of a clock that is never set
   */
  public BoardHub(LongSupplier clock) {
    this.clock = clock;
  }

  /** Makes this the newest state. */
  public void publish(Board board) {
    lock.lock();
    try {
      number++;
      newest = Optional.of(new Shown(number, board, clock.getAsLong()));
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  /** The newest state; empty before the first. */
  public Optional<Shown> newest() {
    lock.lock();
    try {
      return newest;
    } finally {
      lock.unlock();
    }
  }

  /**
   * Waits for a state newer than one seen.
   *
   * @param seen its number; 0 for none
   * @param millis how long to wait
   * @return empty if none came in that time, or none will come
   */
  public Optional<Shown> after(long seen, long millis) throws InterruptedException {
    long nanos = TimeUnit.MILLISECONDS.toNanos(millis);
    lock.lock();
    try {
      while (number <= seen && !closed && nanos > 0) {
        nanos = changed.awaitNanos(nanos);
      }
      return newest.filter(shown -> shown.number() > seen);
    } finally {
      lock.unlock();
    }
  }

  /** Publishes nothing more; nobody waits any longer. */
  public void close() {
    lock.lock();
    try {
      closed = true;
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  /** Whether nothing more will be published. */
  public boolean closed() {
    lock.lock();
    try {
      return closed;
    } finally {
      lock.unlock();
    }
  }

  /** A state with its number and its text, which is made once, when someone first asks for it. */
  public static final class Shown {
    private final long number;
    private final Board board;
    private final long at;
    private String json = "";

    Shown(long number, Board board, long at) {
      this.number = number;
      this.board = board;
      this.at = at;
    }

    /** From 1, without a gap. */
    public long number() {
      return number;
    }

    /** What it shows. */
    public Board board() {
      return board;
    }

    /** The time of the session's clock now, in milliseconds of the epoch. */
    long now(LongSupplier clock) {
      return board.times().now().toEpochMilli() + clock.getAsLong() - at;
    }

    /** Its JSON text, on one line. */
    synchronized String json() {
      if (json.isEmpty()) {
        json = BoardJson.of(board);
      }
      return json;
    }
  }
}
