package org.undercall.session;

import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import org.undercall.adapter.board.Press;
import org.undercall.adapter.board.PressSlot;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;
import org.undercall.port.Ear;

/**
 * An ear that also takes what is pressed or typed on the board, while the other ear waits.
 *
 * <p>The other ear is asked in short slices of its own time. What it has heard of a phrase it keeps
 * from slice to slice.
 */
public final class BoardEar implements Ear {
  private static final long SLICE_MILLIS = 100;

  private final Ear ear;
  private final PressSlot presses;
  private final LongSupplier state;
  private String how;

  /**
   * An ear beside a board.
   *
   * @param ear the other ear; this one closes it
   * @param presses where presses wait
   * @param state the number of the session's state; a press made for another one is refused
   */
  public BoardEar(Ear ear, PressSlot presses, LongSupplier state) {
    this.ear = ear;
    this.presses = presses;
    this.state = state;
    this.how = ear.how();
  }

  @Override
  public Optional<RecognisedPhrase> next(Set<IntentKind> allowed, long patienceMillis)
      throws EndOfInput {
    for (long left = patienceMillis; left > 0; left -= SLICE_MILLIS) {
      Optional<Press> press = presses.take(state.getAsLong());
      if (press.isPresent()) {
        how = press.get().how();
        return Optional.of(RecognisedPhrase.typed(press.get().words()));
      }
      Optional<RecognisedPhrase> heard = ear.next(allowed, Math.min(left, SLICE_MILLIS));
      if (heard.isPresent()) {
        how = ear.how();
        return heard;
      }
    }
    return Optional.empty();
  }

  @Override
  public void forget() {
    ear.forget();
  }

  @Override
  public Optional<SoundLevels> levels() {
    return how.equals(ear.how()) ? ear.levels() : Optional.empty();
  }

  @Override
  public Optional<byte[]> sound() {
    return how.equals(ear.how()) ? ear.sound() : Optional.empty();
  }

  /** How the last phrase came in. */
  @Override
  public String how() {
    return how;
  }

  @Override
  public void close() {
    ear.close();
  }
}
