package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Remedy;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.StepRef;

/**
 * What {@link Promises} keeps of parts that may be used again.
 *
 * @param heard what waits to be read back
 * @param before how often each part on the car was tightened before, as read back; 0 of a new one
 * @param least how often at least, with what was closed here
 */
record ReusePromises(
    Optional<SessionEvent.ReuseCalled> heard,
    Map<StepRef, Integer> before,
    Map<StepRef, Integer> least) {
  static final ReusePromises START = new ReusePromises(Optional.empty(), Map.of(), Map.of());

  void check(Walk walk, Intent intent, SessionEvent event) {
    if (!(event instanceof SessionEvent.ReuseNoted e)) {
      return;
    }
    boolean again =
        intent instanceof Intent.OfNumber of
            && of.number().value().compareTo(e.value()) == 0
            && (of.kind() == IntentKind.HARDWARE_LENGTH || of.kind() == IntentKind.HARDWARE_USES);
    boolean same =
        heard
            .filter(h -> h.step().equals(e.step()) && h.by() == e.by())
            .filter(h -> h.value().compareTo(e.value()) == 0)
            .isPresent();
    boolean right = intent.kind() == IntentKind.READ_BACK_RIGHT || again;
    Promises.require(right && same, "a used part read back", event);
    BigDecimal most = part(walk, e.step()).reuse().orElseThrow().most();
    boolean within =
        e.by() == ReuseBy.LENGTH
            ? e.value().compareTo(most) <= 0 && e.value().compareTo(BigDecimal.TEN) > 0
            : e.value().intValueExact() < most.intValueExact()
                && e.value().intValueExact() >= least.getOrDefault(e.step(), 1);
    Promises.require(within, "a used part within its limit", event);
  }

  ReusePromises after(Walk walk, SessionEvent event) {
    Optional<SessionEvent.ReuseCalled> next =
        event instanceof SessionEvent.ReuseCalled e
            ? Optional.of(e)
            : event instanceof SessionEvent.ReadBackDropped ? Optional.empty() : heard;
    Map<StepRef, Integer> on = new HashMap<>(before);
    Map<StepRef, Integer> done = new HashMap<>(least);
    if (event instanceof SessionEvent.NewHardwareFitted e) {
      fitted(walk, e.step(), 0, on);
    } else if (event instanceof SessionEvent.TroubleSettled e
        && e.remedy() == Remedy.NEW_HARDWARE
        && walk.places().get(walk.indexOf(e.step())).step() instanceof Step.Fasten) {
      fitted(walk, e.step(), 0, on);
    } else if (event instanceof SessionEvent.ReuseNoted e) {
      next = Optional.empty();
      fitted(walk, e.step(), e.value().intValue(), on);
    } else if (event instanceof SessionEvent.StageClosed e && on.containsKey(e.step())) {
      done.put(e.step(), on.get(e.step()) + 1);
    } else if (event instanceof SessionEvent.PositionsClosed e && on.containsKey(e.step())) {
      done.put(e.step(), on.get(e.step()) + 1);
    }
    return new ReusePromises(next, Map.copyOf(on), Map.copyOf(done));
  }

  private static void fitted(Walk walk, StepRef step, int times, Map<StepRef, Integer> on) {
    if (part(walk, step).reuse().filter(r -> r.by() == ReuseBy.USES).isPresent()) {
      on.put(step, times);
    }
  }

  /** Whether a part is used up by any tightening. */
  static boolean wears(Fastener.Part part) {
    boolean lock =
        part.renew().contains(Renewal.SELF_LOCKING)
            || part.renew().contains(Renewal.MICRO_ENCAPSULATED)
            || part.renew().contains(Renewal.MAKER);
    return lock || part.reuse().filter(r -> r.by() == ReuseBy.USES).isPresent();
  }

  private static Fastener.Part part(Walk walk, StepRef ref) {
    return ((Step.Fasten) walk.places().get(walk.indexOf(ref)).step()).fastener().part();
  }
}
