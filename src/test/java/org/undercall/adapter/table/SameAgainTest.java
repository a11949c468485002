package org.undercall.adapter.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;

@DisplayName("A procedure written as a table")
class SameAgainTest {
  private static final Path EVERY = Path.of("src/test/resources/procedures/every-joint-field.json");
  private static final Path BELOW_ZERO = Path.of("src/test/resources/demo/alignment.json");

  @TempDir private Path folder;

  static List<Path> procedures() throws IOException {
    try (Stream<Path> examples = Files.list(Path.of("shared/procedures"))) {
      return Stream.concat(
              Stream.of(EVERY, BELOW_ZERO), examples.filter(ProcedureFile::named).sorted())
          .toList();
    }
  }

  private static Procedure again(TorqueTable table) throws Fault {
    assertEquals(List.of(), table.faults());
    return ProcedureFile.of(Path.of("again.json"), table.json()).procedure();
  }

  @ParameterizedTest
  @MethodSource("procedures")
  @DisplayName("is the same procedure when it is read again")
  void same(Path file) throws Fault {
    Procedure procedure = ProcedureFile.load(file).procedure();
    assertEquals(procedure, again(TorqueTable.readAgain(TableText.of(procedure))));
  }

  @Test
  @DisplayName("is the same as a workbook")
  void workbook() throws IOException, Fault {
    Procedure procedure = ProcedureFile.load(EVERY).procedure();
    List<CSVRecord> rows =
        CSVFormat.RFC4180.parse(new StringReader(TableText.of(procedure))).getRecords();
    Path file = Sheets.workbook(folder, sheet -> rows.forEach(row -> fill(sheet, row)));
    assertEquals(procedure, again(TorqueTable.read(file, TorqueTable.Wishes.NONE)));
  }

  private static void fill(Worksheet sheet, CSVRecord row) {
    for (int column = 0; column < row.size(); column++) {
      String cell = row.get(column).replaceFirst("^'", "");
      if (cell.matches("[1-9][0-9]*")) {
        sheet.value((int) row.getRecordNumber() - 1, column, Integer.parseInt(cell));
      } else {
        sheet.value((int) row.getRecordNumber() - 1, column, cell);
      }
    }
  }

  @Test
  @DisplayName("uses every column for sizes, friction, renewal and what stands beside a stage")
  void everyColumn() throws Fault {
    String csv = TableText.of(ProcedureFile.load(EVERY).procedure());
    String headings = csv.lines().filter(l -> l.contains("thread,")).findFirst().orElseThrow();
    Set<String> used = Set.of(headings.split(",", -1));
    List<String> lacking =
        Arrays.stream(Column.values())
            .filter(c -> c.compareTo(Column.RENEW) >= 0 && c.compareTo(Column.SEAT_ANGLE) <= 0)
            .map(Column::label)
            .filter(label -> !used.contains(label))
            .collect(Collectors.toList());
    for (Column column : List.of(Column.BEYOND_YIELD, Column.TORQUE_AFTER, Column.ADAPTOR)) {
      assertTrue(used.contains(column.label()), csv);
    }
    assertEquals(List.of(), lacking);
  }

  @ParameterizedTest
  @EnumSource(Column.class)
  @DisplayName("has headings that are understood as they stand")
  void headings(Column column) {
    column
        .headings()
        .forEach(text -> assertEquals(Optional.of(column), Heading.of(text).meaning(), text));
  }

  @ParameterizedTest(name = "{0} {1} -> {2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "renewed because; worn; TAB-020 B2",
        "renewed because; up to 52.5; TAB-020 B2",
        "renewed because; yielded up to 1,234 mm; TAB-011 B2",
        "friction; 0.1; TAB-010 B2",
        "friction; 0.1 to much; TAB-010 B2",
        "thread friction; 0.1 to 0.16; TAB-008",
        "clamped length; long; TAB-010 B2",
        "clamped length (in); 2; TAB-013 B2",
        "shank length; 20; TAB-008",
        "clamped material; wood; TAB-020 B2",
        "seat; round; TAB-020 B2",
        "seat angle; 60; TAB-008",
        "beyond yield; maybe; TAB-020 B2",
        "beyond yield; yes + no; TAB-031 B2",
        "torque after the angle; 100 Nm; TAB-010 B2",
        "torque after the angle; 100 to 160; TAB-012 B2",
        "torque after the angle; 10 to 16 kgm; TAB-013 B2",
        "torque after the angle; 100 to 160 Nm + 100 to 160 Nm; TAB-031 B2",
        "adaptor; 55 mm; TAB-010 B2",
        "adaptor; wrench 420 extension 55 + -; TAB-031 B2",
      })
  @DisplayName("has doubtful cells named by their address")
  void doubtful(String heading, String cell, String expected) throws IOException, Fault {
    String rest = "Fastener;Thread;Torque;Tolerance;Angle;Socket;Load condition;One-time use";
    String row = "Link bolt;M12x1.5;52 Nm;3;60;18;any;yes";
    Path file =
        Files.writeString(
            folder.resolve("t.csv"),
            "Note;" + heading + ";" + rest + "\n;" + cell + ";" + row + "\n");
    List<String> doubts =
        TorqueTable.read(file, Sheets.wishes()).faults().stream()
            .map(f -> f.code().id() + " " + f.place())
            .toList();
    String place = expected.contains(" ") ? expected.replace(" ", " t.csv ") : expected + " t.csv";
    assertTrue(doubts.contains(place), () -> expected + " in " + doubts);
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "ride height arm;length 350;ride -10;droop -100;bump 70 | TAB-028 t.csv B1",
        "ride height arm;length 350;ride -10;droop -100;bump 70;limit 5 | TAB-028 t.csv F1",
        "ride height arm;length 350;length 350 | TAB-028 t.csv C1",
        "ride height;10;mm;left 5 | TAB-013 t.csv D1",
        "load holds;an hour | TAB-028 t.csv B1",
        "tool;w9;10;210;Nm;about 2 % | TAB-010 t.csv F1",
      })
  @DisplayName("has doubtful lines above it named by their address")
  void above(String line, String expected) throws IOException, Fault {
    Path table = Sheets.csv(folder, "", "");
    Files.writeString(table, line + "\n" + Files.readString(table));
    List<String> doubts =
        TorqueTable.read(table, Sheets.wishes()).faults().stream()
            .map(f -> f.code().id() + " " + f.place())
            .toList();
    assertTrue(doubts.contains(expected), () -> expected + " in " + doubts);
  }
}
