package org.undercall.core.difference;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.WorkPhase;

/** Compares two procedures by fastener and step. */
public final class Differences {
  private static final String PROCEDURE = "procedure";

  private final Procedure older;
  private final Procedure newer;
  private final List<Difference> all = new ArrayList<>();
  private Set<String> shared = Set.of();

  private Differences(Procedure older, Procedure newer) {
    this.older = older;
    this.newer = newer;
  }

  /** What differs, the one that matters most first; none if both say the same. */
  public static List<Difference> of(Procedure older, Procedure newer) {
    Differences differences = new Differences(older, newer);
    differences.steps();
    differences.tools();
    differences.compare("", PROCEDURE, ProcedureFacts.whole(older), ProcedureFacts.whole(newer));
    return differences.all.stream().sorted(Comparator.comparing(Difference::weight)).toList();
  }

  private void steps() {
    List<Placed> before = Placed.all(older);
    List<Placed> after = Placed.all(newer);
    shared = new LinkedHashSet<>(Placed.shared(before));
    shared.addAll(Placed.shared(after));
    Pairs pairs = Pairs.of(before, after);
    for (Placed gone : pairs.removed()) {
      Weight weight = gone.step() instanceof Step.Fasten ? Weight.GONE : weight(gone);
      all.add(new Difference(weight, gone.id(), where(gone), "removed", "", "", what(gone)));
    }
    for (Placed fresh : pairs.added()) {
      all.add(
          new Difference(weight(fresh), fresh.id(), where(fresh), "added", "", "", what(fresh)));
    }
    phases(pairs);
    moves(pairs, after);
    for (Pairs.Pair pair : pairs.pairs()) {
      if (pair.byValues()) {
        all.add(renamed(pair));
      }
      boolean single = variants(pair.before()) <= 1 && variants(pair.after()) <= 1;
      compare(
          pair.after().id(),
          where(pair.after()),
          StepFacts.of(pair.before().step(), single),
          StepFacts.of(pair.after().step(), single));
    }
  }

  private Difference renamed(Pairs.Pair pair) {
    return new Difference(
        Weight.TIGHTENS,
        pair.after().id(),
        where(pair.after()),
        "another name",
        pair.before().name(),
        pair.after().name(),
        "taken for the same fastener, since all its values are the same");
  }

  private static Weight weight(Placed step) {
    boolean tightens = step.step() instanceof Step.Fasten || step.step() instanceof Step.Load;
    return tightens ? Weight.TIGHTENS : Weight.WORK;
  }

  private static int variants(Placed step) {
    return step.step() instanceof Step.Fasten fasten ? fasten.fastener().variants().size() : 0;
  }

  private static String what(Placed step) {
    return StepFacts.kind(step.step()) + ", " + step.step().head().title();
  }

  private String where(Placed step) {
    return shared.contains(step.name()) ? step.name() + " (" + step.id() + ")" : step.name();
  }

  /** Phases that have another name or are walked elsewhere, and those that came or went. */
  private void phases(Pairs pairs) {
    Map<Integer, Integer> known = pairs.phases();
    known.forEach(
        (after, before) -> {
          WorkPhase was = older.phases().get(before);
          WorkPhase is = newer.phases().get(after);
          String where = "phase " + is.name();
          compare("", where, ProcedureFacts.phase(was), ProcedureFacts.phase(is));
        });
    for (int i = 0; i < newer.phases().size(); i++) {
      if (!known.containsKey(i)) {
        phase(newer.phases().get(i), "added");
      }
    }
    for (int i = 0; i < older.phases().size(); i++) {
      if (!known.containsValue(i)) {
        phase(older.phases().get(i), "removed");
      }
    }
  }

  private void phase(WorkPhase phase, String what) {
    String each = "each " + phase.each().name().toLowerCase(Locale.ROOT);
    all.add(new Difference(Weight.WORK, "", "phase " + phase.name(), what, "", "", each));
  }

  private void moves(Pairs pairs, List<Placed> after) {
    Map<Integer, Integer> known = pairs.phases();
    Set<Pairs.Pair> moved = pairs.moved();
    for (Pairs.Pair pair : pairs.pairs()) {
      int phase = known.getOrDefault(pair.after().phase(), -1);
      boolean other = phase != pair.before().phase();
      if (other || moved.contains(pair)) {
        all.add(moved(pair, other, after));
      }
    }
  }

  private Difference moved(Pairs.Pair pair, boolean other, List<Placed> after) {
    WorkPhase was = older.phases().get(pair.before().phase());
    WorkPhase is = newer.phases().get(pair.after().phase());
    int number = pair.after().number();
    String now = number == 0 ? "now the first step" : "now after " + where(after.get(number - 1));
    boolean elsewhere = was.each() != is.each();
    return new Difference(
        elsewhere ? Weight.TIGHTENS : Weight.WORK,
        pair.after().id(),
        where(pair.after()),
        "moved",
        other ? in(was) : "",
        other ? in(is) : "",
        now);
  }

  private static String in(WorkPhase phase) {
    return "phase " + phase.name() + ", each " + phase.each().name().toLowerCase(Locale.ROOT);
  }

  private void tools() {
    List<Tool> before = new ArrayList<>(older.tools());
    for (Tool tool : newer.tools()) {
      Optional<Tool> was = before.stream().filter(t -> t.id().equals(tool.id())).findFirst();
      was.ifPresent(
          old -> {
            before.remove(old);
            compare("", "wrench " + tool.id(), ProcedureFacts.tool(old), ProcedureFacts.tool(tool));
          });
    }
  }

  private void compare(String step, String where, Facts before, Facts after) {
    Set<String> fields = new LinkedHashSet<>(before.all().keySet());
    fields.addAll(after.all().keySet());
    for (String what : fields) {
      Fact was = before.all().getOrDefault(what, Fact.NONE);
      Fact is = after.all().getOrDefault(what, Fact.NONE);
      if (!was.isAs(is)) {
        all.add(difference(step, where, what, was, is));
      }
    }
  }

  private static Difference difference(String step, String where, String what, Fact was, Fact is) {
    Optional<BigDecimal> rounded = was.converted(is);
    Weight either = was.weight().compareTo(is.weight()) < 0 ? was.weight() : is.weight();
    String note = rounded.map(Differences::same).orElse("");
    Weight weight = rounded.isPresent() ? Weight.UNIT : either;
    return new Difference(weight, step, where, what, was.shown(), is.shown(), note);
  }

  private static String same(BigDecimal share) {
    BigDecimal percent = share.movePointRight(2).setScale(2, RoundingMode.HALF_UP);
    return percent.signum() == 0
        ? "the same value in another unit"
        : "the same value in another unit, rounded by " + percent + " %";
  }
}
