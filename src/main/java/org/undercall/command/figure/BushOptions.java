package org.undercall.command.figure;

import java.util.ArrayList;
import java.util.List;
import org.undercall.adapter.report.Figure.Item;
import org.undercall.core.fastening.ArmSwing;
import org.undercall.core.fastening.BondedBush;
import org.undercall.core.fastening.BushAtRest;
import org.undercall.core.fastening.Height;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.Stress;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** The sizes of a bush and its rubber, for the moment that its twist leaves in it. */
final class BushOptions {
  @Option(
      names = "--bush",
      arity = "3",
      paramLabel = "MM",
      description = "Inner and outer diameter of the rubber and its length; needs --shear.")
  private double[] sizes;

  @Option(
      names = "--shear",
      paramLabel = "MPA",
      description = "Shear modulus of the rubber, about 0.4 to 1.5 (common practice, no source).")
  private Double shear;

  @Option(
      names = "--other-at",
      paramLabel = "MM",
      description = "Height at which the bush of the other side was tightened; needs --bush.")
  private Double other;

  private boolean known() throws Fault {
    if ((sizes == null) != (shear == null) || (other != null && sizes == null)) {
      throw new Fault(
          FigureCode.NO_BUSH,
          sizes == null ? "--bush" : "--shear",
          "nothing",
          "--bush INNER OUTER LENGTH and --shear");
    }
    return sizes != null;
  }

  /** What is added to the formula. */
  String formula() throws Fault {
    return known() ? "; moment = 4 π G L twist/(1/ri² - 1/ro²)" : "";
  }

  List<Item> inputs() throws Fault {
    if (!known()) {
      return List.of();
    }
    List<Item> items = new ArrayList<>();
    items.add(Item.words("rubber", sizes[0] + " to " + sizes[1] + " mm, " + sizes[2] + " mm long"));
    items.add(Item.number("shear modulus G of the rubber", shear, 2, "MPa"));
    if (other != null) {
      items.add(Item.number("height when the other side was tightened", other, 1, "mm"));
    }
    return items;
  }

  List<Item> results(ArmSwing swing, Height here) throws Fault {
    if (!known()) {
      return List.of();
    }
    BondedBush bush =
        new BondedBush(
            Length.mm(sizes[0] / 2),
            Length.mm(sizes[1] / 2),
            Length.mm(sizes[2]),
            new Stress(shear));
    BushAtRest rests = new BushAtRest(swing, bush);
    BushAtRest.Rest rest = rests.tightenedAt(here);
    List<Item> items = new ArrayList<>();
    items.add(Item.number("moment kept at ride height", rest.moment().newtonMetres(), 1, "N·m"));
    items.add(
        Item.number(
            "force of it at the outer joint", rests.atOuterJoint(rest.moment()).newtons(), 0, "N"));
    items.add(Item.number("shear strain at the inner sleeve at rest", rest.strain() * 100, 0, "%"));
    items.add(Item.number("largest over the travel", rest.worstStrain() * 100, 0, "%"));
    if (other != null) {
      double more = rests.leftOverRight(here, Height.mm(other)).newtonMetres();
      items.add(Item.number("moment more than on the other side", more, 1, "N·m"));
    }
    return items;
  }
}
