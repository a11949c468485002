package org.undercall.command.figure;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.drawing.PlotSize;
import org.undercall.adapter.report.Figure;
import org.undercall.adapter.report.Sketch;
import org.undercall.port.Fault;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all figures share: text or JSON, and a sheet of paper. */
abstract class FigureBase implements Callable<Integer> {
  static final String ESTIMATE =
      "an estimate to judge by, not a specification. The maker's repair data rules.";

  @Spec private CommandSpec spec;

  @Option(names = "--json", description = "Print JSON instead of text.")
  private boolean json;

  @Mixin private SheetOptions sheet;

  /**
   * The figure.
   *
   * @throws Fault if an option or what follows from it cannot be
   * @throws org.undercall.core.term.Refused if it cannot be worked out
   */
  abstract Figure figure() throws Fault;

  /** What the sheet is about, if no title is typed. */
  abstract String title() throws Fault;

  /** The procedure the values are taken from; none unless a figure can. */
  Optional<Taken> taken() throws Fault {
    return Optional.empty();
  }

  /** The pictures, the one that is drawn by itself first; none for most. */
  List<Sketch> pictures(PlotSize size) throws Fault {
    return List.of();
  }

  /** Writes what else was asked for; nothing unless a figure can. */
  void draw() throws Fault {}

  /** What is typed about the values, or what their procedure says of them. */
  final String note() throws Fault {
    return sheet.note().isBlank()
        ? taken().map(t -> "Values: " + t.about().values()).orElse("")
        : sheet.note();
  }

  @Override
  public Integer call() throws Fault {
    sheet.check(spec.commandLine());
    Figure figure = figure();
    draw();
    if (sheet.wanted()) {
      sheet.write(title(), note(), figure, pictures(PlotSize.HALF), spec.commandLine());
    }
    PrintWriter out = spec.commandLine().getOut();
    out.print(json ? figure.asJson() : figure.asText());
    out.flush();
    return 0;
  }
}
