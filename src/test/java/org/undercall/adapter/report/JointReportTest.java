package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.core.review.Review;
import org.undercall.core.term.BandSource;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TorqueHint;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

@DisplayName("The report of a joint that is watched more closely")
class JointReportTest {
  private static final Path FILE = Path.of("src/test/resources/procedures/every-joint-field.json");
  private static final String LEAST = "55";
  private static final String MOST = "95.5";

  /** All done; the head bolts measured and used again, the counter nut used twice before. */
  private static Dossier dossier(Optional<String> read, TorqueHint hint) throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(FILE);
    Walk walk = Walk.of(loaded.procedure());
    LogMaker maker = new LogMaker();
    long second = 0;
    for (Recorded done : LogMaker.allDone(walk, loaded.sha256())) {
      for (SessionEvent event : done.events()) {
        maker.at(second++, used(event));
        if (event instanceof SessionEvent.StepClosed closed
            && closed.step().id().equals("head-bolts")
            && read.isPresent()) {
          BigDecimal value = new BigDecimal(read.get());
          maker.at(second++, new SessionEvent.FinalTorqueCalled(closed.step(), value));
          maker.at(
              second++,
              new SessionEvent.FinalTorqueNoted(closed.step(), value),
              judged(closed.step(), hint));
        }
      }
    }
    List<Recorded> log = maker.log();
    Dossier.Given given = new Dossier.Given(Optional.empty(), Optional.empty(), Dossier.Paper.A4);
    Dossier.Seal seal =
        new Dossier.Seal("0".repeat(64), "0".repeat(64), log.size(), false, Optional.empty());
    return new Dossier(Review.of(walk, log), loaded.procedure(), log, seal, given);
  }

  private static SessionEvent used(SessionEvent event) {
    if (event instanceof SessionEvent.NewHardwareFitted fitted) {
      return switch (fitted.step().id()) {
        case "head-bolts" ->
            new SessionEvent.ReuseNoted(fitted.step(), ReuseBy.LENGTH, new BigDecimal("117.5"));
        case "counter-nut" ->
            new SessionEvent.ReuseNoted(fitted.step(), ReuseBy.USES, new BigDecimal("2"));
        default -> event;
      };
    }
    return event;
  }

  private static SessionEvent judged(StepRef step, TorqueHint hint) {
    return new SessionEvent.FinalTorqueJudged(
        step, hint, new BigDecimal(LEAST), new BigDecimal(MOST), BandSource.STATED);
  }

  private static List<CSVRecord> rows(Dossier dossier, String step) throws Exception {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(FastenersCsv.of(dossier.review()))).getRecords().stream()
        .filter(row -> row.get("step").equals(step))
        .toList();
  }

  @Test
  @DisplayName("has the torque after the angle, its hint, the length and the uses as cells")
  void cells() throws Exception {
    Dossier dossier = dossier(Optional.of("50"), TorqueHint.TOO_SOFT);
    CSVRecord bolts = rows(dossier, "head-bolts").get(0);
    assertEquals(
        "50 N·m OUTSIDE its band (band 55 to 95.5, hint: too soft)", bolts.get("final_torque"));
    assertEquals("too soft", bolts.get("final_torque_hint"));
    assertEquals("yielded, used again up to 118.125 mm", bolts.get("renewed_because"));
    assertEquals("length 117.5 mm", bolts.get("used_again"));
    assertEquals("", bolts.get("new_hardware"));
    CSVRecord nut = rows(dossier, "counter-nut").get(0);
    assertEquals("self locking, used 3 times", nut.get("renewed_because"));
    assertEquals("tightened 2 times before", nut.get("used_again"));
    assertEquals("", nut.get("final_torque"));
    assertEquals("", nut.get("final_torque_hint"));
    CSVRecord ball = rows(dossier, "ball-bolt").get(0);
    assertEquals("", ball.get("used_again"));
    assertFalse(ball.get("new_hardware").isEmpty());
  }

  @Test
  @DisplayName("has empty cells and no picture where no torque was called after the angle")
  void none() throws Exception {
    Dossier dossier = dossier(Optional.empty(), TorqueHint.AS_EXPECTED);
    CSVRecord bolts = rows(dossier, "head-bolts").get(0);
    assertEquals("", bolts.get("final_torque"));
    assertEquals("", bolts.get("final_torque_hint"));
    assertFalse(ReportPage.of(dossier, List.of(), List.of()).contains("id=\"final-torque\""));
  }

  @ParameterizedTest
  @CsvSource({"50,TOO_SOFT,TOO SOFT", "70,AS_EXPECTED,as expected", "140.5,TOO_HARD,TOO HARD"})
  @DisplayName("draws the band and the reading to scale, with the same in words")
  void picture(String read, TorqueHint hint, String shown) throws Exception {
    String page = ReportPage.of(dossier(Optional.of(read), hint), List.of(), List.of());
    Element svg = picture(page);
    Element band = (Element) svg.getElementsByTagName("rect").item(0);
    NodeList lines = svg.getElementsByTagName("line");
    Element reading = (Element) lines.item(lines.getLength() - 1);
    double left = number(band, "x");
    double wide = number(band, "width");
    double at = (number(reading, "x1") - left) / wide;
    double least = Double.parseDouble(LEAST);
    double expected = (Double.parseDouble(read) - least) / (Double.parseDouble(MOST) - least);
    assertEquals(expected, at, 0.01);
    assertEquals(number(reading, "x1"), number(reading, "x2"));
    assertTrue(left > 0 && left + wide < 520, "the band lies in the picture");
    assertTrue(number(reading, "x1") > 0 && number(reading, "x1") < 520, "so does the reading");
    String words = svg.getTextContent();
    assertTrue(words.contains(read + " N·m, band 55 to 95.5, hint: " + shown), words);
  }

  private static Element picture(String page) throws Exception {
    Document document =
        DocumentBuilderFactory.newDefaultInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(page.replaceFirst("<!DOCTYPE html>\n", ""))));
    NodeList all = document.getElementsByTagName("svg");
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i).getTextContent().contains("hint: ")) {
        return (Element) all.item(i);
      }
    }
    throw new AssertionError("no picture of the torque in " + page);
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
