package org.undercall.listen;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Heard;
import org.undercall.port.UncheckedFault;
import org.undercall.sound.Frames;

/**
 * An ear that is made on another thread while the first words are being spoken. Only {@link
 * #recognisers} and {@link #close} may be called by any thread.
 */
public final class LazyEar implements Ear {
  private final CompletableFuture<Made> making = new CompletableFuture<>();

  private LazyEar() {}

  private record Made(SoundEar ear, RecogniserMaker recognisers) {
    void close() {
      ear.close();
      recognisers.close();
    }
  }

  /**
   * Starts to make an ear; a fault in the making comes out of the first use.
   *
   * @param frames the sound; the ear closes it once it is made
   * @param recognisers loads the recogniser; the ear closes that too
   */
  public static LazyEar start(Frames frames, Callable<RecogniserMaker> recognisers) {
    LazyEar ear = new LazyEar();
    Thread thread = new Thread(() -> ear.make(frames, recognisers), "ear");
    thread.setDaemon(true);
    thread.start();
    return ear;
  }

  private void make(Frames frames, Callable<RecogniserMaker> recognisers) {
    try {
      RecogniserMaker maker = recognisers.call();
      making.complete(new Made(SoundEar.standard(frames, maker), maker));
    } catch (Throwable e) {
      making.completeExceptionally(e);
    }
  }

  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    return made().ear().next(allowed, patienceMillis);
  }

  @Override
  public Optional<RecognisedPhrase> together(Heard first, Heard rest, Set<IntentKind> allowed) {
    return made().ear().together(first, rest, allowed);
  }

  @Override
  public boolean isHearing() {
    return made().ear().isHearing();
  }

  @Override
  public void forget() {
    made().ear().forget();
  }

  /** How much sound was heard so far, in milliseconds of the source; 0 before the first. */
  public long millis() {
    return making.isDone() ? (long) (made().ear().seconds() * 1000) : 0;
  }

  /** What the ear hears with; empty as long as it is not made, or if it could not be. */
  public Optional<RecogniserMaker> recognisers() {
    return making
        .handle((made, fault) -> Optional.ofNullable(made))
        .getNow(Optional.empty())
        .map(Made::recognisers);
  }

  /**
   * Closes the ear and its recognisers. If they are still being made, returns at once; they are
   * closed as soon as they are made.
   */
  @Override
  public void close() {
    if (!making.isCompletedExceptionally()) {
      making.thenAccept(Made::close).getNow(null);
    }
  }

  private Made made() {
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
