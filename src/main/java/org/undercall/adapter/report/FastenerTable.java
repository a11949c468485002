package org.undercall.adapter.report;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.undercall.core.fastening.Calibration;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.review.StepReview;
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
          "Dialled setting|8",
          "Called|8",
          "When|7",
          "Tool and calibration|11");

  private static final String TOOLS =
      "Tools: the log does not name the wrench. Shown is the first wrench that the procedure lists"
          + " and whose range holds the setting, with the date of calibration stated there, judged"
          + " by 12 months (ISO 6789-1:2017) on the day of the work. Uses are not counted here.";

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
      stage(m, i + 1, stages.get(i), fastener.set().count());
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
            + ", drive "
            + fastener.drive().toPlainString()
            + " mm, "
            + ReviewWords.plain(fastener.part().lubrication());
    String marking =
        tightened
            .marking()
            .map(m -> m + otherSide(step, m))
            .orElse(fastener.dependsOnMarking() ? lacking(step, "NOT READ") : "not asked for");
    String hardware =
        tightened
            .newHardware()
            .map(at -> "confirmed " + labels.time(at))
            .orElse(fastener.part().oneTimeUse() ? lacking(step, "NOT CONFIRMED") : "not required");
    return List.of(what, marking, hardware, load(fastener, step));
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
        .map(load -> ReviewWords.confirmed(load.event()) + ", " + labels.time(load.at()))
        .orElse(ReviewWords.plain(fastener.needs()) + " " + lacking(step, "NOT CONFIRMED"));
  }

  private void stage(Markup m, int number, StepReview.StageReview stage, int count) {
    boolean torque = stage.specification() instanceof Stage.TorqueStage;
    String unit =
        stage.specification() instanceof Stage.TorqueStage t
            ? " " + t.target().unit().symbol()
            : "°";
    m.leaf("td", number + " " + (torque ? "torque" : "angle"));
    m.leaf("td", target(stage.specification()) + " ±" + stage.plusMinus().toPlainString() + unit);
    m.leaf("td", dialled(stage.specification()));
    String outside = stage.within() ? "" : " OUTSIDE";
    String called = stage.called().map(v -> v.toPlainString() + unit + outside).orElse("no value");
    m.leaf("td", called);
    m.leaf(
        "td",
        stage.closed().map(labels::time).orElse("OPEN")
            + ReviewWords.ofSet(stage, count, labels::time));
    m.leaf("td", stage.closed().map(at -> tool(stage.specification(), at)).orElse("–"));
  }

  private static String target(Stage stage) {
    return stage instanceof Stage.TorqueStage torque
        ? torque.target().toString()
        : ((Stage.AngleStage) stage).target().toString();
  }

  private static String dialled(Stage stage) {
    if (stage instanceof Stage.TorqueStage torque) {
      return torque.dialled().map(d -> d.setting() + ", adaptor").orElse("as specified");
    }
    return "–";
  }

  private String tool(Stage stage, OffsetDateTime at) {
    if (!(stage instanceof Stage.TorqueStage torque)) {
      return "angle, tool not named";
    }
    Optional<Tool> tool =
        dossier.procedure().tools().stream().filter(t -> t.covers(torque.setting())).findFirst();
    return tool.map(t -> t.id() + ", " + calibrated(t, at.toLocalDate()))
        .orElse("none listed holds the setting");
  }

  private static String calibrated(Tool tool, LocalDate day) {
    Calibration calibration = new Calibration(tool.calibrated(), OptionalInt.empty());
    Calibration.Interval interval = Calibration.Interval.ISO_6789;
    String state =
        switch (calibration.on(day, interval)) {
          case VALID, DUE_BY_USES -> "in date until " + calibration.dueOn(interval);
          case DUE_BY_DATE -> "OVERDUE since " + calibration.dueOn(interval);
          case DATE_NOT_YET -> "DATE LIES AFTER THE WORK";
        };
    return "calibrated " + tool.calibrated() + ", " + state;
  }
}
