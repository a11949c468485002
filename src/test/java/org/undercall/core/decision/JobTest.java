package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.core.event.SessionEvent;

/** The identification number is the worked example of 49 CFR 565.15, recalled from memory. */
@DisplayName("The job, told by voice before the cautions")
class JobTest {
  private static Bay bay() {
    return Bay.briefing(Jobs.twoBushesASide());
  }

  private static List<String> noted(Bay bay) {
    return bay.recorded(SessionEvent.JobNoted.class).stream()
        .map(e -> e.field() + " " + e.text())
        .toList();
  }

  @Test
  @DisplayName("is spelled, read back, and only then kept")
  void spelled() {
    Bay bay = bay();
    bay.goes(
        """
        > registration india november victor one two three
        < Registration: india november victor one two three.
        < Say: that is correct.
        > that is correct
        < Kept.
        > job number 4711
        < Job number: four seven one one.
        < Correct?
        > that was wrong
        < Forget that, then.
        > job number four seven one two
        < Job number: four seven one two.
        < Correct?
        > job number four seven one three
        < Job number: four seven one three.
        < Correct?
        > that is correct
        < Kept.
        > odometer eight four two one zero
        < Odometer, kilometres: eight four two one zero.
        < Correct?
        > that is correct
        < Kept.
        > technician juliet delta
        < Technician: juliet delta.
        < Correct?
        > cautions understood
        < Not yet.
        < Technician: juliet delta.
        < Say: that is correct.
        < Or say: that was wrong.
        > that is correct
        < Kept.
        """);
    assertEquals(
        List.of("REGISTRATION INV123", "JOB_NUMBER 4713", "ODOMETER 84210", "TECHNICIAN JD"),
        noted(bay));
  }

  @Test
  @DisplayName("takes an identification number in parts, and judges its check digit at the end")
  void parts() {
    Bay bay = bay();
    bay.goes(
        """
        > vehicle number one mike eight golf
        < Vehicle number: one mike eight golf.
        < Say: that is correct.
        > that is correct
        < Four of seventeen kept. Say: vehicle number, and the next ones.
        > vehicle number delta mike nine alpha x ray kilo papa zero four two
        < Vehicle number: delta mike nine alpha x ray kilo papa zero four two.
        < Correct?
        > that is correct
        < Fourteen of seventeen kept. Say: vehicle number, and the next ones.
        > vehicle number seven eight eight nine
        < No. A vehicle number has seventeen characters, none of them I, O or Q.
        > vehicle number seven eight eight
        < Vehicle number: seven eight eight.
        < Correct?
        > that is correct
        < Kept. The check digit fits.
        """);
    assertEquals(List.of("VIN 1M8G", "VIN DM9AXKP042", "VIN 788"), noted(bay));
  }

  @Test
  @DisplayName("is taken as typed, and as a scanner types it")
  void typed() {
    Bay bay = bay();
    bay.goes(
        """
        > registration INV-X 12
        < Registration: india november victor x ray one two.
        < Say: that is correct.
        > that is correct
        < Kept.
        > 1M8GDM9AXKP042788
        < Vehicle number: one mike eight golf delta mike nine alpha x ray kilo papa zero four two seven eight eight.
        < Correct?
        > that is correct
        < Kept. The check digit fits.
        > technician Anna B
        < Technician: alpha november november alpha bravo.
        < Correct?
        > that is correct
        < Kept.
        """);
    assertEquals(
        List.of("REGISTRATION INVX12", "VIN 1M8GDM9AXKP042788", "TECHNICIAN ANNAB"), noted(bay));
  }

  @Test
  @DisplayName("refuses what cannot be one, and hears nothing of it during the work")
  void refused() {
    Bay bay = bay();
    bay.goes(
        """
        > vehicle number oscar one
        < No. A vehicle number has seventeen characters, none of them I, O or Q.
        > odometer one two three four five six seven eight
        < No. Up to seven digits, in kilometres.
        > registration
        """);
    Bay working = Bay.working(Jobs.twoBushesASide());
    working.after("registration alpha one");
    assertEquals(List.of(), noted(bay));
    assertEquals(List.of(), working.recorded(SessionEvent.JobCalled.class));
  }

  @Test
  @DisplayName("is taken back, and an identification number begins again")
  void takenBack() {
    Bay bay = bay();
    bay.after("vehicle number one mike", "that is correct")
        .goes(
            """
            > cancel that
            < Taken back. A vehicle number begins again.
            > cancel that
            < Nothing to take back.
            > vehicle number whiskey victor
            < Vehicle number: whiskey victor.
            < Correct?
            > that is correct
            < Two of seventeen kept. Say: vehicle number, and the next ones.
            """);
    bay.say("cautions understood");
    assertEquals("Nothing to take back.", bay.say("cancel that").get(0));
  }

  @Test
  @DisplayName("and a name that is taken back leaves who was named before")
  void nameTakenBack() {
    Bay bay = Bay.briefing(Jobs.threeLooks());
    bay.after("technician alpha bravo", "that is correct");
    assertEquals("AB", bay.technician());
    bay.after("technician alpha delta", "that is correct", "cancel that");
    assertEquals("AB", bay.technician());
  }
}
