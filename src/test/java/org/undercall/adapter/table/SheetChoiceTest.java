package org.undercall.adapter.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.port.Fault;

@DisplayName("A workbook of several sheets")
class SheetChoiceTest {
  @TempDir private Path folder;

  private static TorqueTable.Wishes wishes(String sheet, Answers answers) {
    TorqueTable.Wishes usual = Sheets.wishes();
    return new TorqueTable.Wishes(usual.set(), usual.map(), Optional.ofNullable(sheet), answers);
  }

  private static String torques(String name, String fastener, String torque) {
    return Ods.table(
        name, Ods.headings(), Ods.row(Ods.usual("Fastener", fastener, "Torque", torque)));
  }

  private Path old() throws IOException {
    return Ods.book(
        folder, torques("2026", "Link bolt", "52 Nm"), torques("2019", "Link bolt", "45 Nm"));
  }

  private static Answers.Answer answer(Question question, String text) {
    return new Answers.Answer(question.asked(), question.read(), List.of(), text);
  }

  private static String torque(TorqueTable table) throws IOException {
    assertEquals(List.of(), table.faults());
    JsonNode root = new ObjectMapper().readTree(table.json());
    return root.at("/phases/0/steps/0/fastener/variants/0/stages/0/torque").asText();
  }

  @Test
  @DisplayName("asks which, tells how much the others hold, and keeps the answer for these alone")
  void asked() throws IOException, Fault {
    TorqueTable open = TorqueTable.read(old(), wishes(null, Answers.NONE));
    assertEquals(1, open.questions().size());
    Question question = open.questions().get(0);
    assertEquals(TableCode.WHICH_SHEET, question.code());
    assertEquals(List.of(), open.preview());
    assertEquals(List.of("2026", "2019", "all"), question.possible());
    assertTrue(question.expected().contains("\"2019\" (1 row below a heading)"));
    Answers answers = Answers.NONE.with(answer(question, "2026"));
    TorqueTable table = TorqueTable.read(old(), wishes(null, answers));
    assertEquals("52", torque(table));
    assertTrue(
        table.preview().contains("The sheet \"2019\" is left out: 1 row below a heading."),
        () -> table.preview().toString());
    Path more =
        Ods.book(
            folder,
            torques("2027", "Link bolt", "60 Nm"),
            torques("2026", "Link bolt", "52 Nm"),
            torques("2019", "Link bolt", "45 Nm"));
    assertEquals(1, TorqueTable.read(more, wishes(null, answers)).questions().size());
    assertEquals(
        1,
        TorqueTable.read(old(), wishes(null, Answers.NONE.with(answer(question, "2018"))))
            .questions()
            .size());
  }

  @Test
  @DisplayName("is read as one table if that is said, each sheet a phase, cells named by sheet")
  void all() throws IOException, Fault {
    Path file =
        Ods.book(
            folder, torques("Front", "Arm bolt", "52 Nm"), torques("Rear", "Arm bolt", "61 Nm"));
    TorqueTable table = TorqueTable.read(file, wishes("all", Answers.NONE));
    assertEquals("52", torque(table));
    JsonNode phases = new ObjectMapper().readTree(table.json()).at("/phases");
    assertEquals("Front", phases.at("/0/name").asText());
    assertEquals("Rear", phases.at("/1/name").asText());
    assertEquals("Rear row 2", table.rows().get("/phases/1/steps/0"));
    Path bad =
        Ods.book(folder, torques("Front", "Arm bolt", "52"), torques("Rear", "Arm bolt", "61"));
    TorqueTable doubtful = TorqueTable.read(bad, wishes("all", Answers.NONE));
    assertEquals(
        List.of("t.ods Front D2", "t.ods Rear D2"),
        doubtful.faults().stream().map(f -> f.place().name()).toList());
  }

  @Test
  @DisplayName("is not read as one if the headings mean different things, nor if one has none")
  void apart() throws IOException, Fault {
    Path file =
        Ods.book(
            folder,
            torques("Front", "Arm bolt", "52 Nm"),
            Ods.table(
                "Other",
                Ods.row(List.of("Teil", "Gewinde", "Wert")),
                Ods.row(List.of("Bolzen", "M12x1.5", "60"))));
    TorqueTable open = TorqueTable.read(file, wishes(null, Answers.NONE));
    assertEquals(List.of("Front", "Other"), open.questions().get(0).possible());
    assertThrows(Fault.class, () -> TorqueTable.read(file, wishes("all", Answers.NONE)));
    assertThrows(Fault.class, () -> TorqueTable.read(file, wishes("Rear", Answers.NONE)));
    assertEquals("52", torque(TorqueTable.read(file, wishes("Front", Answers.NONE))));
  }

