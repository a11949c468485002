package org.undercall.core.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Embedding;
import org.undercall.core.fastening.Engagement;
import org.undercall.core.fastening.ExpectedTorque;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.Joint;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.NutClass;
import org.undercall.core.fastening.PrevailingTorque;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.Seat;
import org.undercall.core.fastening.SeatMaterial;
import org.undercall.core.fastening.SeatPressure;
import org.undercall.core.fastening.Stress;
import org.undercall.core.fastening.Tightening;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.procedure.Stage.AngleStage;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.Torque;

/** Rules about what a bolt does to the parts it clamps, to its nut and to a tapped hole. */
final class ClampRules {
  /** From this share of the preload on, what settles is much: a choice of this program. */
  private static final double SETTLES = 0.15;

  /** From this share of the torque on, what a nut uses up is much: a choice of this program. */
  private static final double EATEN = 0.5;

  /** The same before an angle, which makes most of the preload. */
  private static final double EATEN_BEFORE_ANGLE = 0.9;

  private static final double CHAMFER = 0.8;

  private final Spot spot;
  private final List<Tool> tools;
  private final Fastener fastener;
  private final Rubs rubs;
  private final Variant variant;
  private final String path;
  private final List<Finding> findings = new ArrayList<>();

  private ClampRules(
      Spot spot, List<Tool> tools, Fastener fastener, Rubs rubs, Variant variant, String path) {
    this.spot = spot;
    this.tools = tools;
    this.fastener = fastener;
    this.rubs = rubs;
    this.variant = variant;
    this.path = path;
  }

  static List<Finding> check(Spot spot, List<Tool> tools) {
    List<Finding> findings = new ArrayList<>();
    Fastener fastener = spot.fastener().orElse(null);
    Optional<Rubs> rubs = spot.fastener().flatMap(Rubs::of);
    if (rubs.isEmpty()) {
      return findings;
    }
    for (int v = 0; v < fastener.variants().size(); v++) {
      Variant variant = fastener.variants().get(v);
      String path = "fastener/variants/" + v + "/stages/";
      findings.addAll(new ClampRules(spot, tools, fastener, rubs.get(), variant, path).judged());
    }
    return findings;
  }

  /** Whether a nut is of less than full height, so that it carries no class of bolt. */
  static boolean thin(NutClass nut) {
    return nut == NutClass.N04 || nut == NutClass.N05;
  }

  private List<Finding> judged() {
    Bolts.of(fastener, variant, PropertyClass.C12_9)
        .ifPresent(
            bolt -> {
              fastener.joint().sizes().clamped().ifPresent(clamped -> clamped(bolt, clamped));
              fastener.joint().nutClass().flatMap(NutClass::of).ifPresent(nut -> nut(bolt, nut));
              fastener.joint().tapped().ifPresent(tapped -> tapped(bolt, tapped));
              prevailing(bolt);
            });
    return findings;
  }

  private void clamped(Bolt bolt, Sizes.Clamped clamped) {
    Joint joint = Joints.usual(bolt, fastener);
    Force preload = preload(bolt, rubs.middle());
    if (bolt.seat().flat()) {
      pressure(bolt, clamped, preload);
    }
    int bearings = fastener.joint().tapped().isPresent() ? 1 : 2;
    Force lost =
        Embedding.of(Embedding.Roughness.FINE, Embedding.Load.AXIAL, bearings, 1)
            .loss(joint.stiffness());
    double share = lost.newtons() / preload.newtons();
    if (share > SETTLES) {
      String found =
          String.format(
              Locale.ROOT,
              "%.1f mm, where settling takes about %.0f %% of the preload",
              clamped.length().doubleValue(),
              share * 100);
      String expected = "a longer joint; from 3 diameters on it hardly matters";
      findings.add(spot.at("fastener/clamped/length", CheckRule.SHORT_CLAMP, found, expected));
    }
    band(joint);
  }

  private void pressure(Bolt bolt, Sizes.Clamped clamped, Force preload) {
    double outer =
        Math.min(
            bolt.seat().bearing().millimetres(),
            clamped.outer().map(BigDecimal::doubleValue).orElse(Double.MAX_VALUE));
    double inner =
        Math.max(
            bolt.seat().hole().millimetres(),
            clamped.inner().map(BigDecimal::doubleValue).orElse(0.0));
    if (inner >= outer) {
      String found =
          String.format(Locale.ROOT, "no ring between a hole of %.1f mm and %.1f mm", inner, outer);
      String expected = "a seat that bears, such as a washer";
      findings.add(spot.at(path + "0/torque", CheckRule.SEAT_CRUSHED, found, expected));
      return;
    }
    SeatMaterial material = strongest(clamped.material());
    SeatPressure pressure = SeatPressure.of(Seat.of(outer, inner), preload, material);
    if (!pressure.bears()) {
      String found =
          String.format(
              Locale.ROOT,
              "about %s under %.1f/%.1f mm at %s",
              pressure.pressure(),
              outer,
              inner,
              preload);
      String expected = "at most " + pressure.limit() + ", as " + material.words() + " bears";
      findings.add(spot.at(path + "0/torque", CheckRule.SEAT_CRUSHED, found, expected));
    }
  }

  private static SeatMaterial strongest(Fastener.Joint.Material material) {
    return switch (material) {
      case STEEL -> SeatMaterial.STEEL_34CRMO4;
      case CAST_IRON -> SeatMaterial.GJS_600;
      case ALUMINIUM -> SeatMaterial.AW_7075;
    };
  }

