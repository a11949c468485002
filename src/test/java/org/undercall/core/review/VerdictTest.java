package org.undercall.core.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.DueTime;
import org.undercall.core.term.Job;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.StepRef;

@DisplayName("The verdict on a session")
class VerdictTest {
  /** The job of both sides with another item to hand over. */
  private static Walk walk(String due) {
    Procedure p = TwoSides.walk().procedure();
    List<WorkPhase> phases = new ArrayList<>(p.phases());
    WorkPhase last = phases.remove(phases.size() - 1);
    List<Step> steps = new ArrayList<>(last.steps());
    steps.add(new Step.HandOver(new Step.Head("more", "Have it aligned", List.of(), false), due));
    phases.add(new WorkPhase(last.name(), last.each(), steps));
    return Walk.of(
        new Procedure(p.about(), p.cautions(), p.tools(), p.rideHeight(), p.loadHolds(), phases));
  }

  private static Review review(String due) {
    Walk walk = walk(due);
    return Review.of(walk, LogMaker.allDone(walk, "s"));
  }

  @ParameterizedTest
  @CsvSource({
    "before the van is driven away, NOT_TO_BE_DRIVEN",
    "at the next inspection, ASK_BEFORE_DRIVING",
    "after 100 km, COMPLETE_WITH_LATER",
    "the next morning, COMPLETE_WITH_LATER"
  })
  @DisplayName("is not that it is complete while something comes before driving")
  void due(String words, Verdict verdict) {
    assertEquals(verdict, review(words).verdict());
  }

  @Test
  @DisplayName("is that it is not complete whatever is due, while a step is open")
  void open() {
    Walk walk = walk("before the van is driven away");
    List<Recorded> log = LogMaker.allDone(walk, "s");
    assertEquals(Verdict.NOT_COMPLETE, Review.of(walk, log.subList(0, log.size() - 1)).verdict());
  }

  @Test
  @DisplayName("names what comes before driving first")
  void order() {
    List<Due> due = review("before the van is driven away").due();
    assertEquals(DueTime.When.BEFORE_DRIVING, due.get(0).time().when());
    assertEquals("more", due.get(0).step().id());
    assertEquals(Optional.of(due.get(0).at().toLocalDate()), due.get(0).day());
  }

  @Test
  @DisplayName("has the day of what is due tomorrow, and the odometer of what is due by distance")
  void days() {
    Due tomorrow = review("the next morning").due().get(0);
    LocalDate day = tomorrow.at().toLocalDate();
    assertEquals(Optional.of(day.plusDays(1)), tomorrow.day());
    Due distance = Due.of(new StepRef("x", tomorrow.step().side()), tomorrow.at(), "after 50 km");
    Measure odometer = new Measure(TwoSides.amount("84210"), MeasureUnit.KILOMETRE);
    Job job =
        new Job(
            Optional.empty(),
            Optional.empty(),
            Optional.of(odometer),
            Optional.empty(),
            Optional.empty());
    assertEquals(Optional.empty(), distance.day());
    assertEquals(
        Optional.of(new Measure(TwoSides.amount("84260"), MeasureUnit.KILOMETRE)),
        distance.odometer(job));
    assertEquals(Optional.empty(), distance.odometer(Job.NOT_GIVEN));
  }

  @Test
  @DisplayName("is kept for the list of many sessions, and so is what is due")
  void facts() {
    Walk walk = walk("before the van is driven away");
    Facts facts = Facts.of(Optional.of(walk), LogMaker.allDone(walk, "s"));
    assertEquals("not-to-be-driven", facts.work().verdict());
    assertEquals("work", facts.work().occasion());
    assertEquals(
        List.of("distance", "before-driving"), facts.due().stream().map(Facts.Due::kind).toList());
  }

  @Test
  @DisplayName("is complete where nothing was handed over")
  void complete() {
    Procedure p = TwoSides.walk().procedure();
    Walk walk =
        Walk.of(
            new Procedure(
                p.about(),
                p.cautions(),
                p.tools(),
                p.rideHeight(),
                p.loadHolds(),
                p.phases().subList(0, 1)));
    List<Recorded> log = LogMaker.allDone(walk, "s");
    assertEquals(Verdict.COMPLETE, Review.of(walk, log).verdict());
    assertEquals(0, log.stream().flatMap(d -> d.events().stream()).filter(this::handed).count());
  }

  private boolean handed(SessionEvent event) {
    return event instanceof SessionEvent.HandedOver;
  }
}
