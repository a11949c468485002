package org.undercall.command.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.report.Sketch;
import org.undercall.port.Fault;
import picocli.CommandLine.Option;

/** A figure that can be drawn. */
abstract class PlottedFigure extends FigureBase {
  @Option(names = "--plot", paramLabel = "FILE.svg", description = "Draw it to an SVG file.")
  private Path file;

  @Override
  void draw() throws Fault {
    if (file == null) {
      return;
    }
    List<Sketch> pictures = pictures(PlotSize.WHOLE);
    if (pictures.isEmpty()) {
      throw new Fault(
          FigureCode.NO_SIZES, "--plot", "no sizes of the joint", "--clamped and the others");
    }
    try {
      Files.writeString(file, pictures.get(0).svg());
    } catch (IOException e) {
      throw new Fault(
          FigureCode.PLOT_NOT_WRITTEN,
          "--plot " + file,
          "a file that cannot be written (" + Fault.kind(e) + ")",
          "a folder that exists and may be written to");
    }
  }
}
