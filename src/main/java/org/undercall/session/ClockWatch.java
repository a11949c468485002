package org.undercall.session;

import java.util.Optional;
import org.undercall.core.event.Moment;
import org.undercall.core.intent.Intent;

/**
 * Compares the wall clock with the steady one from look to look.
 *
 * <p>The wall clock may be set; the steady clock never is, but on some systems it stands still
 * while the machine sleeps. Either way the two run apart. Small differences, as from a clock that
 * is kept in step over the network, are let pass.
 */
final class ClockWatch {
  /** A difference up to this is no jump. */
  static final long LEAST_JUMP_MILLIS = 5_000;

  /** How much longer than asked the ear may take before it counts as deaf in between. */
  private static final long MOST_DELAY_MILLIS = 120_000;

  private Moment last;

  ClockWatch(Moment start) {
    this.last = start;
  }

  /**
   * What happened to the clocks since the last look.
   *
   * @param now both clocks
   * @param patienceMillis for how long the ear was asked to listen
   * @return empty if nothing did
   */
  Optional<Intent> look(Moment now, long patienceMillis) {
    long steady = now.monotonicMillis() - last.monotonicMillis();
    long wall = now.wall().toInstant().toEpochMilli() - last.wall().toInstant().toEpochMilli();
    long apart = wall - steady;
    long jump = Math.abs(apart) > LEAST_JUMP_MILLIS ? apart : 0;
    long deaf = steady - patienceMillis;
    long asleep = Math.max(jump, deaf > MOST_DELAY_MILLIS ? deaf : 0);
    return jump == 0 && asleep == 0
        ? Optional.empty()
        : Optional.of(new Intent.ClockJumped(jump, Math.max(0, asleep)));
  }

  /** What was seen until now is dealt with. */
  void seen(Moment now) {
    last = now;
  }
}
