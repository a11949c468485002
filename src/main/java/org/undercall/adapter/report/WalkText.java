package org.undercall.adapter.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.decision.WalkThrough.Exchange;
import org.undercall.core.procedure.DriveSize;
import org.undercall.core.procedure.LayOut;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Supplies;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.StepRef;

/** A procedure as text of 80 columns: what to lay out, and the walk as it is heard and answered. */
public final class WalkText {
  private WalkText() {}

  /** The text. */
  public static String of(Walk walk, List<Exchange> exchanges) {
    return of(walk, exchanges, Optional.empty());
  }

  /**
   * The text.
   *
   * @param took how long the work took before, in words; empty if nothing is known of it
   */
  public static String of(Walk walk, List<Exchange> exchanges, Optional<String> took) {
    Lines lines = new Lines();
    Procedure procedure = walk.procedure();
    lines.add(0, procedure.about().title());
    lines.add(0, procedure.about().vehicle());
    lines.add(0, "Revision " + procedure.about().revision() + ", " + procedure.about().author());
    lines.add(0, "Values: " + procedure.about().values());
    addLayOut(lines, LayOut.of(procedure));
    took.ifPresent(time -> lines.add(0, "Time at work so far: " + time));
    addWalk(lines, walk, exchanges);
    lines.heading("These are the answers of somebody who does just what is asked. Of several head");
    lines.add(0, "markings the last is read out; a measured value is the least that is permitted.");
    return lines.toString();
  }

  private static void addLayOut(Lines lines, LayOut layOut) {
    lines.heading("lay out before you start");
    items(layOut).forEach(item -> lines.add(1, item));
  }

  /** What to lay out, a line each: tools first, then what carries, what is used up and new. */
  static List<String> items(LayOut layOut) {
    List<String> items = new ArrayList<>(tools(layOut));
    items.addAll(layOut.supplies().supports());
    items.addAll(usedUp(layOut.supplies()));
    layOut.newParts().forEach(part -> items.add("new: " + part.count() + " × " + what(part)));
    return List.copyOf(items);
  }

  /** The tools to lay out, a line each. */
  static List<String> tools(LayOut layOut) {
    List<String> items = new ArrayList<>();
    layOut
        .drives()
        .forEach(
            (size, names) ->
                items.add(
                    "socket or key " + DriveSize.shown(size) + ": " + String.join(", ", names)));
    layOut.wrenches().forEach(tool -> items.add("torque wrench " + wrench(tool)));
    if (layOut.angles()) {
      items.add("something to measure the angle with");
    }
    if (!layOut.adaptors().isEmpty()) {
      items.add("open-ring head or extension: " + String.join(", ", layOut.adaptors()));
    }
    if (!layOut.units().isEmpty()) {
      items.add("something to measure in " + String.join(", ", layOut.units()));
    }
    layOut.supplies().holders().forEach((with, names) -> items.add(heldWith(with, names)));
    return List.copyOf(items);
  }

  private static String heldWith(String with, Set<String> names) {
    return "to hold the other end: " + with + " (" + String.join(", ", names) + ")";
  }

  /** What is used up, a line each, with what it is for. */
  static List<String> usedUp(Supplies supplies) {
    return supplies.usedUp().entrySet().stream()
        .map(of -> of.getKey() + ": " + String.join(", ", of.getValue()))
        .toList();
  }

  private static String wrench(Tool tool) {
    return tool.id()
        + ", "
        + tool.least()
        + " to "
        + tool.most()
        + tool.calibrated().map(day -> ", calibrated " + day).orElse("");
  }

  /** What a part is; of several head markings the one that is stamped on the kit decides. */
  static String what(LayOut.Part part) {
    String markings =
        part.markings().isEmpty() ? "" : ", head marking " + String.join(" or ", part.markings());
    String ofNut = part.nutClass().map(of -> ", nut class " + of).orElse("");
    return part.name() + " " + part.thread() + markings + ofNut;
  }

  private static void addWalk(Lines lines, Walk walk, List<Exchange> exchanges) {
    Optional<StepRef> before = Optional.empty();
    for (Exchange exchange : exchanges) {
      StepRef ref = walk.places().get(exchange.place()).ref();
      if (!before.equals(Optional.of(ref))) {
        int number = exchange.place() + 1;
        lines.heading("step " + number + ", " + Labels.side(ref.side()) + " (" + ref.id() + ")");
        before = Optional.of(ref);
      }
      lines.add(1, "hear  " + String.join(" ", exchange.heard()));
      exchange.answer().ifPresent(answer -> lines.add(1, "say   " + answer));
    }
  }
}
