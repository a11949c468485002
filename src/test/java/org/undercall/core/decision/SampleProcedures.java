package org.undercall.core.decision;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Bearing.Lift;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Renewal;
import org.undercall.core.procedure.Reuse;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.Angle;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.Torque;
import org.undercall.core.term.TorqueUnit;

/** Small procedures with invented values. */
final class SampleProcedures {
  static final List<Renewal> REASONS = List.of(Renewal.values());
  static final Reuse LENGTH_LIMIT = new Reuse(ReuseBy.LENGTH, new BigDecimal("52.5"));
  static final Reuse THREE_USES = new Reuse(ReuseBy.USES, new BigDecimal("3"));

  private SampleProcedures() {}

  /** A wrench that clicks, calibrated shortly before the work. */
  static final Tool CLICKING = tool("wrench 1", Tool.Kind.CLICKING, "2025-12-01");

  /** A wrench that is read, and whose calibration is over. */
  static final Tool OVERDUE = tool("wrench 2", Tool.Kind.INDICATING, "2024-06-01");

  private static Tool tool(String id, Tool.Kind kind, String calibrated) {
    return new Tool(
        id,
        kind,
        Torque.newtonMetres("20"),
        Torque.newtonMetres("200"),
        Optional.of(LocalDate.parse(calibrated)));
  }

  /** A procedure of these phases, with a tolerance of 10 mm for heights. */
  static Procedure procedure(WorkPhase... phases) {
    return procedure(List.of(), phases);
  }

  /** The same with these torque wrenches. */
  static Procedure procedure(List<Tool> tools, WorkPhase... phases) {
    return new Procedure(
        new Procedure.About("Sample", "invented van", "nobody", "1", "invented"),
        List.of(Caution.of("Stands, never a jack alone.")),
        tools,
        Optional.of(new RideHeight(BigDecimal.TEN, Optional.empty())),
        List.of(phases));
  }

  /** A bonded bush bolt on each side, with two head markings. */
  static Walk bushOnBothSides() {
    return Walk.of(procedure(new WorkPhase("tighten", Each.SIDE, List.of(bushBolt("bush")))));
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
                Each.SIDE,
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
    return Walk.of(procedure(new WorkPhase("tighten", Each.SIDE, steps.subList(0, fasteners))));
  }

  /** For the car: a wheel off, a bush bolt with an angle, work that undoes it, the wheel on. */
  static Walk wheelAndBush() {
    List<Stage> stages = List.of(torque("52"), angle("60"));
    Fastener.Part bolt = new Fastener.Part(Hardware.BOLT, false, Lubrication.DRY);
    Step bush =
        fasten(
            "bush",
            bolt,
            LoadCondition.RIDE_HEIGHT,
            List.of(new Variant(Optional.empty(), stages)));
    Step out =
        with(
            doStep("arm-out", false, false),
            bearing(List.of(), List.of("bush"), Lift.LEFT_AS_IT_IS));
    return Walk.of(
        procedure(
            new WorkPhase(
                "work",
                Each.CAR,
                List.of(
                    wheel("wheel-off", Wheels.REMOVED),
                    out,
                    bush,
                    wheel("wheel-on", Wheels.FITTED),
                    wheelBolts("wheel-bolts")))));
  }

  /** For the car: a bolt of a torque and an angle, and two wrenches, one out of calibration. */
  static Walk withTwoWrenches() {
    List<Stage> stages = List.of(torque("52"), angle("60"));
    Fastener.Part bolt = new Fastener.Part(Hardware.BOLT, false, Lubrication.DRY);
    Step one =
        fasten("plate", bolt, LoadCondition.ANY, List.of(new Variant(Optional.empty(), stages)));
    return Walk.of(
        procedure(List.of(CLICKING, OVERDUE), new WorkPhase("work", Each.CAR, List.of(one))));
  }

