package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Torque;

/**
 * What {@link Promises} keeps of the torque wrenches. All work of the tests is done in 2026, with
 * wrenches that were calibrated shortly before or years ago.
 *
 * @param named the one that was named last
 * @param excused those that were excused
 * @param heard the excuse that waits to be read back
 * @param heardFinal the torque after the last angle that does
 * @param heardRunDown the run-down torque that does
 * @param runDowns the run-down torques that were read back since the fastener was loose
 * @param runIn those that were run in by hand since they were loose
 */
record BenchPromises(
    Optional<String> named,
    Set<String> excused,
    Optional<SessionEvent.OverdueCalled> heard,
    Optional<SessionEvent.FinalTorqueCalled> heardFinal,
    Optional<SessionEvent.RunDownCalled> heardRunDown,
    Map<StepRef, BigDecimal> runDowns,
    Set<StepRef> runIn) {
  static final BenchPromises START =
      new BenchPromises(
          Optional.empty(),
          Set.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Map.of(),
          Set.of());

  private static final LocalDate LONG_AGO = LocalDate.parse("2025-01-01");

  void check(Walk walk, Intent intent, SessionEvent event) {
    if (event instanceof SessionEvent.WrenchNamed e) {
      boolean said =
          intent instanceof Intent.OfPosition of
              && of.kind() == IntentKind.WRENCH_NAMED
              && e.wrench().equals("wrench " + of.position());
      Promises.require(said, "the wrench that was named", event);
    } else if (event instanceof SessionEvent.OverdueNoted e) {
      boolean same =
          heard.filter(h -> h.wrench().equals(e.wrench()) && h.reason() == e.reason()).isPresent();
      Promises.require(
          same && intent.kind() == IntentKind.READ_BACK_RIGHT, "an excuse read back", event);
    } else if (event instanceof SessionEvent.RunInByHand e) {
      int count = fastener(walk, e.step()).set().count();
      int said = intent instanceof Intent.Counted counted ? counted.number() : 1;
      Promises.require(
          said == count && intent.kind() == IntentKind.FITTED_SNUG,
          "all run in by hand, by their number",
          event);
    } else if (event instanceof SessionEvent.RunDownNoted e) {
      boolean same =
          heardRunDown
              .filter(h -> h.step().equals(e.step()) && h.value().compareTo(e.value()) == 0)
              .isPresent();
      Promises.require(
          same && intent.kind() == IntentKind.READ_BACK_RIGHT,
          "a run-down torque read back",
          event);
    } else if (event instanceof SessionEvent.FinalTorqueNoted e) {
      boolean same =
          heardFinal
              .filter(h -> h.step().equals(e.step()) && h.value().compareTo(e.value()) == 0)
              .isPresent();
      Promises.require(
          same && intent.kind() == IntentKind.READ_BACK_RIGHT, "a final torque read back", event);
    }
  }

  /** A torque is called or closed. */
  void checkTorque(Walk walk, Fastener fastener, Stage.TorqueStage stage, SessionEvent event) {
    if (event instanceof SessionEvent.ValueCalled called) {
      boolean measured =
          fastener.manner().runDown().isEmpty() || runDowns.containsKey(called.step());
      Promises.require(measured, "a run-down torque before a torque", event);
      boolean byHand = !fastener.manner().byHand() || runIn.contains(called.step());
      Promises.require(byHand, "a pass by hand before a torque", event);
    }
    boolean over =
        inUse(walk, stage).stream()
            .filter(tool -> !excused.contains(tool.id()))
            .anyMatch(tool -> tool.calibrated().filter(LONG_AGO::isAfter).isPresent());
    Promises.require(!over, "a wrench out of calibration is excused", event);
  }

  /** A torque is read that is not the nominal one. */
  void checkReading(Walk walk, Stage.TorqueStage stage, SessionEvent event) {
    List<Tool> tools = inUse(walk, stage);
    boolean read =
        !tools.isEmpty() && tools.stream().allMatch(t -> t.kind() == Tool.Kind.INDICATING);
    Promises.require(read, "a torque read at a wrench with a scale", event);
  }

  private List<Tool> inUse(Walk walk, Stage.TorqueStage stage) {
    List<Tool> fit =
        walk.procedure().tools().stream()
            .filter(tool -> tool.most().unit() == stage.target().unit())
            .filter(tool -> tool.covers(stage.setting()))
            .toList();
    List<Tool> one = fit.stream().filter(t -> named.equals(Optional.of(t.id()))).toList();
    return one.isEmpty() ? fit : one;
  }

  BenchPromises after(SessionEvent event) {
    if (event instanceof SessionEvent.WrenchNamed e) {
      return new BenchPromises(
          Optional.of(e.wrench()), excused, heard, heardFinal, heardRunDown, runDowns, runIn);
    }
    if (event instanceof SessionEvent.OverdueCalled e) {
      return new BenchPromises(
          named, excused, Optional.of(e), heardFinal, heardRunDown, runDowns, runIn);
    }
    if (event instanceof SessionEvent.ReadBackDropped) {
      return new BenchPromises(
          named, excused, Optional.empty(), Optional.empty(), Optional.empty(), runDowns, runIn);
    }
    if (event instanceof SessionEvent.OverdueNoted e) {
      Set<String> more = new HashSet<>(excused);
      more.add(e.wrench());
      return new BenchPromises(
          Optional.of(e.wrench()),
          Set.copyOf(more),
          Optional.empty(),
          heardFinal,
          heardRunDown,
          runDowns,
          runIn);
    }
    if (event instanceof SessionEvent.FinalTorqueCalled e) {
      return new BenchPromises(
          named, excused, heard, Optional.of(e), heardRunDown, runDowns, runIn);
    }
    if (event instanceof SessionEvent.RunDownCalled e) {
      return new BenchPromises(named, excused, heard, heardFinal, Optional.of(e), runDowns, runIn);
    }
    if (event instanceof SessionEvent.SayingTakenBack e && e.what().equals("WRENCH_NAMED")) {
      return new BenchPromises(
          Optional.empty(), excused, heard, heardFinal, heardRunDown, runDowns, runIn);
    }
    if (event instanceof SessionEvent.SayingTakenBack e && e.what().equals("OVERDUE_NOTED")) {
      return new BenchPromises(
          Optional.empty(), Set.of(), heard, heardFinal, heardRunDown, runDowns, runIn);
    }
    return running(event);
  }

  private BenchPromises running(SessionEvent event) {
    Map<StepRef, BigDecimal> next = new HashMap<>(runDowns);
    Set<StepRef> in = new HashSet<>(runIn);
    if (event instanceof SessionEvent.RunInByHand e) {
      in.add(e.step());
    } else if (event instanceof SessionEvent.NewHardwareFitted e) {
      in.remove(e.step());
    } else if (event instanceof SessionEvent.ReuseNoted e) {
      in.remove(e.step());
    } else if (event instanceof SessionEvent.Loosened e) {
      in.remove(e.step());
    } else if (event instanceof SessionEvent.StepReopened e) {
      in.remove(e.step());
    } else if (event instanceof SessionEvent.SayingTakenBack e
        && e.what().equals("RUN_IN_BY_HAND")) {
      in.remove(e.step());
    }
    if (event instanceof SessionEvent.RunDownNoted e) {
      next.put(e.step(), e.value());
    } else if (event instanceof SessionEvent.NewHardwareFitted e) {
      next.remove(e.step());
    } else if (event instanceof SessionEvent.ReuseNoted e) {
      next.remove(e.step());
    } else if (event instanceof SessionEvent.Loosened e) {
      next.remove(e.step());
    } else if (event instanceof SessionEvent.TroubleSettled e) {
      next.remove(e.step());
    } else if (event instanceof SessionEvent.StepReopened e) {
      next.remove(e.step());
    } else if (event instanceof SessionEvent.ReopenedTight e) {
      next.remove(e.step());
    } else if (event instanceof SessionEvent.ClosingLapsed e) {
      next.remove(e.step());
    } else if (event instanceof SessionEvent.SayingTakenBack e
        && e.what().equals("RUN_DOWN_NOTED")) {
      next.remove(e.step());
    }
    return new BenchPromises(
        named, excused, heard, heardFinal, heardRunDown, Map.copyOf(next), Set.copyOf(in));
  }

  /** The stages as the run-down torque raises them. */
  List<Stage> raised(StepRef step, Fastener fastener, List<Stage> stages) {
    BigDecimal more = runDowns.get(step);
    boolean added = fastener.manner().runDown().equals(Optional.of(Fastener.Manner.RunDown.ADDED));
    if (!added || more == null) {
      return stages;
    }
    return stages.stream()
        .map(
            s ->
                s instanceof Stage.TorqueStage t
                    ? new Stage.TorqueStage(
                        new Torque(t.target().amount().add(more), t.target().unit()),
                        t.plusMinus(),
                        t.dialled(),
                        t.form())
                    : s)
        .toList();
  }

  private static Fastener fastener(Walk walk, StepRef ref) {
    return ((Step.Fasten) walk.places().get(walk.indexOf(ref)).step()).fastener();
  }
}
