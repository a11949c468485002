package org.undercall.adapter.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.port.Fault;

@DisplayName("A table of torques")
class TorqueTableTest {
  @TempDir private Path folder;

  private static JsonNode step(TorqueTable table) throws IOException {
    assertEquals(List.of(), table.faults());
    return new ObjectMapper().readTree(table.json()).at("/phases/0/steps/0");
  }

  private static List<String> doubts(TorqueTable table) {
    return table.faults().stream().map(f -> f.code().id() + " " + f.place()).toList();
  }

  private static String refused(Path file) {
    return assertThrows(Fault.class, () -> TorqueTable.read(file, Sheets.wishes())).code().id();
  }

  @Nested
  @DisplayName("has cells that mean")
  class Cells {

    @ParameterizedTest(name = "{0} {1} -> {3}")
    @CsvSource(
        delimiter = ';',
        value = {
          "Torque; 52,5 Nm; /fastener/variants/0/stages;"
              + " [{\"torque\":52.5,\"unit\":\"N·m\",\"plusMinus\":3}]",
          "Torque; 52 ft-lb; /fastener/variants/0/stages;"
              + " [{\"torque\":52,\"unit\":\"lbf·ft\",\"plusMinus\":3}]",
          "Torque; 52 in·lb; /fastener/variants/0/stages;"
              + " [{\"torque\":52,\"unit\":\"lbf·in\",\"plusMinus\":3}]",
          "Torque; 80 Nm + 90°; /fastener/variants/0/stages;"
              + " [{\"torque\":80,\"unit\":\"N·m\",\"plusMinus\":3},{\"angle\":90,\"plusMinus\":5}]",
          "Torque; 80 N·m + 45° ± 2° + 45° ± 2°; /fastener/variants/0/stages/2;"
              + " {\"angle\":45,\"plusMinus\":2}",
          "Angle; 90 deg; /fastener/variants/0/stages/1; {\"angle\":90,\"plusMinus\":5}",
          "Tolerance; 4 %; /fastener/variants/0/stages/0/plusMinus; 2.08",
          "Tolerance; ± 2,5 Nm; /fastener/variants/0/stages/0/plusMinus; 2.5",
          "Class; 8,8; /fastener/variants/0/marking; \"8.8\"",
          "Class; class 10.9; /fastener/variants/0/marking; \"10.9\"",
          "Thread; M12 × 1,50; /fastener/thread; \"M12x1.5\"",
          "Thread; m10 x 1; /fastener/thread; \"M10x1\"",
          "Socket; 18 mm; /fastener/drive; 18",
          "Socket; 9/16 in; /fastener/drive; 0.5625",
          "Socket; 9/16 in; /fastener/driveUnit; \"in\"",
          "Socket; 1 1/8 inch; /fastener/drive; 1.125",
          "Socket; 1 in; /fastener/drive; 1",
          "Thread; 1/2-20 unf; /fastener/thread; \"1/2-20 UNF\"",
          "Thread; 1 1/8-12 UNF; /fastener/thread; \"1 1/8-12 UNF\"",
          "Thread; #10-32 UNF; /fastener/thread; \"#10-32 UNF\"",
          "Load condition; Ride Height; /fastener/needs; \"ride-height\"",
          "One-time use; Yes; /fastener/oneTimeUse; true",
          "Note; Hold the pin; /cautions; [\"Hold the pin\"]",
          "Class; –; /fastener/stages/0/torque; 52",
          "Angle; 1/4 turn; /fastener/variants/0/stages/1/angle; 90",
          "Angle; half a turn; /fastener/variants/0/stages/1/angle; 180",
          "Torque; 52 Nm then a further 90 degrees; /fastener/variants/0/stages/1/angle; 90",
          "Torque; 70 Nm/60°; /fastener/variants/0/stages/1/angle; 60",
          "Torque; 1) 40 Nm 2) +90 deg; /fastener/variants/0/stages;"
              + " [{\"torque\":40,\"unit\":\"N·m\",\"plusMinus\":3},{\"angle\":90,\"plusMinus\":5}]",
          "Torque; 70 Nm (52 lbf·ft); /fastener/variants/0/stages/0/torque; 70",
          "Thread; 1/2 UNC; /fastener/thread; \"1/2-13 UNC\"",
          "Thread; UNF 7/16 x 20; /fastener/thread; \"7/16-20 UNF\"",
          "Thread; M12-1.5; /fastener/thread; \"M12x1.5\"",
          "Thread; M12x1,5x80; /fastener/thread; \"M12x1.5\"",
          "Load condition; wheels on ground; /fastener/needs; \"ride-height\"",
          "One-time use; x; /fastener/oneTimeUse; true",
          "One-time use; must be renewed; /fastener/oneTimeUse; true",
          "One-time use; may be re-used; /fastener/oneTimeUse; false",
        })
    @DisplayName("one thing")
    void oneThing(String column, String cell, String pointer, String expected)
        throws IOException, Fault {
      Path file = Sheets.csv(folder, column, cell);
      assertEquals(expected, step(TorqueTable.read(file, Sheets.wishes())).at(pointer).toString());
    }