  /** For the car: a set in free order, by torque and angle. */
  static Walk setOf(int count) {
    List<Stage> stages = List.of(torque("52"), angle("60"));
    Fastener.Part bolt = new Fastener.Part(Hardware.BOLT, false, Lubrication.DRY);
    Step one =
        fasten("plate", bolt, LoadCondition.ANY, List.of(new Variant(Optional.empty(), stages)));
    return Walk.of(procedure(new WorkPhase("work", Each.CAR, List.of(set(one, count, List.of())))));
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

  /** A value with a sign, in degrees. */
  static Step signed(String id) {
    return new Step.Measure(
        head(id, false),
        MeasureUnit.DEGREE,
        new Step.Limits(Optional.of(new BigDecimal("-5")), Optional.of(BigDecimal.TEN), false),
        false);
  }

  /** A random procedure of one to four phases with every kind of step. */
  static Walk random(SplittableRandom random) {
    List<WorkPhase> phases = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    boolean corners = random.nextInt(6) == 0;
    if (random.nextInt(4) == 0) {
      phases.add(
          new WorkPhase(
              "heights",
              corners ? Each.CORNER : Each.SIDE,
              List.of(measure("height", true, true))));
    }
    for (int p = 0; p < count; p++) {
      List<Step> steps = new ArrayList<>();
      int length = 1 + random.nextInt(3);
      for (int s = 0; s < length; s++) {
        Step step = step("s" + p + s, random);
        List<String> earlier = new ArrayList<>();
        phases.forEach(phase -> phase.steps().forEach(e -> earlier.add(e.head().id())));
        steps.forEach(e -> earlier.add(e.head().id()));
        Step next = bearing(step, earlier, random);
        steps.add(random.nextInt(6) == 0 && canBeSeen(next) ? witnessed(next) : next);
      }
      phases.add(new WorkPhase("phase " + p, each(random, corners), steps));
    }
    List<Tool> tools =
        switch (random.nextInt(6)) {
          case 0 -> List.of(CLICKING);
          case 1 -> List.of(CLICKING, OVERDUE);
          case 2 -> List.of(tool("wrench 1", Tool.Kind.INDICATING, "2025-12-01"));
          case 3 -> List.of(tool("wrench 1", Tool.Kind.INDICATING, "2025-12-01"), OVERDUE);
          default -> List.of();
        };
    return Walk.of(procedure(tools, phases.toArray(WorkPhase[]::new)));
  }

  /** What a procedure can ask a witness for. */
  private static boolean canBeSeen(Step step) {
    boolean moves = step.head().bearing().car() != Lift.LEFT_AS_IT_IS;
    return !moves
        && (step instanceof Step.Fasten
            || (step instanceof Step.Do work && work.wheels() == Wheels.LEFT_AS_THEY_ARE)
            || (step instanceof Step.Measure measure && !measure.notesRideHeight()));
  }

  /** For the car: a nut at ride height and work with a check, each seen by a second person. */
  static Walk seenByASecond() {
    Fastener.Part nut = new Fastener.Part(Hardware.BOLT, false, Lubrication.DRY);
    List<Variant> one = List.of(new Variant(Optional.empty(), List.of(torque("52"))));
    return Walk.of(
        procedure(
            new WorkPhase(
                "tighten",
                Each.CAR,
                List.of(
                    witnessed(fasten("nut", nut, LoadCondition.RIDE_HEIGHT, one)),
                    witnessed(doStep("look", true, false))))));
  }

  /** The same step, which now and then bears on the car and on steps before it. */
  private static Each each(SplittableRandom random, boolean corners) {
    List<Each> each =
        corners
            ? List.of(Each.CAR, Each.FRONT, Each.REAR, Each.CORNER)
            : List.of(Each.CAR, Each.SIDE, Each.SIDE);
    return each.get(random.nextInt(each.size()));
  }

  private static Step bearing(Step step, List<String> earlier, SplittableRandom random) {
    Optional<Bearing> bearing =
        switch (random.nextInt(10)) {
          case 0 -> some(earlier, random).map(ids -> bearing(ids, List.of(), Lift.LEFT_AS_IT_IS));
          case 1 -> some(earlier, random).map(ids -> bearing(List.of(), ids, Lift.LEFT_AS_IT_IS));
          case 2 -> Optional.of(bearing(List.of(), List.of(), Lift.RAISED));
          case 3 -> Optional.of(bearing(List.of(), List.of(), Lift.LOWERED));
          case 4 ->
              Optional.of(
                  new Bearing(List.of(), List.of(), Lift.LEFT_AS_IT_IS, Optional.empty(), true));
          default -> Optional.empty();
        };
    return bearing.map(b -> with(step, b)).orElse(step);
  }

  private static Optional<List<String>> some(List<String> earlier, SplittableRandom random) {
    return earlier.isEmpty()
        ? Optional.empty()
        : Optional.of(List.of(earlier.get(random.nextInt(earlier.size()))));
  }

  static Bearing bearing(List<String> after, List<String> undoes, Lift car) {
    return new Bearing(after, undoes, car, Optional.empty(), false);
  }

  /** The same step with a bearing. */
  static Step with(Step step, Bearing bearing) {
    Step.Head old = step.head();
    return with(
        step,
        new Step.Head(
            old.id(),
            old.title(),
            old.brief(),
            old.cautions(),
            old.changesLoad(),
            bearing,
            old.witness(),
            old.why()));
  }

  /** The same step, which closes only when a second person saw it. */
  static Step witnessed(Step step) {
    return seen(step, true, Optional.empty());
  }

  /** The same step with its reason. */
  static Step told(Step step, String why) {
    return seen(step, false, Optional.of(why));
  }

  private static Step seen(Step step, boolean witness, Optional<String> why) {
    Step.Head old = step.head();
    Step.Head head =
        new Step.Head(
            old.id(),
            old.title(),
            old.brief(),
            old.cautions(),
            old.changesLoad(),
            old.bearing(),
            witness,
            why);
    return with(step, head);
  }

  /** The same step with another head. */
  static Step with(Step step, Step.Head head) {
    if (step instanceof Step.Do work) {
      return new Step.Do(head, work.check(), work.wheels());
    }
    if (step instanceof Step.Fasten fasten) {
      return new Step.Fasten(head, fasten.fastener());
    }
    if (step instanceof Step.Measure m) {
      return new Step.Measure(head, m.unit(), m.limits(), m.notesRideHeight());
    }
    if (step instanceof Step.Load load) {
      return new Step.Load(head, load.condition(), load.byWheels());
    }
    return step instanceof Step.Wait wait
        ? new Step.Wait(head, wait.time())
        : new Step.HandOver(head, ((Step.HandOver) step).due());
  }

  /** A wheel taken off or put on. */
  static Step wheel(String id, Wheels wheels) {
    return new Step.Do(head(id, false), Optional.empty(), wheels);
  }

  /** Wheel bolts of one torque stage. */
  static Step wheelBolts(String id) {
    Step.Fasten plain =
        (Step.Fasten)
            fasten(
                id,
                new Fastener.Part(Hardware.BOLT, false, Lubrication.DRY),
                LoadCondition.ANY,
                List.of(new Variant(Optional.empty(), List.of(torque("52")))));
    Fastener f = plain.fastener();
    Fastener.Joint wheel =
        new Fastener.Joint(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            true,
            Optional.empty(),
            Optional.empty());
    return new Step.Fasten(
        plain.head(),
        new Fastener(
            f.name(), f.thread(), f.drive(), f.part(), f.needs(), f.set(), f.variants(), wheel));
  }

  /** A random step of any kind. */
  static Step step(String id, SplittableRandom random) {
    LoadCondition some =
        random.nextBoolean() ? LoadCondition.RIDE_HEIGHT : LoadCondition.FULL_DROOP;
    return switch (random.nextInt(14)) {
      case 0 -> doStep(id, random.nextBoolean(), random.nextInt(3) == 0);
      case 1 ->
          random.nextInt(3) == 0
              ? signed(id)
              : measure(id, random.nextBoolean(), random.nextBoolean());
      case 2 -> new Step.Wait(head(id, false), Duration.ofSeconds(30));
      case 3 -> new Step.Load(head(id, random.nextBoolean()), some);
      case 4 -> new Step.HandOver(head(id, false), "after 50 kilometres");
      case 5 ->
          random.nextInt(5) == 0
              ? runningDown(bushBolt(id), Fastener.Manner.RunDown.ADDED)
              : sometimesSet(bushBolt(id), random);
      case 6 -> wheel(id, Wheels.REMOVED);
      case 7 -> wheel(id, Wheels.FITTED);
      case 9 -> random.nextBoolean() ? bushBolt(id) : byHand(bushBolt(id));
      case 8 -> {
        Step bolts = random.nextInt(3) == 0 ? byHand(wheelBolts(id)) : wheelBolts(id);
        yield sometimesSet(bolts, random);
      }
      default -> sometimesSet(randomFastener(id, random), random);
    };
  }

  /** The same fastener as a set: now and then with an order that is no count. */
  static Step set(Step step, int count, List<Integer> order) {
    Fastener f = ((Step.Fasten) step).fastener();
    return with(step, new Fastener.FastenerSet(count, order), f.manner());
  }

  /** The same fastener with a prevailing torque. */
  static Step runningDown(Step step, Fastener.Manner.RunDown how) {
    Fastener.Manner manner =
        new Fastener.Manner(false, false, Optional.empty(), Optional.of(how), Optional.empty());
    return with(step, ((Step.Fasten) step).fastener().set(), manner);
  }

  /** The same fastener, to be run in by hand first. */
  static Step byHand(Step step) {
    Fastener f = ((Step.Fasten) step).fastener();
    Fastener.Manner manner =
        new Fastener.Manner(false, true, Optional.empty(), f.manner().runDown(), Optional.empty());
    return with(step, f.set(), manner);
  }

  /** The same fastener with a left-hand thread, or to be left to cure. */
  static Step minding(Step step, boolean leftHand, Optional<Duration> cure) {
    Fastener.Manner manner =
        new Fastener.Manner(
            leftHand, false, Optional.of("a key in the pin"), Optional.empty(), cure);
    return with(step, ((Step.Fasten) step).fastener().set(), manner);
  }

  private static Step with(Step step, Fastener.FastenerSet set, Fastener.Manner manner) {
    Fastener f = ((Step.Fasten) step).fastener();
    return new Step.Fasten(
        step.head(),
        new Fastener(
            f.name(),
            f.thread(),
            f.drive(),
            f.part(),
            f.needs(),
            set,
            f.variants(),
            f.joint(),
            manner));
  }

  /** Used again as it is, for one use, for one use for a reason, or used again within a limit. */
  private static Fastener.Part part(SplittableRandom random) {
    return switch (random.nextInt(8)) {
      case 0 -> part(Set.of(Renewal.YIELDED), Optional.of(LENGTH_LIMIT));
      case 1 -> part(Set.of(Renewal.SELF_LOCKING), Optional.of(THREE_USES));
      case 2 -> part(Set.of(), Optional.of(random.nextBoolean() ? LENGTH_LIMIT : THREE_USES));
      case 3 -> part(Set.of(REASONS.get(random.nextInt(REASONS.size()))), Optional.empty());
      default ->
          new Fastener.Part(Hardware.SELF_LOCKING_NUT, random.nextBoolean(), Lubrication.DRY);
    };
  }

  /** A part that is renewed for these reasons, or used again within a limit. */
  static Fastener.Part part(Set<Renewal> renew, Optional<Reuse> reuse) {
    boolean nut = reuse.filter(limit -> limit.by() == ReuseBy.USES).isPresent();
    Hardware hardware = nut ? Hardware.SELF_LOCKING_NUT : Hardware.BOLT;
    return new Fastener.Part(hardware, true, Lubrication.DRY, renew, reuse);
  }

  /** An angle with the band of the torque after it. */
  static Stage banded(String degrees, String least, String most) {
    Stage.AngleStage.Band band =
        new Stage.AngleStage.Band(Torque.newtonMetres(least), Torque.newtonMetres(most));
    return new Stage.AngleStage(Angle.degrees(degrees), BigDecimal.ONE, false, Optional.of(band));
  }

  private static Step sometimesSet(Step step, SplittableRandom random) {
    return switch (random.nextInt(9)) {
      case 0 -> set(step, 2, List.of());
      case 1 -> set(step, 3, List.of(1, 3, 2));
      case 2 -> set(step, 3, List.of());
      default -> step;
    };
  }

  private static Step randomFastener(String id, SplittableRandom random) {
    List<Stage> stages = new ArrayList<>(List.of(torque(random.nextBoolean() ? "50" : "117")));
    if (random.nextInt(4) == 0) {
      stages.add(torque("65"));
    }
    if (random.nextBoolean()) {
      boolean banded = random.nextInt(3) == 0;
      stages.add(banded ? banded("90", "100", "115") : angle("90"));
    }
    if (random.nextInt(6) == 0) {
      Stage back = new Stage.AngleStage(Angle.degrees("60"), BigDecimal.ONE, true);
      stages.addAll(1, List.of(back, torque("65")));
    }
    if (random.nextInt(6) == 0) {
      stages.set(0, Stage.TorqueStage.range(Torque.newtonMetres("50"), Torque.newtonMetres("54")));
    } else if (random.nextInt(4) == 0) {
      stages.set(
          0,
          new Stage.TorqueStage(
              new Torque(new BigDecimal("65"), TorqueUnit.POUND_FORCE_FOOT), BigDecimal.ONE));
    }
    Step step =
        fasten(
            id,
            part(random),
            List.of(LoadCondition.values()).get(random.nextInt(3)),
            List.of(new Variant(Optional.empty(), stages)));
    if (random.nextInt(10) == 0) {
      return byHand(step);
    }
    return switch (random.nextInt(12)) {
      case 0, 1 -> minding(step, true, Optional.of(Duration.ofMinutes(1)));
      case 2, 3 -> runningDown(step, Fastener.Manner.RunDown.ADDED);
      case 4 -> runningDown(step, Fastener.Manner.RunDown.INCLUDED);
      default -> step;
    };
  }
}