  @Test
  @DisplayName("is not read as one if one has a column more that is known")
  void oneColumnMore() throws IOException, Fault {
    List<String> headings = new ArrayList<>(Sheets.HEADINGS);
    headings.set(9, "Shelf");
    String less = Ods.table("Rear", Ods.row(headings), Ods.row(Ods.usual()));
    Path file = Ods.book(folder, torques("Front", "Arm bolt", "52 Nm"), less);
    TorqueTable open = TorqueTable.read(file, wishes(null, Answers.NONE));
    assertEquals(List.of("Front", "Rear"), open.questions().get(0).possible());
  }

  @Test
  @DisplayName("of which one alone holds fasteners is read; notes and hidden sheets are named")
  void notes() throws IOException, Fault {
    String notes =
        Ods.table("Notes", Ods.row(List.of("Ask the boss")), Ods.row(List.of("and the desk")));
    String hidden = Ods.hidden("Old", Ods.headings(), Ods.row(Ods.usual()), Ods.row(Ods.usual()));
    Path file = Ods.book(folder, notes, hidden, torques("Now", "Link bolt", "52 Nm"));
    TorqueTable table = TorqueTable.read(file, wishes(null, Answers.NONE));
    assertEquals("52", torque(table));
    String preview = table.preview().toString();
    assertTrue(preview.contains("\"Notes\" is left out: 2 rows, no known heading."), preview);
    assertTrue(preview.contains("The hidden sheet \"Old\" is left out: 2 rows below"), preview);
    assertThrows(Fault.class, () -> TorqueTable.read(file, wishes("Old", Answers.NONE)));
  }

  @Test
  @DisplayName("has a sheet that is too large asked about, and refused only if it is the one")
  void tooLarge() throws IOException, Fault {
    String large =
        Ods.table("Stock", Ods.rowWith("table:number-rows-repeated=\"5000\"", List.of("a", "b")));
    Path file = Ods.book(folder, torques("Now", "Link bolt", "52 Nm"), large);
    assertEquals(1, TorqueTable.read(file, wishes(null, Answers.NONE)).questions().size());
    TorqueTable table = TorqueTable.read(file, wishes("Now", Answers.NONE));
    assertEquals("52", torque(table));
    assertTrue(table.preview().toString().contains("\"Stock\" is left out: it cannot be read"));
    Fault refused =
        assertThrows(Fault.class, () -> TorqueTable.read(file, wishes("Stock", Answers.NONE)));
    assertEquals("TAB-002", refused.code().id());
  }

  @Test
  @DisplayName("in XLSX is treated alike")
  void xlsx() throws IOException, Fault {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "test", "1.0")) {
      fill(book.newWorksheet("2026"), "52 Nm");
      fill(book.newWorksheet("2019"), "45 Nm");
      book.newWorksheet("Notes").value(0, 0, "Ask the boss");
      Worksheet hidden = book.newWorksheet("Old");
      fill(hidden, "40 Nm");
      hidden.setVisibilityState(VisibilityState.HIDDEN);
    }
    Path file = Files.write(folder.resolve("t.xlsx"), out.toByteArray());
    TorqueTable open = TorqueTable.read(file, wishes(null, Answers.NONE));
    assertEquals(List.of("2026", "2019", "all"), open.questions().get(0).possible());
    TorqueTable table = TorqueTable.read(file, wishes("2019", Answers.NONE));
    assertEquals("45", torque(table));
    String preview = table.preview().toString();
    for (String name : List.of("sheet \"2026\"", "sheet \"Notes\"", "hidden sheet \"Old\"")) {
      assertTrue(preview.contains("The " + name + " is left out"), preview);
    }
  }

  private static void fill(Worksheet sheet, String torque) {
    for (int i = 0; i < Sheets.ROW.size(); i++) {
      sheet.value(0, i, Sheets.HEADINGS.get(i));
      sheet.value(1, i, i == 3 ? torque : Sheets.ROW.get(i));
    }
  }
}