    @ParameterizedTest(name = "{0} {1} -> {2}")
    @CsvSource(
        delimiter = ';',
        value = {
          "Torque; 52; TAB-012 D2",
          "Torque; 80-90 Nm; TAB-023 E2",
          "Torque; 80 to 90 Nm; TAB-023 E2",
          "Torque; 80 to 90 ± 2 Nm; TAB-023 D2",
          "Torque; back off 80 Nm; TAB-010 D2",
          "Socket; 18-19; TAB-015 G2",
          "Torque; 1.234 Nm; TAB-011 D2",
          "Torque; 1,234 Nm; TAB-011 D2",
          "Torque; 1 234 Nm; TAB-010 D2",
          "Torque; ca. 52 Nm; TAB-010 D2",
          "Torque; 52 lb; TAB-013 D2",
          "Torque; 5 kgm; TAB-013 D2",
          "Torque; 80 Nm + 90; TAB-011 D2",
          "Torque; 50 Nm + 90 Nm; TAB-016 D2",
          "Torque; 70 Nm (60 lbf·ft); TAB-011 D2",
          "Torque; 1) 40 3) 80 Nm; TAB-010 D2",
          "Torque; 70 Nm + 90 + 90°; TAB-011 D2",
          "Torque; 40 Nm and 80 Nm; TAB-010 D2",
          "Torque; 40 Nm + 52 lbf·ft; TAB-011 D2",
          "Torque; 70 Nm 90; TAB-010 D2",
          "Angle; 31/2 turns; TAB-010 F2",
          "Angle; 12 1/2 turns; TAB-010 F2",
          "Torque; 52 ± 2 Nm; TAB-023 E2",
          "Torque; 10.09.2026; TAB-017 D2",
          "Torque; ''; TAB-009 D2",
          "Tolerance; ''; TAB-016 D2",
          "Tolerance; 3 ft-lb; TAB-014 E2",
          "Tolerance; +3/-2; TAB-010 E2",
          "Angle; a bit more; TAB-010 F2",
          "Angle; 90 Nm; TAB-013 F2",
          "Class; 10. Sep; TAB-017 C2",
          "Class; 10-Sep; TAB-017 C2",
          "Class; Oct 9; TAB-017 C2",
          "Class; 8.9; TAB-022 C2",
          "Class; A2-70; TAB-022 C2",
          "Thread; M12; TAB-021 B2",
          "Thread; 1/2 UNEF; TAB-021 B2",
          "Thread; 7/16-20 UNC; TAB-021 B2",
          "Thread; M12x1.3; TAB-021 B2",
          "Thread; 1/3-13 UNC; TAB-021 B2",
          "Socket; E14; TAB-010 G2",
          "Load condition; loaded; TAB-020 H2",
          "Load condition; ''; TAB-009 H2",
          "One-time use; perhaps; TAB-020 I2",
          "One-time use; ''; TAB-009 I2",
          "Order; cross; TAB-010 J2",
          "Fastener; ''; TAB-009 A2",
          "Fastener; Link nut; TAB-008",
        })
    @DisplayName("nothing certain, and are named by their address")
    void doubtful(String column, String cell, String expected) throws IOException, Fault {
      Path file = Sheets.csv(folder, column, cell);
      String place = expected.replace("-0", "-0").replace(" ", " t.csv ");
      place = place.contains("t.csv") ? place : place + " t.csv";
      List<String> doubts = doubts(TorqueTable.read(file, Sheets.wishes()));
      assertTrue(doubts.contains(place), () -> expected + " in " + doubts);
    }
  }

