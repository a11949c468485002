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
          "Stage|13",
          "Specified|19",
          "Wrench setting|16",
          "Called|17",
          "When|12",
          "Tool and calibration|23");

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
    if (steps.isEmpty()) {
      return;
    }
    m.leaf("h2", "Fasteners, all that was said of them", "id", "fasteners");
    m.leaf("p", ReviewWords.CALLED_NOT_MEASURED, "class", "strong");
    m.leaf("p", String.join(" ", EndSections.CAUTIONS) + " " + TOOLS);
    Table.head(m, "Fasteners, stage by stage", COLUMNS);
    steps.forEach(step -> fastener(m, step));
    Table.end(m);
  }

  private void fastener(Markup m, StepReview step) {
    Fastener fastener = ((Step.Fasten) step.place().step()).fastener();
    List<StepReview.StageReview> stages = step.tightened().stages();
    m.open("tbody", "class", "keep").open("tr");
    String name = labels.step(step.place().ref());
    m.leaf("th", name, "scope", "rowgroup", "colspan", "6").close();
    wide(m, about(step, fastener));
    if (stages.isEmpty()) {
      wide(m, "Stages: they depend on the head marking.");
    }
    for (int i = 0; i < stages.size(); i++) {
      boolean last = i == stages.size() - 1;
      String read =
          last ? ReviewWords.finalTorque(step.tightened()).map(t -> "; then " + t).orElse("") : "";
      m.open("tr");
      stage(m, i + 1, stages.get(i), read);
      m.close();
      String set = ReviewWords.ofSet(stages.get(i), fastener.set().count(), labels::time);
      if (!set.isEmpty()) {
        wide(m, "Stage " + (i + 1) + ", each of the set" + set);
      }
    }
    m.closeLine();
  }

  private static void wide(Markup m, String words) {
    m.open("tr").leaf("td", words, "colspan", "6").close();
  }

  private String about(StepReview step, Fastener fastener) {
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
    return what
        + ". Head marking: "
        + marking
        + ". New hardware: "
        + hardware
        + ". Load condition: "
        + load(fastener, step)
        + step.work().closedBy().map(who -> ". Closed by " + who).orElse("")
        + ".";
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

  private void stage(Markup m, int number, StepReview.StageReview stage, String read) {
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
    m.leaf("td", stage.closed().map(labels::time).orElse("OPEN"));
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
