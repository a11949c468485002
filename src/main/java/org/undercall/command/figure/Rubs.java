package org.undercall.command.figure;

import java.util.List;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Range;

/**
 * The friction of a joint.
 *
 * @param thread in the thread
 * @param seat under the head or nut
 * @param whence where it is taken from, in words
 */
record Rubs(Range<Friction> thread, Range<Friction> seat, String whence) {

  /** Both as one range, from the least to the most. */
  Range<Friction> both() {
    boolean low = thread.low().compareTo(seat.low()) <= 0;
    boolean high = thread.high().compareTo(seat.high()) >= 0;
    return new Range<>(low ? thread.low() : seat.low(), high ? thread.high() : seat.high());
  }

  /** The middle of a range: what is reckoned with where one value must do. */
  static Friction middle(Range<Friction> range) {
    return Friction.of((range.low().coefficient() + range.high().coefficient()) / 2);
  }

  List<Item> items() {
    return thread.equals(seat)
        ? List.of(item("friction of thread and seat", thread))
        : List.of(item("friction of the thread", thread), item("friction of the seat", seat));
  }

  private static Item item(String name, Range<Friction> range) {
    return Item.range(name, range.low().coefficient(), range.high().coefficient(), 2, "");
  }
}
