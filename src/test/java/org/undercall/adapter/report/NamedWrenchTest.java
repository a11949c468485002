package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.term.Finding;
import org.undercall.core.term.JobField;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Trouble;
import org.undercall.port.Fault;

@DisplayName("A review tells what was said of wrenches, findings and the job, and infers nothing")
class NamedWrenchTest {
  private static final StepRef NUT = new StepRef("joint-nut", Side.LEFT);
  private final List<Recorded> log = new ArrayList<>();

  private Review review(SessionEvent... events) throws Fault {
    Walk walk =
        Walk.of(
            ProcedureFile.load(Path.of("shared/procedures/demo-lateral-link.json")).procedure());
    for (SessionEvent event : events) {
      Moment at =
          new Moment(
              OffsetDateTime.parse("2026-06-01T10:00:00+02:00").plusMinutes(log.size()),
              60_000L * log.size());
      log.add(new Recorded(log.size() + 1, at, Optional.empty(), List.of(event), ""));
    }
    return Review.of(walk, log);
  }

  private static SessionEvent closed() {
    return new SessionEvent.StageClosed(NUT, 1, "62 lbf·ft");
  }

  private static String row(Review review) {
    return FastenersCsv.of(review)
        .lines()
        .filter(line -> line.startsWith("joint-nut,left"))
        .findFirst()
        .map(row -> row.replaceFirst(",work,\"invented.*", ""))
        .orElseThrow();
  }

  @Test
  @DisplayName("the wrench of a stage is the one that was named and fits")
  void named() throws Fault {
    Review review = review(new SessionEvent.WrenchNamed(NUT, "wrench 1"), closed());
    assertTrue(row(review).endsWith(",wrench 1,,calibration not stated,,,,,,,"), row(review));
    assertTrue(ReviewText.of(review).contains("wrench 1"), ReviewText.of(review));
    assertTrue(ReviewJson.of(review).contains("\"tool\" : \"wrench 1\""), ReviewJson.of(review));
  }

  @Test
  @DisplayName("none stands where none was named, or one that does not fit")
  void none() throws Fault {
    Review unnamed = review(closed());
    assertTrue(row(unnamed).endsWith(",,,,,,,"), row(unnamed));
    assertFalse(ReviewJson.of(unnamed).contains("\"tool\" :"), ReviewJson.of(unnamed));
    log.clear();
    Review misfit = review(new SessionEvent.WrenchNamed(NUT, "wrench 2"), closed());
    assertTrue(row(misfit).endsWith(",,,,,,,"), row(misfit));
  }

  @Test
  @DisplayName("a wrench with its calibration over stands with the reason")
  void overdue() throws Fault {
    Review review =
        review(new SessionEvent.OverdueNoted(NUT, "wrench 1", OverdueReason.NO_OTHER_WRENCH));
    assertEquals(1, review.remarks().changes().size());
    assertEquals(
        "joint-nut, left: wrench 1 used with its calibration over, no other wrench",
        EventWords.change(review.remarks().changes().get(0).event()));
  }

  @Test
  @DisplayName("what was found is listed by kind, and what is to be ordered from all that says so")
  void found() throws Fault {
    Review review =
        review(
            note("boot is torn", Finding.FOUND_FAULT, Side.RIGHT),
            note("cleaned the bracket", Finding.EXTRA_WORK, Side.LEFT),
            note("two caps", Finding.PART_TO_ORDER, Side.LEFT),
            new SessionEvent.TroubleNoted(NUT, Trouble.PART_MISSING, Optional.empty()),
            new SessionEvent.NoteKept(NUT, "customer waits"));
    String text = ReviewText.of(review);
    assertTrue(text.contains("Found faults, as heard, unchecked (1)"), text);
    assertTrue(text.contains("joint-nut, left, right side: boot is torn"), text);
    assertTrue(text.contains("Extra work, as heard, unchecked (1)"), text);
    assertTrue(text.contains("Notes, as heard, unchecked (1)"), text);
    assertEquals(
        List.of("joint-nut, left: two caps", "joint-nut, left: part missing"),
        OrderList.of(review));
    assertTrue(ReviewJson.of(review).contains("\"about\" : \"found fault\""));
  }

  private static SessionEvent note(String text, Finding about, Side side) {
    return new SessionEvent.NoteKept(NUT, text, Optional.of(about), Optional.of(side));
  }

  @Test
  @DisplayName("the job is what was told by voice, a VIN only when it is whole")
  void job() throws Fault {
    Review review =
        review(
            new SessionEvent.JobNoted(JobField.REGISTRATION, "INV123"),
            new SessionEvent.JobNoted(JobField.VIN, "1M8GDM9A"));
    assertEquals(Optional.of("INV123"), review.head().job().registration());
    assertEquals(Optional.empty(), review.head().job().vin());
    Review whole =
        review(
            new SessionEvent.JobNoted(JobField.VIN, "XKP042788"),
            new SessionEvent.JobNoted(JobField.ODOMETER, "84210"));
    assertEquals("1M8GDM9AXKP042788", whole.head().job().vin().orElseThrow().text());
    assertEquals("84210 km", whole.head().job().odometer().orElseThrow().toString());
  }

  @Test
  @DisplayName("what was taken back of them does not stand")
  void takenBack() throws Fault {
    Review review =
        review(
            new SessionEvent.JobNoted(JobField.REGISTRATION, "INV123"),
            new SessionEvent.SayingTakenBack(NUT, "JOB_NOTED"),
            new SessionEvent.WrenchNamed(NUT, "wrench 1"),
            new SessionEvent.SayingTakenBack(NUT, "WRENCH_NAMED"),
            closed());
    assertEquals(Optional.empty(), review.head().job().registration());
    assertTrue(row(review).endsWith(",,,,,,,"), row(review));
  }

  @Test
  @DisplayName("who closed a step is who worked then, from the change on who took over")
  void shift() throws Fault {
    Review same =
        review(
            new SessionEvent.JobNoted(JobField.TECHNICIAN, "JD"),
            new SessionEvent.WorkHandedOver(NUT),
            new SessionEvent.JobNoted(JobField.TECHNICIAN, "XX"),
            new SessionEvent.SayingTakenBack(NUT, "JOB_NOTED"),
            new SessionEvent.WorkResumed(),
            new SessionEvent.StepClosed(NUT));
    assertEquals(Optional.of("JD"), same.head().job().technician());
    assertTrue(row(same).endsWith(",JD,,,,,"), row(same));
    Review next =
        review(
            new SessionEvent.StepReopened(NUT),
            new SessionEvent.WorkHandedOver(NUT),
            new SessionEvent.JobNoted(JobField.TECHNICIAN, "AB"),
            new SessionEvent.WorkTakenOver("AB"),
            new SessionEvent.StepClosed(NUT));
    assertEquals(Optional.of("JD, then AB"), next.head().job().technician());
    assertTrue(row(next).endsWith(",AB,,,,,"), row(next));
    assertTrue(ReviewText.of(next).contains("closed by AB"), ReviewText.of(next));
  }
}
