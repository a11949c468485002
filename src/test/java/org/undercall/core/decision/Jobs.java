package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** The jobs of the dialogues. Every value is invented. */
final class Jobs {
  private Jobs() {}

  /** On each side the arch height and two bush bolts at ride height; then the car is lowered. */
  static Walk twoBushesASide() {
    return walk(
        new WorkPhase(
            "tighten",
            Each.SIDE,
            List.of(
                SampleProcedures.measure("arch", true, false),
                fastener("front", LoadCondition.RIDE_HEIGHT, newtonMetres("52"), degrees("60")),
                fastener("rear", LoadCondition.RIDE_HEIGHT, newtonMetres("62")))),
        new WorkPhase("finish", Each.CAR, List.of(SampleProcedures.doStep("lower", false, true))));
  }

  /** On each side a nut at any load and a bush bolt at ride height. */
  static Walk nutAndBush() {
    return walk(
        new WorkPhase(
            "tighten",
            Each.SIDE,
            List.of(
                fastener("nut", LoadCondition.ANY, newtonMetres("75")),
                fastener("bush", LoadCondition.RIDE_HEIGHT, newtonMetres("52")))));
  }

  /** A single nut of the whole car, at any load, and a do step after it. */
  static Walk nut(Stage... stages) {
    return walk(
        new WorkPhase(
            "tighten",
            Each.CAR,
            List.of(
                fastener("nut", LoadCondition.ANY, stages),
                SampleProcedures.doStep("look", true, false))));
  }

  /** A bolt at full droop and a load step, for the whole car. */
  static Walk droop() {
    return walk(
        new WorkPhase(
            "droop",
            Each.CAR,
            List.of(
                new Step.Load(SampleProcedures.head("hang", true), LoadCondition.FULL_DROOP),
                fastener("strut", LoadCondition.FULL_DROOP, newtonMetres("40")))));
  }

  /** Three pieces of work with nothing to tighten. */
  static Walk threeLooks() {
    return walk(
        new WorkPhase(
            "look",
            Each.CAR,
            List.of(
                SampleProcedures.doStep("one", false, false),
                SampleProcedures.doStep("two", false, false),
                SampleProcedures.doStep("three", false, false))));
  }

  /** A time to wait and a piece of work that comes after it. */
  static Walk waiting() {
    return car(wait("settle", 90), after("settle", SampleProcedures.doStep("look", false, false)));
  }

  /** A time long enough to warn; after it a piece of work, and a bush bolt at ride height. */
  static Walk longWaiting() {
    return car(
        wait("settle", 300),
        after("settle", SampleProcedures.doStep("look", false, false)),
        after("settle", fastener("bush", LoadCondition.RIDE_HEIGHT, newtonMetres("52"))));
  }

  /** Steps for the whole car. */
  static Walk car(Step... steps) {
    return walk(new WorkPhase("car", Each.CAR, List.of(steps)));
  }

  /** A time to wait, in seconds. */
  static Step wait(String id, int seconds) {
    return new Step.Wait(SampleProcedures.head(id, false), Duration.ofSeconds(seconds));
  }

  /** The same step, to be done after another. */
  static Step after(String first, Step step) {
    return SampleProcedures.with(
        step, SampleProcedures.bearing(List.of(first), List.of(), Bearing.Lift.LEFT_AS_IT_IS));
  }

  /** A value to be measured, in a unit, from 10 to 400. */
  static Walk measuring(MeasureUnit unit, boolean mayBeOutside) {
    Step.Limits limits =
        new Step.Limits(
            Optional.of(BigDecimal.TEN), Optional.of(new BigDecimal("400")), mayBeOutside);
    return walk(
        new WorkPhase(
            "inspect",
            Each.CAR,
            List.of(
                new Step.Measure(SampleProcedures.head("play", false), unit, limits, false),
                SampleProcedures.doStep("look", false, false))));
  }

  /** An angle from -5 to 10 degrees. */
  static Walk signed() {
    return walk(
        new WorkPhase(
            "inspect",
            Each.CAR,
            List.of(
                SampleProcedures.signed("camber"), SampleProcedures.doStep("look", false, false))));
  }

  static Stage newtonMetres(String amount) {
    return SampleProcedures.torque(amount);
  }

  static Stage degrees(String amount) {
    return SampleProcedures.angle(amount);
  }

  static Stage torque(String amount, TorqueUnit unit) {
    return new Stage.TorqueStage(new Torque(new BigDecimal(amount), unit), BigDecimal.ONE);
  }

  static Step fastener(String id, LoadCondition needs, Stage... stages) {
    return SampleProcedures.fasten(
        id,
        new Fastener.Part(Hardware.NUT, false, Lubrication.DRY),
        needs,
        List.of(new Variant(Optional.empty(), List.of(stages))));
  }

  private static Walk walk(WorkPhase... phases) {
    return Walk.of(SampleProcedures.procedure(phases));
  }
}
