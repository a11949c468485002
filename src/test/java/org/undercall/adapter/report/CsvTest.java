package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.LogMaker;
import org.undercall.core.review.Review;
import org.undercall.core.review.TwoSides;

@DisplayName("A review as CSV")
class CsvTest {

  private static List<CSVRecord> rows(String csv) throws Exception {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(csv)).getRecords();
  }

  @Test
  @DisplayName("has a row for each stage of each fastener on each side")
  void fasteners() throws Exception {
    List<CSVRecord> rows = rows(FastenersCsv.of(Review.of(TwoSides.walk(), TwoSides.log())));
    assertEquals(4, rows.size());
    CSVRecord left = rows.get(0);
    assertEquals("bolt", left.get("step"));
    assertEquals("left", left.get("side"));
    assertEquals("bush bolt", left.get("fastener"));
    assertEquals("closed", left.get("state"));
    assertEquals("torque", left.get("kind"));
    assertEquals("50", left.get("specified"));
    assertEquals("N·m", left.get("unit"));
    assertEquals("3", left.get("tolerance"));
    assertEquals("50", left.get("dialled"));
    assertEquals("51", left.get("called"));
    assertEquals("1", left.get("deviation"));
    assertEquals("yes", left.get("within_tolerance"));
    assertEquals("10.9", left.get("head_marking"));
    assertEquals("2026-11-25T09:01:50+01:00", left.get("new_hardware"));
    assertEquals("ride height", left.get("load_needed"));
    assertEquals("wheels carry the car", left.get("load_proof"));
    assertEquals("2026-11-25T09:01:40+01:00", left.get("start"));
    assertEquals("830", left.get("duration_s"));
    assertEquals("75", left.get("working_s"));
    assertEquals("closing: missing ride height", left.get("refusals"));
    assertEquals("angle", rows.get(1).get("kind"));
    assertEquals("90", rows.get(1).get("specified"));
    assertEquals("379 mm", rows.get(2).get("load_height"));
  }

  @Test
  @DisplayName("has one row for a fastener whose head marking was not read")
  void markingNotRead() throws Exception {
    List<Recorded> log = TwoSides.log().subList(0, 3);
    List<CSVRecord> rows = rows(FastenersCsv.of(Review.of(TwoSides.walk(), log)));
    assertEquals(2, rows.size());
    assertEquals("open", rows.get(0).get("state"));
    assertEquals("", rows.get(0).get("stage"));
  }

  @Test
  @DisplayName("has a row for each event, with its fields as they are given")
  void events() throws Exception {
    List<Recorded> log = TwoSides.log();
    List<CSVRecord> rows =
        rows(
            EventsCsv.of(
                Review.of(TwoSides.walk(), log),
                log,
                event -> "{\"of\":\"" + event.getClass().getSimpleName() + "\"}"));
    List<SessionEvent> events = log.stream().flatMap(d -> d.events().stream()).toList();
    assertEquals(events.size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      String name = events.get(i).getClass().getSimpleName();
      assertEquals("{\"of\":\"" + name + "\"}", rows.get(i).get("fields"));
    }
    CSVRecord refused =
        rows.stream().filter(r -> r.get("event_id").equals("EV13")).findFirst().orElseThrow();
    assertEquals("close-refused", refused.get("event"));
    assertEquals("bolt", refused.get("step"));
    assertEquals("left", refused.get("side"));
    assertEquals("torque completed", refused.get("heard"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1+1",
        "-1+1",
        "@SUM(A1)",
        "\t=1",
        " =1",
        "\r\n=1",
        "＝1",
        "\ufeff=1",
        "-",
        "--1"
      })
  @DisplayName("makes a text harmless that a spreadsheet would run")
  void formulas(String text) throws Exception {
    LogMaker maker = new LogMaker();
    maker.heard(2000, text, new SessionEvent.NoteKept(TwoSides.RECHECK, text));
    List<Recorded> log = new ArrayList<>(TwoSides.log());
    log.addAll(maker.log());
    List<CSVRecord> rows = rows(EventsCsv.of(Review.of(TwoSides.walk(), log), log, event -> "{}"));
    assertEquals("'" + text, rows.get(rows.size() - 1).get("heard"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "-1.5", "12", "", "it's -1", "a=b", "{\"a\":1}", "90° ±5"})
  @DisplayName("leaves numbers and other texts as they are")
  void others(String text) {
    assertEquals(text, CsvText.harmless(text));
  }

  @Test
  @DisplayName("ends each line with CR LF and quotes what has a comma, a quotation mark or a line")
  void form() {
    CsvText csv = new CsvText(List.of("a", "b"));
    csv.row("x, y", "say \"no\"\nnow");
    assertEquals("a,b\r\n\"x, y\",\"say \"\"no\"\"\nnow\"\r\n", csv.toString());
    assertTrue(csv.toString().endsWith("\r\n"));
  }
}