  @Nested
  @DisplayName("as a workbook")
  class AsWorkbook {

    @Test
    @DisplayName("has joined headings, joined cells, numbers, and a joined row as a phase")
    void joined() throws IOException, Fault {
      Path file =
          Sheets.workbook(
              folder,
              sheet -> {
                String[] top = {
                  "Fastener",
                  "Thread",
                  "Torque",
                  "",
                  "Class",
                  "Socket",
                  "Load",
                  "New each time",
                  "Kept in"
                };
                for (int i = 0; i < top.length; i++) {
                  if (!top[i].isEmpty()) {
                    sheet.value(2, i, top[i]);
                  }
                  if (i != 2 && i != 3) {
                    sheet.range(2, i, 3, i).merge();
                  }
                }
                sheet.range(2, 2, 2, 3).merge();
                sheet.value(3, 2, "Nm");
                sheet.value(3, 3, "±");
                sheet.value(4, 0, "Rear axle");
                sheet.range(4, 0, 4, 8).merge();
                Object[][] rows = {
                  {"Link bolt", "M12x1.5", 52.3, 3, 8.8, 18, "any", true},
                  {null, null, 65, 3, 10.9, null, null, null}
                };
                for (int r = 0; r < rows.length; r++) {
                  for (int c = 0; c < rows[r].length; c++) {
                    Object v = rows[r][c];
                    if (v instanceof String s) {
                      sheet.value(5 + r, c, s);
                    } else if (v instanceof Number n) {
                      sheet.value(5 + r, c, n);
                    } else if (v instanceof Boolean b) {
                      sheet.value(5 + r, c, b);
                    }
                  }
                }
                for (int c : new int[] {0, 1, 5, 6, 7}) {
                  sheet.range(5, c, 6, c).merge();
                }
              });
      TorqueTable table = TorqueTable.read(file, Sheets.wishes());
      JsonNode step = step(table);
      assertEquals(
          "[{\"marking\":\"8.8\",\"stages\":[{\"torque\":52.3,\"unit\":\"N·m\",\"plusMinus\":3}]},"
              + "{\"marking\":\"10.9\",\"stages\":[{\"torque\":65,\"unit\":\"N·m\",\"plusMinus\":3}]}]",
          step.at("/fastener/variants").toString());
      assertTrue(step.at("/fastener/oneTimeUse").booleanValue());
      assertTrue(table.json().contains("\"Rear axle\""), table.json());
      assertTrue(
          table.preview().contains("  I  Kept in                      not taken"),
          () -> table.preview().toString());
    }

    @Test
    @DisplayName("keeps no class that became a date, and no formula or error")
    void dates() throws IOException, Fault {
      Path file =
          Sheets.usual(
              folder,
              sheet -> {
                sheet.value(1, 2, java.time.LocalDate.of(2026, 9, 10));
                sheet.style(1, 2).format("d. mmm").set();
                sheet.formula(1, 4, "1+2");
              });
      assertEquals(
          List.of("TAB-017 t.xlsx C2", "TAB-018 t.xlsx E2"),
          doubts(TorqueTable.read(file, Sheets.wishes())));
    }

    @Test
    @DisplayName("has percent as they are shown")
    void percent() throws IOException, Fault {
      Path file =
          Sheets.usual(
              folder,
              sheet -> {
                sheet.value(1, 4, 0.04);
                sheet.style(1, 4).format("0%").set();
              });
      JsonNode step = step(TorqueTable.read(file, Sheets.wishes()));
      assertEquals("2.08", step.at("/fastener/variants/0/stages/0/plusMinus").toString());
    }

    @Test
    @DisplayName("with a hidden row of values is doubtful")
    void hiddenRow() throws IOException, Fault {
      Path file = Sheets.usual(folder, sheet -> sheet.hideRow(1));
      assertTrue(doubts(TorqueTable.read(file, Sheets.wishes())).contains("TAB-026 t.xlsx A2"));
    }

