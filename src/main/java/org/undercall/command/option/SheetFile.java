package org.undercall.command.option;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.undercall.adapter.report.ReportCode;
import org.undercall.adapter.report.ReportPdf;
import org.undercall.port.Fault;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** A sheet of paper as a file: HTML or PDF, by the ending of its name. */
public final class SheetFile {
  private final Path path;

  private SheetFile(Path path) {
    this.path = path;
  }

  /** The file {@code --sheet} names; wrong usage if it ends neither in .html nor in .pdf. */
  public static SheetFile of(Path path, CommandLine line) {
    return of("--sheet", path, line);
  }

  /** The file that an option names; wrong usage if it ends neither in .html nor in .pdf. */
  public static SheetFile of(String option, Path path, CommandLine line) {
    SheetFile file = new SheetFile(path);
    if (!file.ending().equals("html") && !file.ending().equals("pdf")) {
      throw new ParameterException(
          line, option + ": found \"" + path + "\", expected a name that ends in .html or .pdf");
    }
    return file;
  }

  private String ending() {
    String name = String.valueOf(path.getFileName());
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  /**
   * Writes a page.
   *
   * @throws Fault RPT-001 if it cannot be written
   */
  public void write(String page) throws Fault {
    try {
      if (ending().equals("html")) {
        Files.writeString(path, page, StandardCharsets.UTF_8);
        return;
      }
      try (OutputStream out = Files.newOutputStream(path)) {
        ReportPdf.write(page, out);
      }
    } catch (IOException e) {
      throw new Fault(
          ReportCode.CANNOT_WRITE, path.toString(), Fault.kind(e), "a file that can be written");
    }
  }
}
