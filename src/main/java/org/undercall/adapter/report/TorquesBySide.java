package org.undercall.adapter.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Side;
import org.undercall.text.Markup;

/**
 * The torques and angles of a session, left beside right: a group of rows for each fastener, a row
 * for each of its stages, and before them what it needs. Fasteners of the whole car stand in a
 * table of their own.
 */
final class TorquesBySide {
  private static final List<String> SIDES =
      List.of(
          "Fastener|20",
          "Asked for|20",
          "Left: called|17",
          "Left: when|13",
          "Right: called|17",
          "Right: when|13");
  private static final List<String> CAR =
      List.of("Fastener|30", "Asked for|25", "Called|27", "When|18");
  private static final String NONE = "–";

  private final Dossier dossier;
  private final Labels labels;

  TorquesBySide(Dossier dossier) {
    this.dossier = dossier;
    this.labels = new Labels(dossier);
  }

  /** A fastener with its step on each side across one axle; one of them may be absent. */
  private record Across(String name, List<Optional<StepReview>> steps) {
    /** As many stages as the side with most of them has. */
    int stages() {
      return there().mapToInt(s -> s.tightened().stages().size()).max().orElse(0);
    }

    Stream<StepReview> there() {
      return steps.stream().flatMap(Optional::stream);
    }
  }

  void add(Markup m) {
    m.leaf("h2", "Torques and angles", "id", "torques");
    if (fasteners(true).isEmpty() && fasteners(false).isEmpty()) {
      m.leaf("p", "The procedure has no fastener.");
      return;
    }
    m.leaf("p", ReviewWords.CALLED_NOT_MEASURED, "class", "strong");
    table(m, "Torques and angles, left beside right", SIDES, fasteners(false));
    table(m, "Torques and angles of the whole car", CAR, fasteners(true));
  }

  private List<Across> fasteners(boolean car) {
    Map<String, List<StepReview>> groups = new LinkedHashMap<>();
    for (StepReview step : dossier.review().steps()) {
      Side side = step.place().ref().side();
      if (step.place().step() instanceof Step.Fasten && (side == Side.CAR) == car) {
        String key = axle(side) + step.place().ref().id();
        groups.computeIfAbsent(key, k -> new ArrayList<>()).add(step);
      }
    }
    return groups.values().stream().map(steps -> across(steps, car)).toList();
  }

  private Across across(List<StepReview> steps, boolean car) {
    StepReview first = steps.get(0);
    Fastener fastener = fastener(first);
    String set = fastener.set().count() == 1 ? "" : fastener.set().count() + " × ";
    String numbers =
        steps.stream()
            .map(step -> "" + dossier.number(step.place().ref()))
            .collect(Collectors.joining(", "));
    String name =
        (car ? first.place().step().head().title() + ": " : axle(first.place().ref().side()))
            + set
            + fastener.name()
            + ", "
            + fastener.thread()
            + " (step "
            + numbers
            + ")";
    List<Optional<StepReview>> sides =
        car ? List.of(Optional.of(first)) : List.of(of(steps, "left"), of(steps, "right"));
    return new Across(name, sides);
  }

  private static Fastener fastener(StepReview step) {
    return ((Step.Fasten) step.place().step()).fastener();
  }

  private static String axle(Side side) {
    String words = side.words();
    int blank = words.indexOf(' ');
    return blank < 0 ? "" : words.substring(0, blank) + ": ";
  }

  private static Optional<StepReview> of(List<StepReview> steps, String side) {
    return steps.stream().filter(s -> s.place().ref().side().words().endsWith(side)).findFirst();
  }

  private void table(Markup m, String caption, List<String> columns, List<Across> rows) {
    if (!rows.isEmpty()) {
      Table.head(m, caption, columns);
      rows.forEach(row -> fastener(m, row));
      Table.end(m);
    }
  }

