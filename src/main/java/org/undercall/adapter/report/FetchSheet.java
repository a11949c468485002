package org.undercall.adapter.report;

import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.LayOut;
import org.undercall.core.procedure.Procedure;
import org.undercall.text.Markup;

/** What to fetch before the work, as one upright page for the wall with boxes to tick. */
public final class FetchSheet {
  private static final String BOX = "☐ ";

  private FetchSheet() {}

  /**
   * The sheet as a page of HTML without scripts, well formed as XML too.
   *
   * @param took how long the work took before, in words; empty if nothing is known of it
   * @param letter whether the paper is Letter rather than A4
   */
  public static String of(Procedure procedure, Optional<String> took, boolean letter) {
    LayOut layOut = LayOut.of(procedure);
    Markup m = new Markup();
    String title = "To fetch: " + procedure.about().title();
    PageHead.begin(
        m,
        title,
        "What to fetch before the work",
        letter ? "letter" : "A4",
        new PageHead.Edges("", "what to fetch"));
    m.open("body").open("main");
    m.leaf("h1", title);
    m.leaf("p", procedure.about().vehicle() + ". Revision " + procedure.about().revision() + ".");
    m.open("p", "class", "warning")
        .leaf("strong", "Values: " + procedure.about().values())
        .closeLine();
    m.leaf("p", "Vehicle ______________   Date ____________   Name ______________");
    took.ifPresent(time -> m.leaf("p", "Time at work so far: " + time + "."));
    parts(m, layOut.newParts());
    list(m, "Used up", WalkText.usedUp(layOut.supplies()));
    list(m, "Tools", WalkText.tools(layOut));
    List<String> supports = List.copyOf(layOut.supplies().supports());
    list(m, "What carries", supports);
    m.leaf("p", "A new part that is missing stays missing: a used one never takes its place here.");
    m.close().close().closeLine();
    return m.toString();
  }

  private static void parts(Markup m, List<LayOut.Part> parts) {
    if (parts.isEmpty()) {
      m.leaf("p", "No new parts are asked for by the procedure.");
      return;
    }
    m.leaf("h2", "New parts, for all sides");
    Table table =
        Table.begin(m, "New parts", List.of("There|10", "Missing|12", "How many|13", "What|65"));
    for (LayOut.Part part : parts) {
      table.row(BOX, BOX, "" + part.count(), WalkText.what(part));
    }
    table.end();
  }

  private static void list(Markup m, String heading, List<String> items) {
    if (!items.isEmpty()) {
      m.leaf("h2", heading).open("ul");
      items.forEach(item -> m.leaf("li", BOX + item));
      m.closeLine();
    }
  }
}
