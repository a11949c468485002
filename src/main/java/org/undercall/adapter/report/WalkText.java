package org.undercall.adapter.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.decision.WalkThrough.Exchange;
import org.undercall.core.procedure.DriveSize;
import org.undercall.core.procedure.LayOut;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.StepRef;

/** A procedure as text of 80 columns: what to lay out, and the walk as it is heard and answered. */
public final class WalkText {
  private WalkText() {}

  /** The text. */
  public static String of(Walk walk, List<Exchange> exchanges) {
    Lines lines = new Lines();
    Procedure procedure = walk.procedure();
    lines.add(0, procedure.about().title());
    lines.add(0, procedure.about().vehicle());
    lines.add(0, "Revision " + procedure.about().revision() + ", " + procedure.about().author());
    lines.add(0, "Values: " + procedure.about().values());
    addLayOut(lines, LayOut.of(procedure));
    addWalk(lines, walk, exchanges);
    lines.heading("These are the answers of somebody who does just what is asked. Of several head");
    lines.add(0, "markings the last is read out; a measured value is the least that is permitted.");
    return lines.toString();
  }

  private static void addLayOut(Lines lines, LayOut layOut) {
    lines.heading("lay out before you start");
    items(layOut).forEach(item -> lines.add(1, item));
  }

  /** What to lay out, a line each. */
  static List<String> items(LayOut layOut) {
    java.util.ArrayList<String> items = new java.util.ArrayList<>();
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
    layOut.newParts().forEach(part -> items.add(part(part)));
    return List.copyOf(items);
  }

  private static String wrench(Tool tool) {
    return tool.id()
        + ", "
        + tool.least()
        + " to "
        + tool.most()
        + tool.calibrated().map(day -> ", calibrated " + day).orElse("");
  }

  private static String part(LayOut.Part part) {
    String markings =
        part.markings().isEmpty()
            ? ""
            : ", head marking " + part.markings().stream().collect(Collectors.joining(" or "));
    return "new: " + part.count() + " × " + part.name() + " " + part.thread() + markings;
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
