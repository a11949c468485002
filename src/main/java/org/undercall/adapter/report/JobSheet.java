package org.undercall.adapter.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.LayOut;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.ReuseBy;
import org.undercall.text.Markup;

/** A procedure as a sheet of paper with blank fields, for when nothing can be spoken. */
public final class JobSheet {
  private static final String BLANK = "______";
  private static final String BOX = "☐";

  private JobSheet() {}

  /**
   * The sheet as a page of HTML without scripts, well formed as XML too.
   *
   * @param letter whether the paper is Letter rather than A4
   */
  public static String of(Walk walk, boolean letter) {
    Procedure procedure = walk.procedure();
    Markup m = new Markup();
    String title = "Job sheet: " + procedure.about().title();
    PageHead.begin(
        m,
        title,
        "Job sheet to fill in by hand",
        letter ? "letter landscape" : "A4 landscape",
        new PageHead.Edges("", "job sheet"));
    m.open("body").open("main");
    m.leaf("h1", title);
    m.leaf(
        "p",
        procedure.about().vehicle()
            + ". Revision "
            + procedure.about().revision()
            + ", "
            + procedure.about().author()
            + ".");
    m.open("p", "class", "warning")
        .leaf("strong", "Values: " + procedure.about().values())
        .closeLine();
    m.leaf("h2", "Cautions").open("ul");
    procedure.cautions().forEach(caution -> m.leaf("li", caution.text()));
    m.closeLine();
    m.leaf("p", "Vehicle ____________________   Date ______________   Name ____________________");
    m.leaf("h2", "Lay out before you start").open("ul");
    WalkText.items(LayOut.of(procedure)).forEach(item -> m.leaf("li", BOX + " " + item));
    m.closeLine();
    addSteps(m, walk);
    m.leaf("p", "What is written here is what was done and read by hand; nothing checked it.");
    m.close().close().closeLine();
    return m.toString();
  }

  private static void addSteps(Markup m, Walk walk) {
    m.leaf("h2", "Steps");
    Table table =
        Table.begin(
            m,
            "Steps in order",
            List.of(
                "No.|6", "Side|8", "What|34", "Needs|14", "Specified|20", "Done, value, time|18"));
    int number = 0;
    for (Walk.Place place : walk.places()) {
      number++;
      Step step = place.step();
      table.row(
          number + "",
          Labels.side(place.ref().side()),
          what(step),
          needs(step),
          specified(step),
          BOX + " " + BLANK + " " + BLANK);
    }
    table.end();
  }

  private static String what(Step step) {
    String cautions =
        step.head().cautions().stream().map(c -> " " + c).collect(Collectors.joining());
    Optional<String> check = step instanceof Step.Do work ? work.check() : Optional.empty();
    return step.head().title() + "." + cautions + check.map(c -> " " + c).orElse("");
  }

  private static String needs(Step step) {
    if (step instanceof Step.Load load) {
      return words(load.condition());
    }
    if (step instanceof Step.Fasten fasten) {
      Fastener fastener = fasten.fastener();
      String load = words(fastener.needs());
      String part = fastener.part().oneTimeUse() ? "new " + BOX + used(fastener.part()) : "";
      return List.of(load, part).stream()
          .filter(w -> !w.isEmpty())
          .collect(Collectors.joining(", "));
    }
    return "";
  }

  /** The place for what is measured or counted of a used part. */
  private static String used(Fastener.Part part) {
    return part.reuse()
        .map(
            limit ->
                limit.by() == ReuseBy.LENGTH
                    ? " or length ____ mm, at most " + limit.most().toPlainString()
                    : " or used ____ times, at most " + limit.mostBefore().toPlainString())
        .orElse("");
  }

  private static String words(LoadCondition condition) {
    return switch (condition) {
      case ANY -> "";
      case RIDE_HEIGHT -> "ride height " + BOX;
      case FULL_DROOP -> "full droop " + BOX;
    };
  }

  private static String specified(Step step) {
    if (step instanceof Step.Measure measure) {
      String least = measure.limits().least().map(v -> v.toPlainString() + " to ").orElse("to ");
      String most = measure.limits().most().map(v -> v.toPlainString()).orElse("...");
      return least + most + " " + measure.unit().symbol();
    }
    if (step instanceof Step.Wait wait) {
      return "wait " + wait.time().toSeconds() + " s";
    }
    if (step instanceof Step.HandOver handOver) {
      return handOver.due();
    }
    return step instanceof Step.Fasten fasten ? stages(fasten.fastener()) : "";
  }

  private static String stages(Fastener fastener) {
    return fastener.variants().stream().map(JobSheet::stages).collect(Collectors.joining("; "));
  }

  private static String stages(Variant variant) {
    String marking = variant.marking().map(m -> m.text() + " " + BOX + ": ").orElse("");
    return variant.stages().stream()
        .map(JobSheet::stage)
        .collect(Collectors.joining(", then ", marking, ""));
  }

  private static String stage(Stage stage) {
    if (stage instanceof Stage.TorqueStage torque) {
      String dialled = torque.dialled().map(d -> " (dial " + d.setting() + ")").orElse("");
      String check = torque.form() == Stage.TorqueStage.Form.CHECK_PASS ? "check pass " : "";
      return check + StageWords.specified(torque) + dialled;
    }
    boolean back = stage instanceof Stage.AngleStage angle && angle.backOff();
    return (back ? "back off " : "") + StageWords.specified(stage);
  }
}
