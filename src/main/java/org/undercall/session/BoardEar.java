package org.undercall.session;

import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import org.undercall.adapter.board.Press;
import org.undercall.adapter.board.PressSlot;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.EarAround;
import org.undercall.port.Heard;

/**
 * An ear that also takes what is pressed or typed on the board, while the other ear waits.
 *
 * <p>The other ear is asked in short slices of its own time. What it has heard of a phrase it keeps
 * from slice to slice.
 */
public final class BoardEar extends EarAround {
  private static final long SLICE_MILLIS = 100;

  private final PressSlot presses;
  private final LongSupplier state;

  /**
   * An ear beside a board.
   *
   * @param ear the other ear; this one closes it
   * @param presses where presses wait
   * @param state the number of the session's state; a press made for another one is refused
   */
  public BoardEar(Ear ear, PressSlot presses, LongSupplier state) {
    super(ear);
    this.presses = presses;
    this.state = state;
  }

  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    for (long left = patienceMillis; left > 0; left -= SLICE_MILLIS) {
      Optional<Press> press = presses.take(state.getAsLong());
      if (press.isPresent()) {
        return press.map(p -> new Heard(RecognisedPhrase.typed(p.words()), p.how()));
      }
      Optional<Heard> heard = ear.next(allowed, Math.min(left, SLICE_MILLIS));
      if (heard.isPresent()) {
        return heard;
      }
    }
    return Optional.empty();
  }
}
