package org.undercall.command.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** Where a plot is written, and what it says about its values. */
final class PlotOptions {
  @Option(names = "--plot", paramLabel = "FILE.svg", description = "Draw it to an SVG file.")
  private Path file;

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

  void write(String svg) throws Fault {
    try {
      Files.writeString(file, svg);
    } catch (IOException e) {
      throw new Fault(
          FigureCode.PLOT_NOT_WRITTEN,
          "--plot " + file,
          "a file that cannot be written (" + Fault.kind(e) + ")",
          "a folder that exists and may be written to");
    }
  }
}
