package org.undercall.core.difference;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Dialled;
import org.undercall.core.procedure.DriveSize;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Variant;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Torque;

/** The fields of a fastener. */
final class FastenerFacts {
  private FastenerFacts() {}

  static void add(Facts facts, Fastener fastener, boolean single) {
    List<Variant> variants = fastener.variants();
    facts.put(
        Weight.TIGHTENS,
        "classes",
        variants.stream().map(v -> v.marking().map(HeadMarking::text).orElse("any")).toList());
    for (Variant variant : variants) {
      String of = variant.marking().filter(m -> !single).map(m -> "class " + m + ", ").orElse("");
      for (int i = 0; i < variant.stages().size(); i++) {
        stage(facts, of + "stage " + (i + 1) + " ", variant.stages().get(i));
      }
    }
    facts
        .put(Weight.TIGHTENS, "load condition", fastener.needs())
        .put(Weight.TIGHTENS, "count", String.valueOf(fastener.set().count()))
        .put(
            Weight.TIGHTENS, "order", fastener.set().order().stream().map(String::valueOf).toList())
        .put(Weight.TIGHTENS, "thread", fastener.thread())
        .put(Weight.TIGHTENS, "socket", drive(fastener))
        .put(Weight.TEXT, "name", fastener.name());
    part(facts, fastener.part());
    manner(facts, fastener.manner());
    joint(facts, fastener.joint());
  }

  /** The size as it is stamped, and exactly where two sizes would be shown alike. */
  private static String drive(Fastener fastener) {
    String shown = DriveSize.shown(fastener.drive());
    return shown.endsWith(" in") ? shown + " = " + Facts.number(fastener.drive()) + " mm" : shown;
  }

  private static void part(Facts facts, Fastener.Part part) {
    facts
        .put(Weight.TIGHTENS, "new hardware each time", part.oneTimeUse())
        .put(Weight.TIGHTENS, "renewed because", part.renew().stream().map(Kebab::of).toList())
        .put(
            Weight.TIGHTENS,
            "may be used again",
            part.reuse().map(r -> "up to " + Facts.number(r.most()) + " " + Kebab.of(r.by())))
        .put(Weight.TIGHTENS, "lubrication", part.lubrication())
        .put(Weight.TIGHTENS, "hardware", part.hardware());
  }

  private static void manner(Facts facts, Fastener.Manner manner) {
    facts
        .put(Weight.TIGHTENS, "left-hand thread", manner.leftHand())
        .put(Weight.TIGHTENS, "by hand first", manner.byHand())
        .put(Weight.TIGHTENS, "run-down torque", manner.runDown().map(Kebab::of))
        .put(Weight.TIGHTENS, "cure", manner.cure().map(Facts::time))
        .put(Weight.WORK, "held with", manner.counterHold());
  }

  private static void joint(Facts facts, Fastener.Joint joint) {
    facts
        .put(Weight.TIGHTENS, "holds a wheel", joint.wheel())
        .put(Weight.TIGHTENS, "class of the nut", joint.nutClass())
        .put(Weight.WORK, "joint", joint.kind().map(Kebab::of))
        .put(Weight.WORK, "arm", joint.arm())
        .put(Weight.WORK, "reason of the load condition", joint.reason())
        .put(Weight.WORK, "tapped into", joint.tapped().map(t -> Kebab.of(t.material())))
        .amount(Weight.WORK, "engagement", joint.tapped().flatMap(t -> t.engagement()), " mm");
    clamped(facts, joint.sizes().clamped());
    seat(facts, joint.sizes().seat());
    facts
        .put(Weight.WORK, "friction in the thread", friction(joint, true))
        .put(Weight.WORK, "friction of the seat", friction(joint, false));
  }

  private static Optional<String> friction(Fastener.Joint joint, boolean thread) {
    return joint
        .sizes()
        .friction()
        .map(known -> thread ? known.thread() : known.seat())
        .map(span -> Facts.number(span.least()) + " to " + Facts.number(span.most()));
  }

  private static void clamped(Facts facts, Optional<Sizes.Clamped> clamped) {
    facts
        .amount(Weight.WORK, "clamped length", clamped.map(Sizes.Clamped::length), " mm")
        .amount(Weight.WORK, "shank length", clamped.flatMap(Sizes.Clamped::shank), " mm")
        .amount(Weight.WORK, "clamped outer", clamped.flatMap(Sizes.Clamped::outer), " mm")
        .amount(Weight.WORK, "clamped inner", clamped.flatMap(Sizes.Clamped::inner), " mm")
        .put(Weight.WORK, "clamped material", clamped.map(c -> Kebab.of(c.material())));
  }

  private static void seat(Facts facts, Optional<Sizes.Ring> seat) {
    facts
        .put(Weight.WORK, "seat", seat.map(ring -> Kebab.of(ring.shape())))
        .amount(Weight.WORK, "seat outer", seat.flatMap(Sizes.Ring::outer), " mm")
        .amount(Weight.WORK, "seat inner", seat.flatMap(Sizes.Ring::inner), " mm")
        .amount(Weight.WORK, "seat angle", seat.flatMap(Sizes.Ring::angle), "°");
  }

  private static void stage(Facts facts, String of, Stage stage) {
    if (stage instanceof Stage.TorqueStage torque) {
      torque(facts, of, torque);
      return;
    }
    Stage.AngleStage angle = (Stage.AngleStage) stage;
    facts
        .put(Weight.TIGHTENS, of + "angle", angle.target().degrees(), "°")
        .put(Weight.TIGHTENS, of + "tolerance", angle.plusMinus(), "°")
        .put(Weight.TIGHTENS, of + "backs off", angle.backOff())
        .put(Weight.TIGHTENS, of + "beyond yield", angle.beyondYield().map(b -> b ? "yes" : "no"));
    angle
        .finalTorque()
        .ifPresent(
            band ->
                facts
                    .torque(Weight.TIGHTENS, of + "least torque after", band.least())
                    .torque(Weight.TIGHTENS, of + "most torque after", band.most()));
  }

  private static void torque(Facts facts, String of, Stage.TorqueStage torque) {
    if (torque.form() == Stage.TorqueStage.Form.RANGE) {
      Torque target = torque.target();
      BigDecimal half = torque.plusMinus();
      facts
          .moment(Weight.TIGHTENS, of + "least", target.amount().subtract(half), target.unit())
          .moment(Weight.TIGHTENS, of + "most", target.amount().add(half), target.unit());
    } else {
      facts
          .torque(Weight.TIGHTENS, of + "torque", torque.target())
          .moment(Weight.TIGHTENS, of + "tolerance", torque.plusMinus(), torque.target().unit());
    }
    facts.put(Weight.TIGHTENS, of + "form", torque.form());
    Optional<Dialled> dialled = torque.dialled();
    dialled.ifPresent(d -> facts.torque(Weight.TIGHTENS, of + "setting", d.setting()));
    facts
        .amount(Weight.TIGHTENS, of + "wrench length", dialled.map(Dialled::wrench), " mm")
        .amount(Weight.TIGHTENS, of + "extension", dialled.map(Dialled::extension), " mm")
        .amount(Weight.TIGHTENS, of + "adaptor angle", dialled.map(Dialled::angle), "°");
  }
}
