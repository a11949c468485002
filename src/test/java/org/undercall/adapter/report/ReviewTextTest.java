package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.LogMaker;
import org.undercall.core.review.Review;
import org.undercall.core.review.TwoSides;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;

@DisplayName("The written review")
class ReviewTextTest {

  private static Review review() {
    return Review.of(TwoSides.walk(), TwoSides.log());
  }

  private static void assertHas(String text, String lines) {
    assertTrue(text.contains(lines), () -> "not found:\n" + lines + "\nin:\n" + text);
  }

  @Test
  @DisplayName("shows a step with its times, values and what they rest on")
  void step() {
    assertHas(
        ReviewText.of(review()),
        """
          CLOSED: Tighten the bush bolt
            09:01:40 to 09:15:30, 13 min 50 s (by wall clock over a restart)
            at work 1 min 15 s, put aside 3 min 10 s
            head marking 10.9
            new hardware 09:01:50
            ride height confirmed, wheels carry the car 09:15:10
            stage 1: 50 N·m ±3, called 51, closed 09:15:20
            stage 2: 90° ±5, called 90, closed 09:15:30
            put off: ride height
            refusals: 1
        """);
  }

  @Test
  @DisplayName("begins with what it is and what its values are")
  void head() {
    assertHas(
        ReviewText.of(review()),
        """
        Bush bolts, revision 2
        Vehicle: Invented van
        Registration: not given
        VIN: not given
        Odometer: not given
        Job number: not given
        Technician: not given
        Values of the procedure: invented for demonstration
        Values as called by the technician, not measured by this program.
        Began 2026-11-25 09:00:00 +01:00
        """);
  }

  @Test
  @DisplayName("ends with refusals, notes, hand-overs, times and the verdict")
  void ending() {
    assertHas(
        ReviewText.of(review()),
        """
        Refused (2)
          09:02:10 bolt, left: closing: missing ride height (heard: torque completed)
          09:05:20 bolt, right: value of stage 2: called 90, specified 60 (heard: nine
              zero)

        Notes, as heard, unchecked (1)
          09:16:50 recheck: left boot looks dry

        Handed over, still to be done (1)
          09:17:00 recheck: after 50 km (by distance, no day)

        Timers (2)
          09:15:40 settle: started, 1 min 0 s
          09:16:40 settle: time over

        Times
          from first to last entry 17 min 10 s (by wall clock over a restart)
          at work on a step 6 min 5 s
          held 1 min 0 s
          program not running 9 min 25 s
          phrases not understood: 1

        Complete, more is due later
          Every step is closed with all that it needs.
        """);
  }

  @Test
  @DisplayName("names the clip beside notes, called values and measured ones, in text and JSON")
  void clips() throws Exception {
    LogMaker maker = new LogMaker();
    maker.at(0, new SessionEvent.SessionStarted("Bush bolts", "2", "00", "test"));
    Measure height = new Measure(new BigDecimal("382"), MeasureUnit.MILLIMETRE);
    maker.clipped(10, new SessionEvent.MeasureCalled(TwoSides.HEIGHT_L, height));
    maker.clipped(20, new SessionEvent.Measured(TwoSides.HEIGHT_L, height, true));
    maker.at(25, new SessionEvent.MarkingNoted(TwoSides.BOLT_L, new HeadMarking("10.9")));
    maker.clipped(30, new SessionEvent.ValueCalled(TwoSides.BOLT_L, 1, new BigDecimal("50")));
    maker.clipped(40, new SessionEvent.StageClosed(TwoSides.BOLT_L, 1, "50"));
    maker.clipped(50, new SessionEvent.NoteKept(TwoSides.BOLT_L, "boot looks dry"));
    Review review = Review.of(TwoSides.walk(), maker.log());
    String text = ReviewText.of(review);
    assertHas(text, "measured 382 mm, within limits 09:00:20 [clip 000002.flac]");
    assertHas(text, "called 50, closed 09:00:40 [clip 000005.flac]");
    assertHas(text, "09:00:50 bolt, left: boot looks dry [clip 000007.flac]");
    JsonNode json = new ObjectMapper().readTree(ReviewJson.of(review));
    JsonNode note = json.get("notes").get(0);
    assertEquals("000007.flac", note.get("clip").textValue());
    assertFalse(note.get("checked").booleanValue());
    JsonNode steps = json.get("steps");
    assertEquals("000002.flac", steps.get(0).get("measured").get(0).get("clip").textValue());
    assertEquals("000005.flac", steps.get(2).get("stages").get(0).get("clip").textValue());
    assertFalse(ReviewText.of(review()).contains("clip"));
    assertFalse(ReviewJson.of(review()).contains("clip"));
  }

  @Test
  @DisplayName("never has a line of more than 80 columns, nor a hidden character")
  void columns() {
    List<Recorded> log = new ArrayList<>(TwoSides.log());
    String odd = "\u001b[2J\n\u2028" + "long ".repeat(60) + "x".repeat(300);
    LogMaker maker = new LogMaker();
    maker.at(2000, new SessionEvent.NoteKept(TwoSides.RECHECK, odd));
    log.addAll(maker.log());
    String text = ReviewText.of(Review.of(TwoSides.walk(), log));
    assertFalse(text.contains("\u001b"));
    assertFalse(text.contains("\u2028"));
    text.lines().forEach(line -> assertTrue(line.length() <= Lines.WIDTH, line));
    assertTrue(text.replaceAll("\\s", "").contains("x".repeat(300)));
  }

  @Test
  @DisplayName("says what is open and what the log does not bear out")
  void notComplete() {
    List<Recorded> log = TwoSides.log().subList(0, 11);
    String text = ReviewText.of(Review.of(TwoSides.walk(), log));
    assertHas(text, "Open (6)\n  bolt, left: put off\n  height, right: open\n");
    assertHas(text, "NOT COMPLETE\n  6 of 8 steps open.\n  The session was not ended.\n");
  }

  @Test
  @DisplayName("has the same content as JSON")
  void json() throws Exception {
    JsonNode json = new ObjectMapper().readTree(ReviewJson.of(review()));
    assertEquals(8, json.get("steps").size());
    JsonNode left = json.get("steps").get(2);
    assertEquals("bolt/left", left.get("step").textValue());
    assertEquals(830_000, left.get("wholeMillis").longValue());
    assertEquals(75_000, left.get("workingMillis").longValue());
    assertTrue(left.get("acrossRestart").booleanValue());
    assertEquals(1, left.get("stages").get(0).get("deviation").intValue());
    assertEquals(365_000, json.get("totals").get("workingMillis").longValue());
    assertEquals("invented for demonstration", json.get("values").textValue());
    assertEquals(2, json.get("refusals").size());
    assertEquals(0, json.get("open").size());
    assertTrue(json.get("complete").booleanValue());
  }
}
