package org.undercall.adapter.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Fault;

@DisplayName("A comment on a cell")
class CellCommentsTest {
  @TempDir private Path folder;

  private TorqueTable read(Path file, Answers answers) throws Fault {
    TorqueTable.Wishes usual = Sheets.wishes();
    return TorqueTable.read(
        file, new TorqueTable.Wishes(usual.set(), usual.map(), usual.sheet(), answers));
  }

  private Path commented(String column, String shown, String... paragraphs) throws IOException {
    return Ods.book(
        folder,
        Ods.table(
            "T", Ods.headings(), Ods.row(Ods.usual(column, Ods.commented(shown, paragraphs)))));
  }

  private static JsonNode step(TorqueTable table) throws IOException {
    assertEquals(List.of(), table.faults());
    return new ObjectMapper().readTree(table.json()).at("/phases/0/steps/0");
  }

  private static Answers answered(Question question, String text) {
    return Answers.NONE.with(
        new Answers.Answer(question.asked(), question.read(), question.rows(), text));
  }

  @Test
  @DisplayName("that says nothing of the tightening is read out with its row, after the note")
  void remark() throws IOException, Fault {
    Path file = commented("Note", "Mind the hose", "Reach it through", "the hatch");
    TorqueTable table = read(file, Answers.NONE);
    assertEquals(
        "[\"Mind the hose\",\"Reach it through the hatch\"]",
        step(table).at("/cautions").toString());
    assertTrue(
        table.preview().contains("  comment at K2 \"Reach it through the hatch\" -> read out"),
        () -> table.preview().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "use 80 now!",
        "eighty since spring",
        "only at ride height",
        "Wheels hanging",
        "renew each time",
        "crosswise",
        "a quarter turn more",
        "greased",
        "wrong!",
        "do not believe this",
        "see the other list?",
        "old value",
        "by hand",
      })
  @DisplayName("that may change the tightening is asked, neither taken nor dropped")
  void asked(String text) throws IOException, Fault {
    TorqueTable table = read(commented("Torque", "52 Nm", text), Answers.NONE);
    assertEquals(
        List.of("TAB-033 t.ods D2"),
        table.faults().stream().map(f -> f.code().id() + " " + f.place()).toList());
    Question question = table.questions().get(0);
    assertEquals("comment on torque", question.asked());
    assertEquals(List.of("note", "-"), question.possible());
    assertTrue(question.expected().contains("in place of \"52 Nm\""), question.expected());
  }

  @Test
  @DisplayName("is settled by what holds now, by note, or by a dash; a newer one is asked again")
  void settled() throws IOException, Fault {
    Path file = commented("Torque", "52 Nm", "use 80 now!");
    Question question = read(file, Answers.NONE).questions().get(0);
    String torque = "/fastener/variants/0/stages/0/torque";
    JsonNode changed = step(read(file, answered(question, "80 Nm")));
    assertEquals("80", changed.at(torque).asText());
    assertTrue(changed.at("/cautions").isMissingNode());
    JsonNode noted = step(read(file, answered(question, "note")));
    assertEquals("52", noted.at(torque).asText());
    assertEquals("[\"use 80 now!\"]", noted.at("/cautions").toString());
    JsonNode left = step(read(file, answered(question, "-")));
    assertEquals("52", left.at(torque).asText());
    assertTrue(left.at("/cautions").isMissingNode());
    Path newer = commented("Torque", "52 Nm", "use 85 now!");
    assertEquals(1, read(newer, answered(question, "80 Nm")).questions().size());
  }

  @Test
  @DisplayName("answered with less than a value leads to the question about that value")
  void half() throws IOException, Fault {
    Path file = commented("Torque", "52 Nm", "use 80 now!");
    Answers answers = answered(read(file, Answers.NONE).questions().get(0), "80");
    Question unit = read(file, answers).questions().get(0);
    assertEquals(TableCode.NO_UNIT, unit.code());
  }

  @Test
  @DisplayName("on a name is settled by note or dash alone: a value would become the name")
  void onName() throws IOException, Fault {
    Path file = commented("Fastener", "Link bolt", "use 80 now!");
    Question question = read(file, Answers.NONE).questions().get(0);
    assertEquals("comment", question.asked());
    TorqueTable again = read(file, answered(question, "80 Nm"));
    assertEquals(List.of(question), again.questions());
    assertTrue(again.json().contains("\"Link bolt\""), again::json);
    assertEquals(List.of(), read(file, answered(question, "-")).faults());
  }

  @Test
  @DisplayName("on joined cells is one of each of their rows")
  void joined() throws IOException, Fault {
    String down =
        Ods.commented("52 Nm", "use 80 now!")
            .replaceFirst("table-cell", "table-cell table:number-rows-spanned=\"2\"");
    Path file =
        Ods.book(
            folder,
            Ods.table(
                "T",
                Ods.headings(),
                Ods.row(Ods.usual("Torque", down)),
                Ods.row(
                    Ods.usual("Fastener", "Arm bolt", "Torque", "<table:covered-table-cell/>"))));
    Question question = read(file, Answers.NONE).questions().get(0);
    assertEquals(2, question.rows().size());
    TorqueTable table = read(file, answered(question, "80 Nm"));
    JsonNode steps = new ObjectMapper().readTree(table.json()).at("/phases/0/steps");
    for (JsonNode each : steps) {
      assertEquals("80", each.at("/fastener/variants/0/stages/0/torque").asText());
    }
  }