    @Test
    @DisplayName("with a hidden column that is taken is doubtful, and not if it is left out")
    void hiddenColumn() throws IOException, Fault {
      Path file = Sheets.usual(folder, sheet -> sheet.hideColumn(4));
      assertEquals(List.of("TAB-026 t.xlsx E1"), doubts(TorqueTable.read(file, Sheets.wishes())));
      TorqueTable.Wishes usual = Sheets.wishes();
      TorqueTable.Wishes left =
          new TorqueTable.Wishes(usual.set(), Map.of("E", "-"), usual.sheet(), usual.answers());
      assertTrue(doubts(TorqueTable.read(file, left)).stream().noneMatch(d -> d.contains("E1")));
    }

    @Test
    @DisplayName("that unpacks to very much is refused before it is read")
    void bomb() throws IOException {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      try (ZipOutputStream zip = new ZipOutputStream(out)) {
        zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
        byte[] blank = new byte[1 << 20];
        for (int i = 0; i < 200; i++) {
          zip.write(blank);
        }
      }
      assertTrue(out.size() < 1 << 20);
      assertEquals("TAB-002", refused(Files.write(folder.resolve("bomb.xlsx"), out.toByteArray())));
    }

    @Test
    @DisplayName("that is damaged anywhere is read or refused with a code")
    void damaged() throws IOException {
      byte[] good = Files.readAllBytes(Sheets.usual(folder, sheet -> {}));
      int refused = 0;
      for (int i = 0; i < good.length; i += 41) {
        byte[] bad = good.clone();
        bad[i] ^= 0x55;
        Path file = Files.write(folder.resolve("bad.xlsx"), bad);
        try {
          TorqueTable.read(file, Sheets.wishes());
        } catch (Fault e) {
          refused++;
          assertTrue(e.getMessage().startsWith("TAB-0"), e.getMessage());
        }
      }
      assertTrue(refused > 0);
      assertEquals("TAB-004", refused(Files.write(folder.resolve("no.xlsx"), new byte[] {1, 2})));
    }
  }

  @Nested
  @DisplayName("as text")
  class AsText {

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252"})
    @DisplayName("is read in its charset, with or without its mark")
    void charsets(String name) throws IOException, Fault {
      String text = Files.readString(Sheets.csv(folder, "Torque", "52 N·m ± 3").normalize());
      String marked = name.startsWith("UTF") ? "\uFEFF" + text : text;
      Path file = folder.resolve("t.csv");
      Files.write(file, marked.replace("\"3\"", "").getBytes(Charset.forName(name)));
      assertTrue(step(TorqueTable.read(file, Sheets.wishes())).toString().contains("N·m"));
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", "|"})
    @DisplayName("is divided by what divides it")
    void delimiters(String delimiter) throws IOException, Fault {
      String text = Files.readString(Sheets.csv(folder, "", ""));
      Path file = Files.writeString(folder.resolve("t.csv"), text.replace(";", delimiter));
      assertEquals(
          "Link bolt",
          step(TorqueTable.read(file, Sheets.wishes())).at("/fastener/name").textValue());
    }

    @Test
    @DisplayName("without headings, of zero bytes, or of another kind is refused")
    void refusedWhole() throws IOException {
      Path file = folder.resolve("t.csv");
      assertEquals("TAB-006", refused(Files.writeString(file, "a,b,c\n1,2,3\n")));
      assertEquals(
          "TAB-003", refused(Files.write(file, "a,b".getBytes(StandardCharsets.UTF_16LE))));
      assertEquals("TAB-003", refused(Files.write(file, new byte[] {(byte) 0x81, ',', 'a'})));
      assertEquals("TAB-003", refused(Files.writeString(file, "")));
      assertEquals("TAB-001", refused(folder.resolve("t.xls")));
      assertEquals("TAB-001", refused(folder.resolve("none.csv")));
      assertEquals("TAB-002", refused(Files.writeString(file, "a,b\n".repeat(3000))));
      assertEquals("TAB-007", refused(Files.writeString(file, "torque,thread,class,torque\n")));
    }
  }

  @Test
  @DisplayName("with everything doubtful at once has each cell named")
  void messy() throws Fault {
    List<String> doubts =
        doubts(TorqueTable.read(Path.of("src/test/resources/tables/messy.csv"), Sheets.wishes()));
    for (String cell :
        List.of("E13", "B15", "D15", "H15", "C16", "G16", "I16", "C17", "E17", "C18", "C19")) {
      assertTrue(
          doubts.stream().anyMatch(d -> d.endsWith(" " + cell)), () -> cell + " in " + doubts);
    }
  }
}
