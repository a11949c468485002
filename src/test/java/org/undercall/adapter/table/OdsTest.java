package org.undercall.adapter.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;

@DisplayName("A table in ODS")
class OdsTest {
  @TempDir private Path folder;

  private static JsonNode step(TorqueTable table) throws IOException {
    assertEquals(List.of(), table.faults());
    return new ObjectMapper().readTree(table.json()).at("/phases/0/steps/0");
  }

  private TorqueTable read(String... tables) throws IOException, Fault {
    return TorqueTable.read(Ods.book(folder, tables), Sheets.wishes());
  }

  private TorqueTable usual(String... changed) throws IOException, Fault {
    return read(Ods.table("Torques", Ods.headings(), Ods.row(Ods.usual(changed))));
  }

  private static List<String> doubts(TorqueTable table) {
    return table.faults().stream().map(f -> f.code().id() + " " + f.place()).toList();
  }

  private String refused(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("bad.ods"), bytes);
    return assertThrows(Fault.class, () -> TorqueTable.read(file, Sheets.wishes())).getMessage();
  }

  @Test
  @DisplayName("has texts as they were written in another locale, and numbers as they are stored")
  void locale() throws IOException, Fault {
    JsonNode step =
        step(
            usual(
                "Torque",
                "52,5 Nm",
                "Tolerance",
                Ods.cell("percentage", "office:value=\"0.04\"", "4,00 %"),
                "Class",
                Ods.number("8.8", "8,8"),
                "Socket",
                Ods.number("18", "18"),
                "One-time use",
                Ods.cell("boolean", "office:boolean-value=\"false\"", "FALSCH")));
    assertEquals("52.5", step.at("/fastener/variants/0/stages/0/torque").asText());
    assertEquals("2.1", step.at("/fastener/variants/0/stages/0/plusMinus").asText());
    assertEquals("8.8", step.at("/fastener/variants/0/marking").asText());
    assertEquals("false", step.at("/fastener/oneTimeUse").asText());
  }

  @Test
  @DisplayName("has texts in pieces, with blanks of their own, in several lines")
  void pieces() throws IOException, Fault {
    String cell =
        "<table:table-cell office:value-type=\"string\"><text:p>52<text:s/><text:span>N</text:span>m"
            + "</text:p><text:p>+ 90°</text:p></table:table-cell>";
    assertEquals(
        "90", step(usual("Torque", cell)).at("/fastener/variants/0/stages/1/angle").asText());
  }

  @ParameterizedTest(name = "{0} -> {2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "date; office:date-value=\"2026-09-10\"; TAB-017 t.ods C2",
        "time; office:time-value=\"PT08H08M00S\"; TAB-017 t.ods C2",
        "float; office:value=\"8.8\" table:formula=\"of:=4.4*2\"; TAB-018 t.ods C2",
        "string; table:formula=\"of:=1/0\" calcext:error=\"error\"; TAB-018 t.ods C2",
        "currency; office:currency=\"EUR\" office:value=\"8.8\"; TAB-022 t.ods C2",
      })
  @DisplayName("keeps no date, formula, money for a class")
  void kinds(String type, String attributes, String expected) throws IOException, Fault {
    TorqueTable table = usual("Class", Ods.cell(type, attributes, "8,8 x"));
    assertTrue(doubts(table).contains(expected), () -> doubts(table).toString());
  }

  @Test
  @DisplayName("tells the error of a calculation, and the kept value of a formula")
  void errors() throws IOException, Fault {
    String error =
        "<table:table-cell table:formula=\"of:=1/0\" office:value-type=\"string\""
            + " office:string-value=\"\" calcext:value-type=\"error\"><text:p>#DIV/0!</text:p>"
            + "</table:table-cell>";
    assertEquals(List.of("TAB-019 t.ods E2"), doubts(usual("Tolerance", error)));
    String first =
        error
            .replace(" calcext:value-type=\"error\"", "")
            .replace("office:value-type", "calcext:value-type=\"error\" office:value-type");
    assertEquals(List.of("TAB-019 t.ods E2"), doubts(usual("Tolerance", first)));
    TorqueTable formula =
        usual("Tolerance", Ods.cell("float", "table:formula=\"of:=1+2\" office:value=\"3\"", "3"));
    assertEquals("TAB-018 t.ods E2: found \"=1+2 (3)\"", start(formula));
  }

  private static String start(TorqueTable table) {
    return table.faults().get(0).toString().replaceFirst(", expected.*", "");
  }

  @Test
  @DisplayName("has joined cells over rows, as over left and right, and a joined row as a phase")
  void joined() throws IOException, Fault {
    String down =
        "<table:table-cell table:number-rows-spanned=\"2\" office:value-type=\"string\">"
            + "<text:p>52 Nm</text:p></table:table-cell>";
    String title =
        "<table:table-row><table:table-cell table:number-columns-spanned=\"11\""
            + " office:value-type=\"string\"><text:p>Rear axle</text:p></table:table-cell>"
            + "<table:covered-table-cell table:number-columns-repeated=\"10\"/></table:table-row>";
    TorqueTable table =
        read(
            Ods.table(
                "Torques",
                Ods.headings(),
                title,
                Ods.row(Ods.usual("Fastener", "Arm bolt LH", "Torque", down)),
                Ods.row(
                    Ods.usual(
                        "Fastener", "Arm bolt RH", "Torque", "<table:covered-table-cell/>"))));
    assertEquals(
        "52", step(table).at("/fastener/variants/0/stages/0/torque").asText(), table::json);
    assertTrue(table.json().contains("\"Rear axle\""));
  }

  @Test
  @DisplayName("goes over empty rows and columns without end, and repeats what is repeated")
  void repeated() throws IOException, Fault {
    String gap =
        "<table:table-row table:number-rows-repeated=\"1048000\"><table:table-cell"
            + " table:number-columns-repeated=\"16384\"/></table:table-row>";
    String two =
        "<table:table-cell table:number-columns-repeated=\"2\" office:value-type=\"string\">"
            + "<text:p>any</text:p></table:table-cell>";
    List<String> cells = new ArrayList<>(Ods.usual("Load condition", two));
    cells.remove(8);
    TorqueTable table =
        read(
            Ods.table(
                "Torques",
                Ods.headings(),
                Ods.rowWith("table:number-rows-repeated=\"2\"", cells),
                gap));
    assertEquals(
        List.of("TAB-020 t.ods I2", "TAB-020 t.ods I3"),
        doubts(table).stream().filter(d -> d.startsWith("TAB-020")).toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "table:visibility=\"collapse\"",
        "table:visibility=\"filter\"",
      })
  @DisplayName("with a row that is hidden, by hand or by a filter, is doubtful")
  void hiddenRow(String how) throws IOException, Fault {
    String row = Ods.rowWith(how, Ods.usual());
    TorqueTable table = read(Ods.table("Torques", Ods.headings(), Ods.row(Ods.usual()), row));
    assertTrue(doubts(table).contains("TAB-026 t.ods A3"), () -> doubts(table).toString());
    TorqueTable group =
        read(
            Ods.table(
                "Torques",
                Ods.headings(),
                Ods.row(Ods.usual()),
                "<table:table-row-group table:display=\"false\">"
                    + Ods.row(Ods.usual("Fastener", "Other bolt"))
                    + "</table:table-row-group>",
                Ods.row(Ods.usual("Fastener", "Third bolt"))));
    assertEquals(List.of("TAB-026 t.ods A3"), doubts(group));
  }

  @Test
  @DisplayName("with a hidden column that is taken is doubtful")
  void hiddenColumn() throws IOException, Fault {
    String columns =
        "<table:table-column table:number-columns-repeated=\"4\"/>"
            + "<table:table-column table:visibility=\"collapse\"/>";
    TorqueTable table = read(Ods.table("Torques", columns, Ods.headings(), Ods.row(Ods.usual())));
    assertEquals(List.of("TAB-026 t.ods E1"), doubts(table));
    assertTrue(table.preview().toString().contains("tolerance, hidden"));
  }

  @Test
  @DisplayName("does not read what was changed, what is kept of other files, and what lies over it")
  void notCells() throws IOException, Fault {
    String changes =
        "<table:tracked-changes><table:cell-content-change><table:previous><table:table"
            + " table:name=\"x\">"
            + Ods.row(Sheets.HEADINGS)
            + "</table:table></table:previous></table:cell-content-change></table:tracked-changes>";
    String other = Ods.table("'file:///old.ods'#Torques", "<table:table-source/>", Ods.headings());
    String shapes = "<table:shapes><text:p>use 80</text:p></table:shapes>";
    TorqueTable table =
        read(changes, other, Ods.table("T", shapes, Ods.headings(), Ods.row(Ods.usual())));
    assertEquals("Link bolt", step(table).at("/fastener/name").asText());
    assertTrue(table.preview().stream().noneMatch(line -> line.contains("left out")));
  }

  @Test
  @DisplayName("gives the procedure again that was written as a table")
  void sameAgain() throws IOException, Fault {
    Procedure procedure =
        ProcedureFile.load(Path.of("src/test/resources/procedures/every-joint-field.json"))
            .procedure();
    List<String> rows = new ArrayList<>();
    for (CSVRecord record :
        CSVFormat.RFC4180.parse(new StringReader(TableText.of(procedure))).getRecords()) {
      rows.add(
          Ods.row(record.stream().map(c -> c.replaceFirst("^'", "")).map(OdsTest::typed).toList()));
    }
    Path file = Ods.book(folder, Ods.table("Torques", rows.toArray(String[]::new)));
    TorqueTable table = TorqueTable.read(file, TorqueTable.Wishes.NONE);
    assertEquals(List.of(), table.faults());
    assertEquals(procedure, ProcedureFile.of(Path.of("again.json"), table.json()).procedure());
  }

  private static String typed(String cell) {
    return cell.matches("[1-9][0-9]*")
        ? Ods.number(cell, cell)
        : cell.isEmpty() ? "<table:table-cell/>" : Ods.cell("string", "", cell);
  }

  @Test
  @DisplayName("that is kept by a password, or is another document, is refused with its reason")
  void kept() throws IOException {
    byte[] kept =
        Ods.bytes(
            "noise", "<manifest:file-entry><manifest:encryption-data/></manifest:file-entry>");
    assertTrue(refused(kept).contains("TAB-004 bad.ods: found a workbook with a password"));
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(text)) {
      zip.putNextEntry(new ZipEntry("mimetype"));
      zip.write(
          "application/vnd.oasis.opendocument.text"
              .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }
    assertTrue(refused(text.toByteArray()).contains("a document of another kind"));
    assertTrue(refused(new byte[0]).startsWith("TAB-004"));
    assertTrue(refused(Ods.bytes("<a/>", "")).startsWith("TAB-004"));
    byte[] old = new byte[600];
    old[0] = (byte) 0xD0;
    old[1] = (byte) 0xCF;
    old[2] = 0x11;
    old[3] = (byte) 0xE0;
    assertTrue(refused(old).contains("with a password"));
  }

  @Test
  @DisplayName("that would fill the memory is refused before it does")
  void bombs() throws IOException {
    String many =
        Ods.table(
            "T",
            Ods.rowWith("table:number-rows-repeated=\"1048576\"", Ods.usual("Torque", "52 Nm")));
    assertTrue(refused(Files.readAllBytes(Ods.book(folder, many))).startsWith("TAB-002"));
    String wide =
        "<table:table-cell table:number-columns-repeated=\"16384\" office:value-type=\"string\">"
            + "<text:p>x</text:p></table:table-cell>";
    assertTrue(
        refused(Files.readAllBytes(Ods.book(folder, Ods.table("T", Ods.row(List.of(wide))))))
            .startsWith("TAB-002"));
    String text = "x".repeat(1 << 20);
    String long1 = Ods.rowWith("table:number-rows-repeated=\"1900\"", List.of(text));
    assertTrue(
        refused(Files.readAllBytes(Ods.book(folder, Ods.table("T", long1)))).startsWith("TAB-002"));
    assertTrue(refused(Ods.bytes(" ".repeat(30 << 20), "")).startsWith("TAB-002"));
    String entities =
        "<!DOCTYPE a [<!ENTITY b \"bbbbbbbbbb\"><!ENTITY c \"&b;&b;&b;&b;\">]><a>&c;</a>";
    assertTrue(refused(Ods.bytes(entities, "")).startsWith("TAB-004"));
    assertTrue(refused(Ods.bytes("<a>".repeat(300_000), "")).startsWith("TAB-004"));
    String deep = "<text:list>".repeat(100_000);
    String nested =
        Ods.table("T", Ods.row(List.of("<table:table-cell><office:annotation>" + deep)));
    assertTrue(refused(Files.readAllBytes(Ods.book(folder, nested))).startsWith("TAB-004"));
  }

  @Test
  @DisplayName("that is damaged anywhere is read or refused with a code")
  void damaged() throws IOException {
    String table =
        Ods.table(
            "Torques",
            Ods.headings(),
            Ods.row(Ods.usual("Torque", Ods.commented("52 Nm", "use 80 now!"))));
    byte[] good = Files.readAllBytes(Ods.book(folder, table));
    for (int i = 0; i < good.length; i += 7) {
      byte[] bad = good.clone();
      bad[i] ^= 0x55;
      readOrRefused(bad);
    }
    Random random = new Random(7);
    String content = new String(unpacked(good), java.nio.charset.StandardCharsets.UTF_8);
    for (int i = 0; i < 400; i++) {
      int from = random.nextInt(content.length());
      int to = Math.min(content.length(), from + random.nextInt(40));
      String cut = content.substring(0, from) + content.substring(to);
      String put =
          content.substring(0, from) + "1e9-x".substring(random.nextInt(5)) + content.substring(to);
      readOrRefused(Ods.bytes(random.nextBoolean() ? cut : put, ""));
    }
  }

  private static byte[] unpacked(byte[] file) throws IOException {
    try (java.util.zip.ZipInputStream zip =
        new java.util.zip.ZipInputStream(new java.io.ByteArrayInputStream(file))) {
      while (!zip.getNextEntry().getName().equals("content.xml")) {
        zip.closeEntry();
      }
      return zip.readAllBytes();
    }
  }

  private void readOrRefused(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("bad.ods"), bytes);
    try {
      TorqueTable.read(file, Sheets.wishes());
    } catch (Fault e) {
      assertTrue(e.getMessage().startsWith("TAB-0"), e.getMessage());
    }
  }
}
