package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

@DisplayName("A workbook with an old sheet beside and a comment on a torque")
class ImportWorkbookTest {
  private static final String[][] ABOVE = {
    {"Title", "Rear arms"},
    {"Vehicle", "Invented van"},
    {"Author", "Test"},
    {"Revision", "1"},
    {"Source", "invented for a test"},
    {"Caution", "Stands carry the van. Never work under a jack alone."},
    {"Tool", "wrench 2", "40", "210", "Nm", "2026-03-03"},
    {
      "Fastener",
      "Thread",
      "Class",
      "Torque",
      "Tolerance",
      "Socket",
      "Side",
      "New",
      "Load",
      "Lubrication"
    },
  };

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String typed, String... options) {
    Clock clock = Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);
    CommandLine line = new CommandLine(new ImportCommand(clock, new StringReader(typed)));
    line.setExecutionExceptionHandler(
        (e, l, r) -> {
          l.getErr().println(e.getMessage());
          return 1;
        });
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    List<String> all =
        new ArrayList<>(
            List.of(folder.resolve("t.xlsx").toString(), "--out=" + folder.resolve("out.json")));
    all.addAll(Arrays.asList(options));
    return line.execute(all.toArray(String[]::new));
  }

  private void book(String comment, String... sheets) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      for (String name : sheets) {
        fill(book.newWorksheet(name), name.equals("2019") ? "60 Nm" : "70 Nm", comment);
      }
    }
    Files.write(folder.resolve("t.xlsx"), bytes.toByteArray());
  }

  private static void fill(Worksheet sheet, String torque, String comment) {
    String[] row = {
      "Arm bolt", "M12x1.5", "10.9", torque, "4 %", "18", "both", "yes", "ride height", "dry"
    };
    for (int i = 0; i < ABOVE.length; i++) {
      for (int j = 0; j < ABOVE[i].length; j++) {
        sheet.value(i, j, ABOVE[i][j]);
      }
    }
    for (int j = 0; j < row.length; j++) {
      sheet.value(ABOVE.length, j, row[j]);
    }
    if (!comment.isEmpty()) {
      sheet.comment(ABOVE.length, 3, comment);
    }
  }

  private String json() throws IOException {
    return Files.readString(folder.resolve("out.json")).replaceAll("\\s", "");
  }

  @Test
  @DisplayName("is asked for both, and not again; a new comment or sheet is")
  void asked() throws IOException {
    book("use 80 now!", "2026", "2019");
    assertEquals(1, run("", "--no-ask"));
    assertTrue(err.toString().contains("TAB-005 t.xlsx"), err::toString);
    assertEquals(0, run("1\n80 Nm\n", "--ask"), err::toString);
    assertTrue(json().contains("\"torque\":80,"), this::told);
    assertTrue(told().contains("The sheet \"2019\" is left out: 1 row below a heading."));
    assertEquals(0, run("", "--no-ask"), err::toString);
    assertTrue(told().contains("says the same already"));
    book("use 85 now!", "2026", "2019");
    assertEquals(1, run("", "--no-ask"));
    assertTrue(err.toString().contains("TAB-033 t.xlsx D9"), err::toString);
    book("use 80 now!", "2026", "2019", "2027");
    assertEquals(1, run("", "--no-ask"));
    assertTrue(json().contains("\"torque\":80,"));
  }

  @Test
  @DisplayName("skipped, or a name that is none, writes nothing")
  void skipped() throws IOException {
    book("", "2026", "2019");
    for (String typed : List.of("skip\n", "2018\n", "", "stop\n", "-\n", "all of them\n")) {
      assertEquals(1, run(typed, "--ask"), typed);
      assertTrue(Files.notExists(folder.resolve("out.json")), typed);
      Files.deleteIfExists(folder.resolve("t.xlsx.answers.csv"));
    }
  }

  @Test
  @DisplayName("whose sheets are named by a figure are answered by name, not by their place")
  void figures() throws IOException {
    book("", "2", "1");
    assertEquals(0, run("1\n", "--ask"), err::toString);
    assertTrue(told().contains("The sheet \"2\" is left out"), this::told);
  }

  @Test
  @DisplayName("can be read as one table, what stands above both taken once")
  void all() throws IOException {
    book("", "Front", "Rear");
    assertEquals(0, run("all\n", "--ask"), err::toString);
    assertTrue(json().contains("\"name\":\"Front\"") && json().contains("\"name\":\"Rear\""));
    assertEquals(2, json().split("wrench2", -1).length);
  }

  private String told() {
    return out.toString();
  }
}
