package org.undercall.adapter.speaker;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.SpeakerCode;

/**
 * A line that never holds its caller up for long: all is done on a thread that is left behind when
 * the sound system hangs. After that a new line is opened on a new thread.
 */
final class GuardedLine implements SoundLine {
  private final Supplier<SoundLine> lines;
  private final long limitMillis;
  private volatile Worker worker;

  /** A line and the thread that uses it. */
  private record Worker(SoundLine line, ExecutorService thread) {
    static Worker of(SoundLine line) {
      return new Worker(line, Executors.newSingleThreadExecutor(GuardedLine::daemon));
    }
  }

  /**
   * A guarded line.
   *
   * @param lines makes the lines that are guarded
   * @param limitMillis how long one call may take
   */
  GuardedLine(Supplier<SoundLine> lines, long limitMillis) {
    this.lines = lines;
    this.limitMillis = limitMillis;
  }

  @Override
  public void open(int rate) {
    close();
    worker = Worker.of(lines.get());
    call(
        line -> {
          line.open(rate);
          return 0;
        });
  }

  @Override
  public int write(byte[] bytes, int offset, int length) {
    return call(line -> line.write(bytes, offset, length));
  }

  @Override
  public void drain() {
    call(
        line -> {
          line.drain();
          return 0;
        });
  }

  @Override
  public void resume() {
    call(
        line -> {
          line.resume();
          return 0;
        });
  }

  /** {@inheritDoc} It does not queue behind a write, and waits half a second at most. */
  @Override
  public void silence() {
    Worker now = worker;
    if (now == null) {
      return;
    }
    Thread aside = daemon(now.line()::silence);
    aside.start();
    try {
      aside.join(500);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    Worker now = worker;
    worker = null;
    if (now != null) {
      now.line().close();
      now.thread().shutdown();
    }
  }

  private interface Act {
    int on(SoundLine line);
  }

  private int call(Act act) {
    Worker now = worker;
    if (now == null) {
      throw new UncheckedFault(SpeakerCode.DEVICE_GONE, "the sound device is not open");
    }
    Callable<Integer> task = () -> act.on(now.line());
    Future<Integer> answer = now.thread().submit(task);
    try {
      return answer.get(limitMillis, TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      close();
      throw new UncheckedFault(
          SpeakerCode.DEVICE_GONE,
          "the sound device does not answer for " + limitMillis + " ms",
          e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UncheckedFault(SpeakerCode.DEVICE_GONE, "interrupted while speaking", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof UncheckedFault known) {
        throw known;
      }
      throw new UncheckedFault(
          SpeakerCode.DEVICE_GONE, "the sound device fails: " + e.getCause(), e);
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "speaker");
    thread.setDaemon(true);
    return thread;
  }
}
