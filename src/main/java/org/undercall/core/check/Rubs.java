package org.undercall.core.check;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.fastening.Assembly;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.FrictionClass;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.Range;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.term.Torque;

/**
 * The friction of a fastener: as stated, or what its state of thread and seat can bring.
 *
 * @param thread in the thread
 * @param seat under the head or nut
 */
record Rubs(Range<Friction> thread, Range<Friction> seat) {
  /** What is taken where one value must do: the middle of classes B and C. */
  private static final Friction MIDDLE = Friction.of(0.14);

  static Optional<Rubs> of(Fastener fastener) {
    return fastener
        .joint()
        .sizes()
        .friction()
        .map(known -> new Rubs(range(known.thread()), range(known.seat())))
        .or(
            () ->
                FrictionClass.expect(fastener.part().lubrication())
                    .map(range -> new Rubs(range, range)));
  }

  private static Range<Friction> range(Sizes.Span span) {
    return new Range<>(friction(span.least()), friction(span.most()));
  }

  private static Friction friction(BigDecimal coefficient) {
    return Friction.of(coefficient.doubleValue());
  }

  /** Both together, from the least to the most. */
  Range<Friction> both() {
    boolean low = thread.low().compareTo(seat.low()) <= 0;
    boolean high = thread.high().compareTo(seat.high()) >= 0;
    return new Range<>(low ? thread.low() : seat.low(), high ? thread.high() : seat.high());
  }

  /** A friction in the middle: 0.14, or the nearest that can be. */
  Friction middle() {
    Range<Friction> both = both();
    if (MIDDLE.compareTo(both.low()) < 0) {
      return both.low();
    }
    return MIDDLE.compareTo(both.high()) > 0 ? both.high() : MIDDLE;
  }

  /** A friction between the ends, in thread and seat alike: 0 for the least, 1 for the most. */
  Rubs at(double part) {
    Friction inThread = between(thread, part);
    Friction inSeat = between(seat, part);
    return new Rubs(new Range<>(inThread, inThread), new Range<>(inSeat, inSeat));
  }

  private static Friction between(Range<Friction> range, double part) {
    double low = range.low().coefficient();
    return Friction.of(low + part * (range.high().coefficient() - low));
  }

  /** The torque at which a bolt yields with the least friction, in newton metres. */
  double yieldsFrom(Bolt bolt) {
    return Assembly.atYield(bolt).torque(thread.low(), seat.low()).inNewtonMetres();
  }

  /** The torque at which a bolt yields even with the most friction, in newton metres. */
  double yieldsAlways(Bolt bolt) {
    return Assembly.atYield(bolt).torque(thread.high(), seat.high()).inNewtonMetres();
  }

  /** The least share of the yield preload that a torque makes. */
  double least(Bolt bolt, Torque torque) {
    return share(bolt, torque, thread.high(), seat.high());
  }

  /** The largest share of the yield preload that a torque makes; more than 1 is yield. */
  double most(Bolt bolt, Torque torque) {
    return share(bolt, torque, thread.low(), seat.low());
  }

  /** The share of the yield preload that a torque makes with the middle friction. */
  double usual(Bolt bolt, Torque torque) {
    return share(bolt, torque, middle(), middle());
  }

  private static double share(Bolt bolt, Torque torque, Friction thread, Friction seat) {
    return LongForm.of(bolt).preload(torque, thread, seat).newtons()
        / Assembly.atYield(bolt).preload(thread).newtons();
  }
}
