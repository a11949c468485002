package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.Angle;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** Small procedures with invented values. */
final class SampleProcedures {
  private SampleProcedures() {}

  /** A procedure of these phases, with a tolerance of 10 mm for heights. */
  static Procedure procedure(WorkPhase... phases) {
    return new Procedure(
        new Procedure.About("Sample", "invented van", "nobody", "1", "invented"),
        List.of("Stands, never a jack alone."),
        List.of(),
        Optional.of(new RideHeight(BigDecimal.TEN, Optional.empty())),
        List.of(phases));
  }

  /** A bonded bush bolt on each side, with two head markings. */
  static Walk bushOnBothSides() {
    return Walk.of(procedure(new WorkPhase("tighten", true, List.of(bushBolt("bush")))));
  }

  /** On each side a bush bolt, a ball joint nut for any load, and a bolt for full droop. */
  static Walk threeOnBothSides() {
    Fastener.Part nut = new Fastener.Part(Hardware.SELF_LOCKING_NUT, false, Lubrication.DRY);
    List<Variant> one = List.of(new Variant(Optional.empty(), List.of(torque("52"))));
    List<Variant> two = List.of(new Variant(Optional.empty(), List.of(torque("52"), angle("60"))));
    return Walk.of(
        procedure(
            new WorkPhase(
                "tighten",
                true,
                List.of(
                    bushBolt("bush"),
                    fasten("ball-joint", nut, LoadCondition.ANY, one),
                    fasten("droop", nut, LoadCondition.FULL_DROOP, two)))));
  }

  /** On each side up to three nuts of one torque stage: at ride height, any load, full droop. */
  static Walk plainOnBothSides(int fasteners) {
    Fastener.Part nut = new Fastener.Part(Hardware.SELF_LOCKING_NUT, false, Lubrication.DRY);
    List<Variant> one = List.of(new Variant(Optional.empty(), List.of(torque("52"))));
    List<Step> steps =
        List.of(
            fasten("bush", nut, LoadCondition.RIDE_HEIGHT, one),
            fasten("ball-joint", nut, LoadCondition.ANY, one),
            fasten("droop", nut, LoadCondition.FULL_DROOP, one));
    return Walk.of(procedure(new WorkPhase("tighten", true, steps.subList(0, fasteners))));
  }

  static Step.Head head(String id, boolean changesLoad) {
    return new Step.Head(id, id + " title", List.of(), changesLoad);
  }

  static Step doStep(String id, boolean check, boolean changesLoad) {
    return new Step.Do(
        head(id, changesLoad), check ? Optional.of("Is it seated?") : Optional.empty());
  }

  /** A one-time-use bolt at a bonded bush: 8.8 has a torque and an angle, 10.9 only a torque. */
  static Step bushBolt(String id) {
    List<Stage> low = List.of(torque("52"), angle("60"));
    List<Stage> high = List.of(torque("117"));
    return fasten(
        id,
        new Fastener.Part(Hardware.BOLT, true, Lubrication.DRY),
        LoadCondition.RIDE_HEIGHT,
        List.of(variant("8.8", low), variant("10.9", high)));
  }

  static Step fasten(String id, Fastener.Part part, LoadCondition needs, List<Variant> variants) {
    return new Step.Fasten(
        head(id, false),
        new Fastener(
            id + " bolt",
            "M12x1.5",
            new BigDecimal("18"),
            part,
            needs,
            Fastener.FastenerSet.SINGLE,
            variants));
  }

  static Variant variant(String marking, List<Stage> stages) {
    return new Variant(Optional.of(new HeadMarking(marking)), stages);
  }

  static Stage torque(String newtonMetres) {
    return new Stage.TorqueStage(Torque.newtonMetres(newtonMetres), BigDecimal.ONE);
  }

  static Stage angle(String degrees) {
    return new Stage.AngleStage(Angle.degrees(degrees), BigDecimal.ONE);
  }

  static Step measure(String id, boolean rideHeight, boolean mayBeOutside) {
    return new Step.Measure(
        head(id, false),
        MeasureUnit.MILLIMETRE,
        new Step.Limits(
            Optional.of(BigDecimal.TEN), Optional.of(new BigDecimal("400")), mayBeOutside),
        rideHeight);
  }

  /** A random procedure of one to four phases with every kind of step. */
  static Walk random(SplittableRandom random) {
    List<WorkPhase> phases = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int p = 0; p < count; p++) {
      List<Step> steps = new ArrayList<>();
      int length = 1 + random.nextInt(3);
      for (int s = 0; s < length; s++) {
        steps.add(step("s" + p + s, random));
      }
      phases.add(new WorkPhase("phase " + p, random.nextInt(3) > 0, steps));
    }
    return Walk.of(procedure(phases.toArray(WorkPhase[]::new)));
  }

  private static Step step(String id, SplittableRandom random) {
    LoadCondition some =
        random.nextBoolean() ? LoadCondition.RIDE_HEIGHT : LoadCondition.FULL_DROOP;
    return switch (random.nextInt(9)) {
      case 0 -> doStep(id, random.nextBoolean(), random.nextInt(3) == 0);
      case 1 -> measure(id, random.nextBoolean(), random.nextBoolean());
      case 2 -> new Step.Wait(head(id, false), Duration.ofSeconds(30));
      case 3 -> new Step.Load(head(id, random.nextBoolean()), some);
      case 4 -> new Step.HandOver(head(id, false), "after 50 kilometres");
      case 5 -> bushBolt(id);
      default -> randomFastener(id, random);
    };
  }

  private static Step randomFastener(String id, SplittableRandom random) {
    List<Stage> stages = new ArrayList<>(List.of(torque(random.nextBoolean() ? "50" : "117")));
    if (random.nextBoolean()) {
      stages.add(angle("90"));
    }
    if (random.nextInt(4) == 0) {
      stages.set(
          0,
          new Stage.TorqueStage(
              new Torque(new BigDecimal("65"), TorqueUnit.POUND_FORCE_FOOT), BigDecimal.ONE));
    }
    return fasten(
        id,
        new Fastener.Part(Hardware.SELF_LOCKING_NUT, random.nextBoolean(), Lubrication.DRY),
        List.of(LoadCondition.values()).get(random.nextInt(3)),
        List.of(new Variant(Optional.empty(), stages)));
  }
}