  private void band(Joint joint) {
    int last = variant.stages().size() - 1;
    double turn = AngleRules.turn(variant);
    if (turn > 0 && variant.stages().get(last) instanceof AngleStage angle) {
      Torque snug = AngleRules.snug(variant);
      Range<Torque> shown =
          new ExpectedTorque(
                  joint, snug, rubs.both(), ToolRules.wrench(tools, snug), ExpectedTorque.SOFTNESS)
              .after(Rotation.degrees(turn));
      angle
          .finalTorque()
          .filter(
              band ->
                  band.most().compareTo(shown.low()) < 0
                      || band.least().compareTo(shown.high()) > 0)
          .ifPresent(
              band ->
                  findings.add(
                      spot.at(
                          path + last + "/finalTorque/most",
                          CheckRule.BAND_ELSEWHERE,
                          band.least() + " to " + band.most(),
                          String.format(
                              Locale.ROOT,
                              "within %.0f to %.0f N·m",
                              shown.low().inNewtonMetres(),
                              shown.high().inNewtonMetres()))));
    }
  }

  /** Of a full nut on a bolt of a known class the classes alone are compared. */
  private void nut(Bolt bolt, NutClass nut) {
    boolean byClass = variant.marking().isPresent() && !thin(nut);
    Optional<Force> proof = byClass ? Optional.empty() : proof(bolt, nut);
    if (proof.isEmpty()) {
      return;
    }
    boolean surely = preload(bolt, rubs.both().high()).compareTo(proof.get()) > 0;
    boolean likely = preload(bolt, rubs.middle()).compareTo(proof.get()) > 0;
    if (surely || (likely && thin(nut))) {
      String found =
          String.format(
              Locale.ROOT,
              "a nut of class %s at about %s",
              nut,
              preload(bolt, surely ? rubs.both().high() : rubs.middle()));
      CheckRule rule = surely ? CheckRule.NUT_TOO_WEAK : CheckRule.THIN_NUT;
      findings.add(
          spot.at("fastener/nutClass", rule, found, "at most its proof load, " + proof.get()));
    }
  }

  /** ISO 898-2:2012: a thin nut of class 04 is proved with 380 MPa, of 05 with 500 MPa. */
  private static Optional<Force> proof(Bolt bolt, NutClass nut) {
    return switch (nut) {
      case N04 -> Optional.of(new Stress(380).on(bolt.thread().stressArea()));
      case N05 -> Optional.of(new Stress(500).on(bolt.thread().stressArea()));
      default -> nut.proofLoad(bolt.thread());
    };
  }

  private void tapped(Bolt bolt, Fastener.Joint.Tapped tapped) {
    Optional<Double> length = tapped.engagement().map(BigDecimal::doubleValue);
    if (length.isEmpty()) {
      return;
    }
    Engagement.Strength hole =
        switch (tapped.material()) {
          case STEEL -> Engagement.Strength.steel(1000);
          case CAST_IRON -> new Engagement.Strength(new Stress(600), 0.9);
          case ALUMINIUM -> Engagement.Strength.aluminium(500);
        };
    Force strips = strips(bolt, length.get(), hole);
    Force preload = preload(bolt, rubs.both().high());
    if (strips.compareTo(preload) < 0) {
      String found =
          String.format(Locale.ROOT, "%.1f mm of thread that strip at %s", length.get(), strips);
      String expected = "more than the preload, " + preload + " or more";
      findings.add(spot.at("fastener/engagement", CheckRule.THREAD_STRIPS, found, expected));
    }
  }

  /** Where the first thread has its chamfer, nothing carries. */
  private static Force strips(Bolt bolt, double length, Engagement.Strength hole) {
    if (length <= CHAMFER * bolt.thread().pitch().millimetres()) {
      return new Force(0);
    }
    Engagement thread = Engagement.tapped(bolt, Length.mm(length), hole);
    return Force.least(thread.innerStrips(), thread.boltStrips());
  }

  private void prevailing(Bolt bolt) {
    boolean locking = fastener.part().hardware() == Hardware.SELF_LOCKING_NUT;
    if (!locking || fastener.manner().runDown().isPresent()) {
      return;
    }
    NutClass nut = fastener.joint().nutClass().flatMap(NutClass::of).orElse(NutClass.N8);
    Torque torque = AngleRules.snug(variant);
    double most = AngleRules.turn(variant) > 0 ? EATEN_BEFORE_ANGLE : EATEN;
    PrevailingTorque.of(bolt.thread(), nut)
        .map(PrevailingTorque::firstOn)
        .filter(on -> on.inNewtonMetres() > most * torque.inNewtonMetres())
        .ifPresent(
            on ->
                findings.add(
                    spot.at(
                        path + "0/torque",
                        CheckRule.PREVAILING_EATS,
                        torque + ", of which the nut may need " + on,
                        "more torque, or \"runDown\"")));
  }

  /** The preload with one friction, at most that of breaking or, after an angle, of yield. */
  private Force preload(Bolt bolt, Friction friction) {
    double turn = AngleRules.turn(variant);
    Torque snug = AngleRules.snug(variant);
    Tightening way = turn > 0 ? Tightening.by(snug, Rotation.degrees(turn)) : Tightening.by(snug);
    return way.preload(bolt, Joints.usual(bolt, fastener).stiffness(), friction, friction);
  }
}
