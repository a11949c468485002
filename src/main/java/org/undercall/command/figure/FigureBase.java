package org.undercall.command.figure;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.undercall.adapter.report.Figure;
import org.undercall.port.Fault;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all figures share: text or JSON. */
abstract class FigureBase implements Callable<Integer> {
  static final String ESTIMATE =
      "an estimate to judge by, not a specification. The maker's repair data rules.";

  @Spec private CommandSpec spec;

  @Option(names = "--json", description = "Print JSON instead of text.")
  private boolean json;

  /**
   * The figure.
   *
   * @throws Fault if an option or what follows from it cannot be
   * @throws org.undercall.core.term.Refused if it cannot be worked out
   */
  abstract Figure figure() throws Fault;

  /** Draws what was asked to be drawn; nothing unless a figure can. */
  void draw() throws Fault {}

  @Override
  public Integer call() throws Fault {
    Figure figure = figure();
    draw();
    PrintWriter out = spec.commandLine().getOut();
    out.print(json ? figure.asJson() : figure.asText());
    out.flush();
    return 0;
  }
}
