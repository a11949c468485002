package org.undercall.adapter.report;

import java.util.List;
import org.undercall.core.procedure.DriveSize;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.StepReview;
import org.undercall.core.review.ToolState;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.text.Markup;

/** The table of fasteners: a row for each stage, a group of rows for each fastener. */
final class FastenerTable {
  private static final List<String> COLUMNS =
      List.of(
          "Side, step|12",
          "Fastener|11",
          "Head marking|7",
          "New hardware|9",
          "Load condition, how confirmed|12",
          "Stage|6",
          "Specified|9",
          "Wrench setting|8",
          "Called|8",
          "When|7",
          "Tool and calibration|11");

  private static final String TOOLS =
      "Tools: the wrench is the one that was named aloud; nothing is inferred where none was. Its"
          + " calibration is judged by 12 months (ISO 6789-1:2017) on the day of the last entry.";

  private final Dossier dossier;
  private final Labels labels;

  FastenerTable(Dossier dossier) {
    this.dossier = dossier;
    this.labels = new Labels(dossier);
  }

  void add(Markup m) {
    List<StepReview> steps =
        dossier.review().steps().stream()
            .filter(step -> step.place().step() instanceof Step.Fasten)
            .toList();
    m.leaf("h2", "Fasteners", "id", "fasteners");
    if (steps.isEmpty()) {
      m.leaf("p", "The procedure has no fastener.");
      return;
    }
    m.leaf("p", ReviewWords.CALLED_NOT_MEASURED, "class", "strong");
    m.leaf("p", String.join(" ", EndSections.CAUTIONS));
    Table.head(m, "Fasteners, stage by stage", COLUMNS);
    steps.forEach(step -> fastener(m, step));
    Table.end(m);
    m.leaf("p", TOOLS);
  }

  private void fastener(Markup m, StepReview step) {
    Fastener fastener = ((Step.Fasten) step.place().step()).fastener();
    List<StepReview.StageReview> stages = step.tightened().stages();
    String rows = "" + Math.max(1, stages.size());
    m.open("tbody", "class", "keep").open("tr");
    m.leaf("th", labels.step(step.place().ref()), "scope", "rowgroup", "rowspan", rows);
    for (String cell : about(step, fastener)) {
      m.leaf("td", cell, "rowspan", rows);
    }
    if (stages.isEmpty()) {
      String unknown = "depends on the head marking";
      m.leaf("td", unknown, "colspan", "6").close();
    }
    for (int i = 0; i < stages.size(); i++) {
      if (i > 0) {
        m.open("tr");
      }
      boolean last = i == stages.size() - 1;
      String read =
          last ? ReviewWords.finalTorque(step.tightened()).map(t -> "; then " + t).orElse("") : "";
      stage(m, i + 1, stages.get(i), fastener.set().count(), read);
      m.close();
    }
    m.closeLine();
  }

  private List<String> about(StepReview step, Fastener fastener) {
    StepReview.Tightened tightened = step.tightened();
    String set = fastener.set().count() == 1 ? "" : fastener.set().count() + " × ";
    String what =
        set
            + fastener.name()
            + ", "
            + fastener.thread()
            + ", socket "
            + DriveSize.shown(fastener.drive())
            + ", "
            + ReviewWords.plain(fastener.part().lubrication());
    String marking =
        tightened
            .marking()
            .map(m -> m + otherSide(step, m))
            .orElse(fastener.dependsOnMarking() ? lacking(step, "NOT READ") : "not asked for");
    String hardware = hardware(step, fastener.part());
    if (fastener.manner().byHand()) {
      hardware += tightened.byHand().map(at -> ", run in by hand " + labels.time(at)).orElse("");
    }
    return List.of(what, marking, hardware, load(fastener, step));
  }

  /** New hardware or a used part, and why it is asked for. */
  private String hardware(StepReview step, Fastener.Part part) {
    if (!part.oneTimeUse()) {
      return "not required";
    }
    String confirmed =
        step.tightened()
            .newHardware()
            .map(at -> "confirmed " + labels.time(at))
            .or(
                () ->
                    step.tightened()
                        .reused()
                        .map(
                            used ->
                                "USED AGAIN, "
                                    + ReviewWords.reused(used.event().by(), used.event().value())
                                    + ", "
                                    + labels.time(used.at())))
            .orElse(lacking(step, "NOT CONFIRMED"));
    String why = ReviewWords.renewed(part);
    return why.isEmpty() ? confirmed : confirmed + " (" + why + ")";
  }

  /** Another head marking that was read for the same step on the other side. */
  private String otherSide(StepReview step, HeadMarking marking) {
    return dossier.review().steps().stream()
        .filter(s -> s.place().ref().id().equals(step.place().ref().id()))
        .flatMap(s -> s.tightened().marking().stream())
        .filter(m -> !m.equals(marking))
        .findFirst()
        .map(m -> ", OTHER SIDE " + m)
        .orElse("");
  }

  /** What is not there is a lack only in a step that was closed without it. */
  private static String lacking(StepReview step, String lack) {
    return step.state() == StepReview.State.CLOSED ? lack : "not yet";
  }

  private String load(Fastener fastener, StepReview step) {
    if (fastener.needs() == LoadCondition.ANY) {
      return "none required";
    }
    return step.tightened()
        .load()
        .map(load -> EventWords.confirmed(load.event()) + ", " + labels.time(load.at()))
        .orElse(ReviewWords.plain(fastener.needs()) + " " + lacking(step, "NOT CONFIRMED"));
  }

  private void stage(Markup m, int number, StepReview.StageReview stage, int count, String read) {
    String unit =
        stage.specification() instanceof Stage.TorqueStage t
            ? " " + t.target().unit().symbol()
            : "°";
    m.leaf("td", number + " " + StageWords.kind(stage.specification()));
    m.leaf("td", StageWords.specified(stage.specification()));
    m.leaf("td", dialled(stage.specification()));
    String outside = stage.within() ? "" : " OUTSIDE";
    String called = stage.called().map(v -> v.toPlainString() + unit + outside).orElse("no value");
    m.leaf("td", called + read);
    m.leaf(
        "td",
        stage.closed().map(labels::time).orElse("OPEN")
            + ReviewWords.ofSet(stage, count, labels::time));
    m.leaf("td", stage.closed().isPresent() ? tool(stage) : "–");
  }

  private static String dialled(Stage stage) {
    if (stage instanceof Stage.TorqueStage torque) {
      return torque
          .dialled()
          .map(d -> d.setting() + ", adaptor")
          .orElseGet(
              () ->
                  torque.form() == Stage.TorqueStage.Form.RANGE
                      ? "in the range"
                      : torque.target().toString());
    }
    return "–";
  }

  private String tool(StepReview.StageReview stage) {
    if (!(stage.specification() instanceof Stage.TorqueStage)) {
      return "angle, tool not named";
    }
    if (stage.wrenches().isEmpty()) {
      return "not named";
    }
    String calibration =
        ToolWords.named(dossier.review().head().tools(), stage)
            .map(state -> ", " + calibrated(state))
            .orElse("");
    return String.join(", ", stage.wrenches()) + calibration;
  }

  private static String calibrated(ToolState state) {
    return state.tool().calibrated().map(day -> "calibrated " + day + ", ").orElse("")
        + ToolWords.state(state);
  }
}
