package org.undercall.listen;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.UncheckedFault;

/** An ear that is made on another thread while the first words are being spoken. */
public final class LazyEar implements Ear {
  private final FutureTask<Ear> making;

  private LazyEar(FutureTask<Ear> making) {
    this.making = making;
  }

  /** Starts to make an ear; a fault in the making comes out of the first use. */
  public static LazyEar start(Callable<Ear> maker) {
    FutureTask<Ear> making = new FutureTask<>(maker);
    Thread thread = new Thread(making, "ear");
    thread.setDaemon(true);
    thread.start();
    return new LazyEar(making);
  }

  @Override
  public Optional<RecognisedPhrase> next(Set<IntentKind> allowed, long patienceMillis)
      throws EndOfInput {
    return ear().next(allowed, patienceMillis);
  }

  @Override
  public Optional<SoundLevels> levels() {
    return ear().levels();
  }

  @Override
  public Optional<byte[]> sound() {
    return ear().sound();
  }

  @Override
  public void forget() {
    ear().forget();
  }

  /** How much sound was heard so far, in milliseconds of the source; 0 before the first. */
  public long millis() {
    return making.isDone() && ear() instanceof SoundEar sound ? (long) (sound.seconds() * 1000) : 0;
  }

  @Override
  public void close() {
    if (making.isDone() && !making.isCancelled()) {
      ear().close();
    }
  }

  private Ear ear() {
    try {
      return making.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the ear was made", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Fault fault) {
        throw new UncheckedFault(fault);
      }
      throw new IllegalStateException("the ear could not be made", e.getCause());
    }
  }
}