  @Test
  @DisplayName("outside the rows is asked too, and can be read out before the work")
  void elsewhere() throws IOException, Fault {
    List<String> headings = new java.util.ArrayList<>(Sheets.HEADINGS);
    headings.set(3, Ods.commented("Torque", "all new since May"));
    Path file =
        Ods.book(
            folder,
            Ods.table(
                "T",
                Ods.row(headings),
                Ods.row(Ods.usual()),
                Ods.row(List.of("", "", Ods.commented("", "see page 7")))));
    TorqueTable open = read(file, Answers.NONE);
    assertEquals(2, open.questions().size());
    Answers answers =
        answered(open.questions().get(0), "note")
            .with(new Answers.Answer("comment", open.questions().get(1).read(), List.of(), "-"));
    TorqueTable table = read(file, answers);
    assertEquals(List.of(), table.faults());
    assertTrue(table.json().contains("all new since May"), table::json);
    assertTrue(!table.json().contains("page 7"), table::json);
  }

  @Test
  @DisplayName("of nothing but blanks, or its author's name, is none")
  void empty() throws IOException, Fault {
    assertTrue(
        step(read(commented("Torque", "52 Nm", " "), Answers.NONE))
            .at("/cautions")
            .isMissingNode());
    assertTrue(
        step(read(commented("Torque", "52 Nm"), Answers.NONE)).at("/cautions").isMissingNode());
  }

  @Test
  @DisplayName("in XLSX is read alike, with rich text, without its author")
  void xlsx() throws IOException, Fault {
    Path file = Sheets.usual(folder, sheet -> sheet.comment(1, 3, "use 80 now!"));
    assertEquals("use 80 now!", read(file, Answers.NONE).questions().get(0).read());
    Path rich =
        changed(
            file,
            "xl/comments1.xml",
            "<comments xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><authors>"
                + "<author>Office 9</author></authors><commentList><comment ref=\"D2\""
                + " authorId=\"0\"><text><r><t>Office 9:</t></r><r><t>\nuse </t></r><r><t>80</t>"
                + "</r><rPh><t>no</t></rPh></text></comment><comment ref=\"A2\" authorId=\"0\">"
                + "<text><t>Office 9:</t></text></comment></commentList></comments>");
    TorqueTable table = read(rich, Answers.NONE);
    assertEquals("use 80", table.questions().get(0).read());
    assertEquals(1, table.faults().size());
  }

  @Test
  @DisplayName("of a thread is read with every answer, and not its stand-in")
  void threaded() throws IOException, Fault {
    Path file = Sheets.usual(folder, sheet -> sheet.comment(1, 3, "[Threaded comment] Comment: a"));
    String relations = part(file, "xl/worksheets/_rels/sheet1.xml.rels");
    Path linked =
        changed(
            file,
            "xl/worksheets/_rels/sheet1.xml.rels",
            relations.replace(
                "</Relationships>",
                "<Relationship Id=\"x9\" Type=\"http://schemas.microsoft.com/office/2017/10/"
                    + "relationships/threadedComment\""
                    + " Target=\"../threadedComments/threadedComment1.xml\"/></Relationships>"));
    Path threaded =
        changed(
            linked,
            "xl/threadedComments/threadedComment1.xml",
            "<ThreadedComments xmlns=\"http://schemas.microsoft.com/office/spreadsheetml/2018/"
                + "threadedcomments\"><threadedComment ref=\"D2\" id=\"{1}\"><text>is it 80?</text>"
                + "</threadedComment><threadedComment ref=\"D2\" id=\"{2}\" parentId=\"{1}\">"
                + "<text>yes</text></threadedComment></ThreadedComments>");
    assertEquals("is it 80? | yes", read(threaded, Answers.NONE).questions().get(0).read());
  }

  @Test
  @DisplayName("in a file of answers is asked and answered in its words")
  void kept() throws IOException, Fault {
    Path file = commented("Torque", "52 Nm", "=use 80, \"now\" | soon");
    Question question = read(file, Answers.NONE).questions().get(0);
    Path kept = folder.resolve("answers.csv");
    Files.writeString(kept, answered(question, "80 Nm").csv(List.of()));
    assertEquals(
        "80",
        step(read(file, Answers.read(kept))).at("/fastener/variants/0/stages/0/torque").asText());
  }

  private static String part(Path file, String name) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      byte[] bytes = zip.getInputStream(zip.getEntry(name)).readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }

  /** The workbook with another part, or one more. */
  private static Path changed(Path file, String name, String text) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream to = new ZipOutputStream(out);
        ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry e : Collections.list(zip.entries())) {
        if (!e.getName().equals(name)) {
          to.putNextEntry(new ZipEntry(e.getName()));
          to.write(zip.getInputStream(e).readAllBytes());
        }
      }
      to.putNextEntry(new ZipEntry(name));
      to.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return Files.write(file, out.toByteArray());
  }
}
