package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.report.BeforeAfterTable;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

@DisplayName("A reading before and after the work")
class BeforeAfterTest {
  private static final String TEXT =
      """
      title: Camber
      vehicle: Invented van
      author: nobody
      revision: "1"
      values: invented
      cautions: [Stands carry the van.]
      tools: [{ id: w, least: 1, most: 20, unit: N·m }]
      phases:
        - name: before
          each: side
          steps:
            - { id: camber-before, kind: measure, title: Camber, unit: deg, outside: finding }
            - { id: toe-before, kind: measure, title: Toe, unit: mm }
            - { id: caster-before, kind: measure, title: Caster, unit: deg }
        - name: after
          each: side
          steps:
            - { id: camber-after, kind: measure, title: Camber, unit: deg, least: 0.5, most: 1.5,
                outside: finding }
            - { id: toe-after, kind: measure, title: Toe, unit: deg }
            - { id: caster-after, kind: measure, title: Caster, unit: deg }
      """;

  private final List<SessionEvent> events = new ArrayList<>();

  private void measured(String id, Side side, String amount) {
    Measure value = new Measure(new BigDecimal(amount), MeasureUnit.DEGREE);
    events.add(new SessionEvent.Measured(new StepRef(id, side), value, true));
  }

  private Review review() throws Exception {
    Walk walk = Walk.of(ProcedureFile.of(Path.of("camber.yaml"), TEXT).procedure());
    List<SessionEvent> all = new ArrayList<>();
    all.add(new SessionEvent.SessionStarted("Camber", "1", "00", "test"));
    all.addAll(events);
    Moment at = new Moment(OffsetDateTime.parse("2026-01-05T08:00:00+01:00"), 0);
    return Review.of(walk, List.of(new Recorded(1, at, Optional.empty(), all, "")));
  }

  @Test
  @DisplayName("stands side by side, the last value of each, with the change and the limits")
  void pairs() throws Exception {
    measured("camber-before", Side.LEFT, "2.1");
    measured("camber-before", Side.LEFT, "2.2");
    measured("camber-after", Side.LEFT, "1.2");
    measured("camber-before", Side.RIGHT, "0.4");
    measured("camber-after", Side.RIGHT, "1.6");
    List<BeforeAfter> pairs = BeforeAfter.of(review());
    BeforeAfter left = pairs.get(0);
    assertEquals("camber", left.name());
    assertEquals(Optional.of(new BigDecimal("-1.0")), left.change());
    assertEquals(Optional.of(true), left.within());
    BeforeAfter right =
        pairs.stream().filter(p -> p.side() == Side.RIGHT).findFirst().orElseThrow();
    assertEquals(Optional.of(false), right.within());
  }

  @Test
  @DisplayName("has nothing where nothing was read, and no limits where the procedure has none")
  void absent() throws Exception {
    measured("caster-before", Side.LEFT, "3");
    BeforeAfter caster =
        BeforeAfter.of(review()).stream()
            .filter(p -> p.name().equals("caster") && p.side() == Side.LEFT)
            .findFirst()
            .orElseThrow();
    assertEquals(Optional.empty(), caster.after());
    assertEquals(Optional.empty(), caster.change());
    assertEquals(Optional.empty(), caster.within());
  }

  @Test
  @DisplayName("is no pair in two units")
  void units() throws Exception {
    assertEquals(
        List.of("camber", "caster"),
        BeforeAfter.of(review()).stream().map(BeforeAfter::name).distinct().toList());
  }

  @Test
  @DisplayName("is a row of CSV, with what is not known left empty")
  void csv() throws Exception {
    measured("camber-before", Side.LEFT, "2.2");
    measured("camber-after", Side.LEFT, "1.2");
    List<String> lines = BeforeAfterTable.csv(review()).lines().toList();
    assertEquals("reading,side,unit,before,after,change,least,most,within", lines.get(0));
    assertEquals("camber,left,°,2.2,1.2,-1,0.5,1.5,yes", lines.get(1).replace("-1.0", "-1"));
    assertEquals("caster,left,,,,,,,", lines.get(2));
  }
}
