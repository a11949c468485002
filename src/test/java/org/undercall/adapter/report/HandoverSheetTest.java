package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.core.review.Review;
import org.undercall.core.term.Finding;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Trouble;
import org.xml.sax.InputSource;

@DisplayName("The hand-over sheet")
class HandoverSheetTest {
  private static final Path VAN = Path.of("shared", "procedures", "light-van-rear-axle.json");
  private static final StepRef NUT = new StepRef("joint-nut", Side.LEFT);

  @TempDir private Path folder;

  private static String text(Dossier dossier) throws Exception {
    String xml = HandoverSheet.of(dossier).replaceFirst("<!DOCTYPE html>\n", "");
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)))
        .getElementsByTagName("body")
        .item(0)
        .getTextContent();
  }

  /** The van, all done, and then what is said besides. */
  private static Dossier van(Path file, SessionEvent... events) throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(file);
    Walk walk = Walk.of(loaded.procedure());
    List<Recorded> log = new ArrayList<>(LogMaker.allDone(walk, loaded.sha256()));
    Recorded last = log.remove(log.size() - 1);
    log.add(new Recorded(last.seq(), last.at(), last.heard(), List.of(events), "")); // in its place
    log.add(new Recorded(last.seq() + 1, last.at(), last.heard(), last.events(), ""));
    Dossier.Given given = new Dossier.Given(Optional.empty(), Optional.empty(), Dossier.Paper.A4);
    String sum = "0".repeat(64);
    Dossier.Seal seal = new Dossier.Seal(sum, sum, log.size(), false, Optional.empty());
    return new Dossier(Review.of(walk, log), loaded.procedure(), log, seal, given);
  }

  @Test
  @DisplayName("says what is to be done in the procedure's own words, before driving first")
  void todo() throws Exception {
    String text = text(van(VAN));
    int before = text.indexOf("before the van goes back to its driver");
    int after = text.indexOf("after 50 km");
    assertTrue(before > 0 && after > before, text);
    assertTrue(text.contains("Re-torque the wheel bolts"), text);
    assertTrue(text.contains("THE CAR IS NOT YET TO BE DRIVEN"), text);
    assertTrue(text.contains("BEFORE DRIVING: before the van goes back"), text);
    assertFalse(text.contains("The work is complete"), text);
    assertTrue(text.contains("Demonstration, not a real car"), text);
    assertTrue(text.contains("Telephone ____"), text);
    assertFalse(text.contains("Not finished"), text);
  }

  @Test
  @DisplayName("says what was found and is not finished, each in words, with its side")
  void found() throws Exception {
    String text =
        text(
            van(
                VAN,
                new SessionEvent.NoteKept(
                    NUT, "boot is torn", Optional.of(Finding.FOUND_FAULT), Optional.of(Side.LEFT)),
                new SessionEvent.NoteKept(NUT, "customer waits"),
                new SessionEvent.StepReopened(NUT),
                new SessionEvent.TroubleNoted(NUT, Trouble.PART_MISSING, Optional.empty())));
    assertTrue(text.contains("THE WORK IS NOT COMPLETE"), text);
    assertTrue(text.contains("Ask the workshop before the car is driven"), text);
    assertTrue(text.contains("Tighten the joint nut, left side: NOT TIGHTENED"), text);
    assertTrue(text.contains("Tighten the joint nut, left side: part missing"), text);
    assertTrue(text.contains("“boot is torn”, at: Tighten the joint nut, left side"), text);
    assertFalse(text.contains("customer waits"), "a plain note is not for the customer");
  }

  @Test
  @DisplayName("guesses nothing: where nothing is asked for later, it tells to ask")
  void nothingLater() throws Exception {
    ObjectMapper mapper = new ObjectMapper();
    JsonNode whole = mapper.readTree(ProcedureFile.load(VAN).assembled().text());
    int before = 0;
    for (JsonNode phase : whole.get("phases")) {
      ArrayNode steps = (ArrayNode) phase.get("steps");
      for (int i = steps.size() - 1; i >= 0; i--) {
        if (steps.get(i).path("kind").asText().equals("hand-over")) {
          steps.remove(i);
          before++;
        }
      }
    }
    assertEquals(3, before);
    String kept = mapper.writeValueAsString(whole);
    Path file = Files.writeString(folder.resolve("procedure.json"), kept);
    String text = text(van(file));
    assertTrue(text.contains("asks for nothing to be done later"), text);
    assertTrue(text.contains("The work is complete"), text);
    assertTrue(text.contains("Wheels were off. Ask the workshop"), text);
    assertFalse(text.contains(" km"), text);
  }

  @Test
  @DisplayName("counts what has no room, and names what is to be done all the same")
  void noRoom() throws Exception {
    SessionEvent[] notes = new SessionEvent[90];
    for (int i = 0; i < notes.length; i++) {
      notes[i] =
          new SessionEvent.NoteKept(
              NUT, "fault no. " + i, Optional.of(Finding.FOUND_FAULT), Optional.of(Side.LEFT));
    }
    String text = text(van(VAN, notes));
    int shown = text.split("“fault no\\.", -1).length - 1;
    assertTrue(shown > 5 && shown < 90, "shown " + shown);
    assertTrue(text.contains("And " + (90 - shown) + " more: they stand in the report."), text);
    assertTrue(text.contains("after the wheel alignment"), text);
  }

  @Test
  @DisplayName("page one of the report says what the wrench is set to where that is what is called")
  void adaptor() throws Exception {
    String page = ReportPage.of(van(VAN), List.of(), List.of());
    String torques =
        page.substring(page.indexOf("id=\"torques\""), page.indexOf("id=\"fasteners\""));
    assertEquals(1, torques.split("wrench set to", -1).length - 1, torques);
  }
}