  private void fastener(Markup m, Across row) {
    boolean needs = row.there().anyMatch(step -> !conditions(step).isEmpty());
    int rows = Math.max(1, row.stages() + (needs ? 1 : 0));
    m.open("tbody", "class", "keep").open("tr");
    m.open("th", "scope", "rowgroup", "rowspan", "" + rows).prose(row.name()).close();
    if (needs || row.stages() == 0) {
      conditions(m, row);
    }
    for (int i = 0; i < row.stages(); i++) {
      if (i > 0 || needs) {
        m.open("tr");
      }
      stage(m, row, i);
      m.close();
    }
    m.closeLine();
  }

  private void conditions(Markup m, Across row) {
    m.leaf("td", row.there().findFirst().map(TorquesBySide::asked).orElse(NONE));
    for (Optional<StepReview> side : row.steps()) {
      String words = side.map(this::conditions).filter(w -> !w.isEmpty()).orElse(NONE);
      m.leaf("td", words, "colspan", "2");
    }
    m.close();
  }

  /** What the fastener asks for besides its torques. */
  private static String asked(StepReview step) {
    Fastener fastener = fastener(step);
    List<String> asked = new ArrayList<>();
    if (fastener.dependsOnMarking()) {
      asked.add("head marking");
    }
    if (fastener.part().oneTimeUse()) {
      asked.add("new part");
    }
    if (fastener.needs() != LoadCondition.ANY) {
      asked.add(ReviewWords.plain(fastener.needs()));
    }
    return asked.isEmpty() ? NONE : String.join(", ", asked);
  }

  /** What was said of that, and how the step stands if it is not closed. */
  private String conditions(StepReview step) {
    Fastener fastener = fastener(step);
    StepReview.Tightened tightened = step.tightened();
    List<String> said = new ArrayList<>();
    if (step.state() != StepReview.State.CLOSED) {
      said.add(ReviewWords.plain(step.state()).toUpperCase(java.util.Locale.ROOT));
    }
    if (fastener.dependsOnMarking()) {
      said.add(tightened.marking().map(read -> "marking " + read).orElse("marking not read"));
    }
    if (fastener.part().oneTimeUse()) {
      said.add(
          tightened
              .newHardware()
              .map(at -> "new part " + labels.time(at))
              .or(() -> tightened.reused().map(used -> "USED PART " + labels.time(used.at())))
              .orElse("new part not confirmed"));
    }
    if (fastener.needs() != LoadCondition.ANY) {
      String load = ReviewWords.plain(fastener.needs());
      said.add(
          tightened
              .load()
              .map(confirmed -> load + " " + labels.time(confirmed.at()))
              .orElse(load + " not confirmed"));
    }
    return String.join(", ", said);
  }

  private void stage(Markup m, Across row, int index) {
    List<Optional<StepReview.StageReview>> stages =
        row.steps().stream()
            .map(side -> side.map(s -> s.tightened().stages()).filter(s -> index < s.size()))
            .map(some -> some.map(s -> s.get(index)))
            .toList();
    String asked =
        stages.stream()
            .flatMap(Optional::stream)
            .map(ReviewWords::specification)
            .distinct()
            .collect(Collectors.joining("; other side "));
    m.leaf("td", (index + 1) + ". " + asked);
    for (int i = 0; i < stages.size(); i++) {
      Optional<StepReview> step = row.steps().get(i);
      m.leaf("td", stages.get(i).map(s -> called(step.orElseThrow(), s)).orElse(NONE));
      m.leaf("td", stages.get(i).map(this::when).orElse(NONE));
    }
  }

  private static String called(StepReview step, StepReview.StageReview stage) {
    String unit =
        stage.specification() instanceof Stage.TorqueStage t
            ? " " + t.target().unit().symbol()
            : "°";
    String outside = stage.within() ? "" : " OUTSIDE";
    int count = fastener(step).set().count();
    String set =
        stage.positions().isEmpty() ? "" : ", " + stage.positions().size() + " of " + count;
    String wrench = stage.wrenches().isEmpty() ? "" : ", " + String.join(" and ", stage.wrenches());
    return stage.called().map(v -> v.toPlainString() + unit + outside).orElse("no value")
        + set
        + wrench;
  }

  private String when(StepReview.StageReview stage) {
    return stage.closed().map(labels::time).orElse("OPEN");
  }
}
