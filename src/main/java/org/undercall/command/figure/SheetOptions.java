package org.undercall.command.figure;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.FigureSheet;
import org.undercall.adapter.report.Sketch;
import org.undercall.command.option.SheetFile;
import org.undercall.port.Fault;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The sheet of paper of a figure, and what only its asker knows. */
final class SheetOptions {
  /** What paper the sheet is for. */
  enum Paper {
    A4,
    LETTER
  }

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = "Also write a sheet to sign, to a file that ends in .html or .pdf.")
  private Path file;

  @Option(names = "--title", paramLabel = "TEXT", description = "Title of the sheet.")
  private String title;

  @Option(
      names = "--date",
      paramLabel = "DAY",
      description = "Day on the sheet, such as 2026-03-01 (default: a blank to fill in).")
  private LocalDate date;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "a4",
      description = "a4 or letter (default: ${DEFAULT-VALUE}).")
  private Paper paper;

  @Option(
      names = "--note",
      paramLabel = "TEXT",
      defaultValue = "",
      description = "Words under the title, such as where the values come from.")
  private String note;

  boolean wanted() {
    return file != null;
  }

  String note() {
    return note;
  }

  /** Refuses a name that tells no kind of file, before anything is worked out. */
  void check(CommandLine line) {
    if (wanted()) {
      SheetFile.of(file, line);
    }
  }

  void write(String usual, String shown, Figure figure, List<Sketch> pictures, CommandLine line)
      throws Fault {
    FigureSheet.Cover cover =
        new FigureSheet.Cover(
            title == null ? usual : title,
            Optional.ofNullable(date).map(LocalDate::toString),
            shown,
            paper == Paper.LETTER);
    SheetFile.of(file, line).write(FigureSheet.of(cover, figure, pictures));
  }
}
