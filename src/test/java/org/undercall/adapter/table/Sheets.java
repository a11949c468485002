package org.undercall.adapter.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Makes tables to be read, and reads them with everything given that is not their matter. */
final class Sheets {
  static final List<String> HEADINGS =
      List.of(
          "Fastener",
          "Thread",
          "Class",
          "Torque",
          "Tolerance",
          "Angle",
          "Socket",
          "Load condition",
          "One-time use",
          "Order",
          "Note");
  static final List<String> ROW =
      List.of("Link bolt", "M12x1.5", "8.8", "52 Nm", "3", "", "18", "any", "no", "", "");

  private Sheets() {}

  /** Puts the cells of a sheet. */
  interface Filled {
    void in(Worksheet sheet);
  }

  static TorqueTable.Wishes wishes() {
    return new TorqueTable.Wishes(
        List.of(
            Map.entry("title", "Test"),
            Map.entry("vehicle", "Invented van"),
            Map.entry("author", "Test"),
            Map.entry("revision", "1"),
            Map.entry("source", "invented for a test"),
            Map.entry("caution", "Stands carry the car."),
            Map.entry("tool", "w1; 10; 210; Nm; 2026-03-03"),
            Map.entry("side", "both"),
            Map.entry("lubrication", "dry"),
            Map.entry("angle tolerance", "5")),
        Map.of(),
        Optional.empty(),
        Answers.NONE);
  }

  /** A workbook of one sheet. */
  static Path workbook(Path folder, Filled filled) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "test", "1.0")) {
      filled.in(book.newWorksheet("Torques"));
    }
    return Files.write(folder.resolve("t.xlsx"), out.toByteArray());
  }

  /** A workbook with the usual headings in row 1 and one good row below; then changed. */
  static Path usual(Path folder, Filled changed) throws IOException {
    return workbook(
        folder,
        sheet -> {
          for (int i = 0; i < ROW.size(); i++) {
            sheet.value(0, i, HEADINGS.get(i));
            sheet.value(1, i, ROW.get(i));
          }
          changed.in(sheet);
        });
  }

  /** CSV with the usual headings and one row, of which one cell is changed. */
  static Path csv(Path folder, String column, String cell) throws IOException {
    StringBuilder text = new StringBuilder(String.join(";", HEADINGS)).append('\n');
    for (int i = 0; i < ROW.size(); i++) {
      String value = HEADINGS.get(i).equals(column) ? cell : ROW.get(i);
      text.append(i == 0 ? "" : ";").append('"').append(value.replace("\"", "\"\"")).append('"');
    }
    return Files.writeString(folder.resolve("t.csv"), text.append('\n'));
  }
}
