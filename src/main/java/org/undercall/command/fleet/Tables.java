package org.undercall.command.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.core.review.Facts;
import org.undercall.port.Fault;

/** The tables of a comparison. */
final class Tables {
  private static final int ENOUGH = 5;

  private final Map<String, Steps> steps = new HashMap<>();
  private final Map<String, Pairs> pairs = new TreeMap<>();
  private final Tally refusals = new Tally();
  private final Tally phrases = new Tally();
  private Optional<Facts> subject = Optional.empty();

  private Tables() {}

  /** A table, also of CSV. */
  enum Name {
    STEPS("Steps"),
    SIDES("Left and right"),
    VALUES("Values, left and right"),
    REFUSALS("Refused most often"),
    PHRASES("Misheard most often");

    private final String title;

    Name(String title) {
      this.title = title;
    }

    String title() {
      return title;
    }
  }

  /** What a step took wherever it is closed. */
  private record Steps(List<Long> working, List<Long> begun, List<Long> reopened) {
    Steps() {
      this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    }

    void add(Facts.StepRow row) {
      working.add(row.workingMs());
      begun.add(row.begun());
      reopened.add(row.reopened());
    }
  }

  /** What both sides of a step took wherever both are closed. */
  private record Pairs(List<Long> left, List<Long> right) {
    Pairs() {
      this(new ArrayList<>(), new ArrayList<>());
    }

    long rightLonger() {
      return Stream.iterate(0, i -> i < left.size(), i -> i + 1)
          .filter(i -> right.get(i) > left.get(i))
          .count();
    }
  }

  static Map<Name, Grid> of(Fleet fleet, Measure measure) throws Fault {
    Tables tables = new Tables();
    Set<String> base = new HashSet<>(measure.base());
    fleet.each(
        row -> {
          if (base.contains(row.session())) {
            tables.take(row.facts());
          }
          if (row.session().equals(measure.subject())) {
            tables.subject = Optional.of(row.facts());
          }
        });
    Map<Name, Grid> grids = new EnumMap<>(Name.class);
    grids.put(Name.STEPS, tables.steps());
    grids.put(Name.SIDES, tables.subject.map(Sides::of).orElseGet(tables::spreads));
    grids.put(Name.VALUES, Sides.values(tables.subject));
    grids.put(Name.REFUSALS, tables.refusals.grid("step"));
    grids.put(Name.PHRASES, tables.phrases.grid("heard"));
    return grids;
  }

  private void take(Facts facts) {
    for (Facts.StepRow row : facts.steps()) {
      if (row.closed()) {
        steps.computeIfAbsent(row.step(), any -> new Steps()).add(row);
      }
    }
    for (Sides.Pair pair : Sides.pairs(facts)) {
      if (pair.left().closed() && pair.right().closed()) {
        Pairs both = pairs.computeIfAbsent(pair.step(), any -> new Pairs());
        both.left().add(pair.left().workingMs());
        both.right().add(pair.right().workingMs());
      }
    }
    facts.refusals().forEach(r -> refusals.add(r.step(), r.what(), r.n()));
    facts.misheard().forEach(m -> phrases.add(m.heard(), m.what(), m.n()));
  }

  /** A row of the table of steps, with what it is sorted by. */
  private record Placed(double place, String step, List<Optional<Object>> cells) {}

  private Grid steps() {
    Map<String, Facts.StepRow> own = new HashMap<>();
    subject.ifPresent(
        facts ->
            facts.steps().stream()
                .filter(Facts.StepRow::closed)
                .forEach(row -> own.put(row.step(), row)));
    Set<String> names = new HashSet<>(steps.keySet());
    names.addAll(own.keySet());
    return new Grid(
        List.of(
            "step",
            "this_ms",
            "median_ms",
            "q1_ms",
            "q3_ms",
            "least_ms",
            "most_ms",
            "sessions",
            "slow",
            "reopened",
            "verdict"),
        names.stream()
            .map(name -> step(name, Optional.ofNullable(own.get(name))))
            .sorted(Comparator.comparing(Placed::place).thenComparing(Placed::step))
            .map(Placed::cells)
            .toList());
  }

  private Placed step(String name, Optional<Facts.StepRow> own) {
    Optional<Object> mine = own.map(Facts.StepRow::workingMs);
    Steps all = steps.get(name);
    Optional<Object> none = Optional.empty();
    if (all == null) {
      return new Placed(
          own.orElseThrow().begun(),
          name,
          List.of(
              Optional.of(name),
              mine,
              none,
              none,
              none,
              none,
              none,
              Optional.of(0L),
              none,
              none,
              Optional.of("")));
    }
    Spread spread = Spread.of(all.working());
    boolean slow =
        spread.count() >= ENOUGH && own.filter(o -> o.workingMs() > spread.fence()).isPresent();
    return new Placed(
        Spread.of(all.begun()).median(),
        name,
        List.of(
            Optional.of(name),
            mine,
            Optional.of(spread.median()),
            Optional.of(spread.at(0.25)),
            Optional.of(spread.at(0.75)),
            Optional.of(spread.least()),
            Optional.of(spread.most()),
            Optional.of(spread.count()),
            Optional.of(spread.beyondFence()),
            Optional.of(all.reopened().stream().mapToLong(n -> n).sum()),
            Optional.of(slow ? "slow" : "")));
  }

  private Grid spreads() {
    List<List<Optional<Object>>> rows = new ArrayList<>();
    pairs.forEach(
        (step, both) ->
            rows.add(
                Grid.row(
                    step,
                    Spread.of(both.left()).median(),
                    Spread.of(both.right()).median(),
                    (long) both.left().size(),
                    both.rightLonger())));
    return new Grid(
        List.of("step", "left_median_ms", "right_median_ms", "sessions", "right_longer"), rows);
  }
}
