package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.adapter.report.Figure.Part;
import org.undercall.core.fastening.Bolt;
import org.undercall.core.fastening.Deviation;
import org.undercall.core.fastening.Embedding;
import org.undercall.core.fastening.Engagement;
import org.undercall.core.fastening.Expansion;
import org.undercall.core.fastening.Force;
import org.undercall.core.fastening.ForceChange;
import org.undercall.core.fastening.Friction;
import org.undercall.core.fastening.JointStiffness;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.LongForm;
import org.undercall.core.fastening.NutClass;
import org.undercall.core.fastening.PrevailingTorque;
import org.undercall.core.fastening.Range;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.SeatMaterial;
import org.undercall.core.fastening.SeatPressure;
import org.undercall.core.term.Torque;
import org.undercall.port.Fault;

/** What can be said of the parts around a bolt. */
record JointHold(
    JointCase worked,
    HoldOptions hold,
    JointOptions sizes,
    Optional<Taken> taken,
    Deviation wrench) {
  private static final String VDI = "VDI 2230 Part 1";
  private static final String STRONG =
      "the most preload is that of a bolt up to 1.2 times as strong as the least of its class";

  List<Part> parts() throws Fault {
    List<Part> parts = new ArrayList<>();
    worked.turn().ifPresent(turn -> parts.add(torqueAfter(turn)));
    parts.add(seat());
    Optional<NutClass> nut = hold.nut(sizes, taken);
    if (nut.isPresent()) {
      parts.add(nut(nut.get()));
    }
    Optional<Double> engaged = hold.engagement(sizes, taken);
    if (engaged.isPresent()) {
      parts.add(tapped(engaged.get()));
    }
    if (hold.roughness().isPresent()) {
      parts.add(embedded());
    }
    hold.warmer().ifPresent(kelvin -> parts.add(warmed(kelvin)));
    return parts;
  }

  private Bolt bolt() {
    return worked.joint().bolt();
  }

  private Part torqueAfter(Rotation turn) {
    return new Part(
        "Torque to expect after the angle",
        "T = (0.16 P + 0.58 d2 µ + DKm/2 µ) F(angle)",
        List.of(
            TorqueAngleFigure.torques(
                "torque shown after the angle", worked.expected(wrench).after(turn))),
        VDI + "; yield up to 1.2 times the least of its class",
        "joint a fifth softer or stiffer (a choice of this program); outside is a hint to look,"
            + " inside proves nothing");
  }

  private Part seat() {
    Force most = worked.most();
    List<Item> items = new ArrayList<>();
    double pressure = bolt().seat().area().under(most).megapascals();
    items.add(kilonewtons("the most preload, of a strong bolt", most));
    items.add(Item.number("pressure then", pressure, 0, "MPa"));
    String assumption = STRONG + "; an even pressure on the ring, also of a cone or ball";
    Optional<SeatMaterial> under = hold.under();
    if (under.isEmpty()) {
      items.add(Item.words("limit", "not known without the material under it"));
    } else {
      SeatPressure judged = SeatPressure.of(bolt().seat(), most, under.get());
      items.add(Item.number("limit pG", judged.limit().megapascals(), 0, "MPa"));
      items.add(Item.number("limit over pressure", judged.safety(), 2, ""));
      items.add(Item.words("verdict", judged.bears() ? "bears it" : "too much: the seat creeps"));
      assumption +=
          under.get().checked()
              ? ""
              : "; the table marks this limit as not checked against the latest research";
    }
    return new Part(
        "Pressure under head or nut",
        "p = F/A of the ring",
        items,
        VDI + ", 5.5.4 and table A9 of 2003, read in a supplier's printing",
        assumption);
  }

  private Part nut(NutClass nut) {
    List<Item> items = new ArrayList<>();
    boolean carries = nut.carries(bolt().strength());
    items.add(
        Item.words(
            "class " + nut + " under a bolt of " + bolt().strength(),
            carries
                ? "carries it fully"
                : "too low: at least " + NutClass.leastFor(bolt().strength())));
    Optional<Force> proof = nut.proofLoad(bolt().thread());
    if (proof.isPresent()) {
      items.add(Item.number("proof load of the nut", proof.get().inKilonewtons(), 1, "kN"));
      items.add(margin(proof.get()));
    } else {
      items.add(Item.words("proof load of the nut", "not at hand for this thread"));
    }
    if (hold.locking()) {
      items.addAll(locking(nut));
    }
    return new Part(
        "Nut",
        "margin = proof load over the most preload; what clamps = torque less what prevails",
        items,
        "ISO 898-2:2012 (coarse read in suppliers' printings, fine from memory); ISO 2320 from"
            + " memory",
        STRONG + "; a nut of full height");
  }

  private Item margin(Force holds) {
    return Item.number(
        "that over the most preload", holds.newtons() / worked.most().newtons(), 2, "");
  }

  private List<Item> locking(NutClass nut) {
    Optional<PrevailingTorque> prevails = PrevailingTorque.of(bolt().thread(), nut);
    if (prevails.isEmpty()) {
      return List.of(Item.words("torque that prevails", "not at hand for this nut"));
    }
    Range<Torque> left = prevails.get().left(worked.torque());
    Range<Friction> friction = worked.both();
    LongForm form = LongForm.of(bolt());
    Range<Force> clamps =
        new Range<>(
            form.preload(left.low(), friction.high(), friction.high()),
            form.preload(left.high(), friction.low(), friction.low()));
    return List.of(
        Item.number(
            "torque that prevails at first, at most",
            prevails.get().firstOn().inNewtonMetres(),
            1,
            "N·m"),
        Item.number(
            "torque to unscrew, at least, or it locks no more",
            prevails.get().firstOff().inNewtonMetres(),
            1,
            "N·m"),
        TorqueAngleFigure.torques("torque left for clamping", left),
        PreloadFigure.forces("preload by that torque", clamps));
  }

  private Part tapped(double length) {
    Optional<Engagement> engaged =
        sizes
            .tapped()
            .flatMap(hold::strength)
            .map(s -> Engagement.tapped(bolt(), Length.mm(length), s));
    List<Item> items = new ArrayList<>();
    if (engaged.isEmpty()) {
      items.add(Item.words("stripping", "not known without the strength tapped into"));
    } else {
      stripping(engaged.get(), items);
    }
    return new Part(
        "Tapped hole",
        "F = τB AS C1 C; AS by length, pitch and overlap of the threads",
        items,
        "E. M. Alexander's method, " + VDI + ", 5.5.5, from memory",
        STRONG + "; basic sizes, least strengths, a sound thread without an insert");
  }

  private void stripping(Engagement engaged, List<Item> items) {
    items.add(kilonewtons("the hole strips at", engaged.innerStrips()));
    items.add(kilonewtons("the bolt's thread strips at", engaged.boltStrips()));
    items.add(kilonewtons("the bolt breaks at", engaged.boltBreaks()));
    items.add(
        Item.words(
            "what gives way first",
            switch (engaged.first()) {
              case BOLT_BREAKS -> "the bolt, as it should";
              case BOLT_THREAD_STRIPS -> "the thread of the bolt, unseen";
              case INNER_THREAD_STRIPS -> "the thread of the hole, unseen";
            }));
    items.add(margin(engaged.holds()));
    items.add(Item.number("length for the bolt to break", engaged.needed().millimetres(), 1, "mm"));
  }

  private static Item kilonewtons(String name, Force force) {
    return Item.number(name, force.inKilonewtons(), 1, "kN");
  }

  /** What the surfaces flatten by. */
  static Embedding embedding(HoldOptions hold, JointOptions sizes) {
    int bearings = sizes.tapped().isPresent() ? 1 : 2;
    return Embedding.of(hold.roughness().orElseThrow(), hold.load(), bearings, hold.interfaces());
  }

  private Part embedded() {
    Embedding embedding = embedding(hold, sizes);
    JointStiffness springs = worked.joint().stiffness();
    Range<Force> before = worked.stack().worstCase();
    return new Part(
        "Embedding",
        "FZ = fZ/(δS + δP)",
        List.of(
            Item.number("flattening fZ", embedding.micrometres(), 1, "µm"),
            kilonewtons("preload it costs", embedding.loss(springs)),
            SpreadOptions.forces(
                "preload left",
                before.map(f -> embedding.left(f, springs)),
                embedding.left(worked.nominal(), springs))),
        VDI + ", table 5, from memory",
        "solid metal parts within their pressure; paint, soft coatings and gaskets flatten far more");
  }

  private Part warmed(double kelvin) {
    Expansion parts =
        switch (sizes.material()) {
          case STEEL -> Expansion.STEEL;
          case CAST_IRON -> Expansion.GREY_IRON;
          case ALUMINIUM -> Expansion.ALUMINIUM;
        };
    ForceChange change =
        Expansion.STEEL.change(
            worked.joint().stiffness(), worked.joint().body().clamped(), parts, kelvin);
    Range<Force> before = worked.stack().worstCase();
    return new Part(
        "Temperature",
        "ΔF = (αP - αS) ΔT lK/(δS + δP)",
        List.of(
            Item.number("change of preload", change.inKilonewtons(), 1, "kN"),
            SpreadOptions.forces(
                "preload then", before.map(change::on), change.on(worked.nominal()))),
        VDI + ", 5.4.2.3; coefficients from memory, alloys differ by about 5 %",
        "bolt of steel, all equally warm; yielding, which ends a gain, is left out");
  }
}
