package org.undercall.command.figure;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.undercall.adapter.report.Figure;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all figures share: text or JSON, and a refused value as one line with its code. */
abstract class FigureBase implements Callable<Integer> {
  static final String ESTIMATE =
      "an estimate to judge by, not a specification. The maker's repair data rules.";

  private static final Pattern CODED = Pattern.compile("[A-Z]{3}-\\d{3} .*", Pattern.DOTALL);

  @Spec private CommandSpec spec;

  @Option(names = "--json", description = "Print JSON instead of text.")
  private boolean json;

  /** The figure; a refused value is an {@code IllegalArgumentException} with a code. */
  abstract Figure figure();

  /** Draws what was asked to be drawn; nothing unless a figure can. */
  void draw() {}

  @Override
  public Integer call() {
    try {
      Figure figure = figure();
      draw();
      PrintWriter out = spec.commandLine().getOut();
      out.print(json ? figure.asJson() : figure.asText());
      out.flush();
      return 0;
    } catch (IllegalArgumentException e) {
      if (!CODED.matcher(String.valueOf(e.getMessage())).matches()) {
        throw e;
      }
      PrintWriter err = spec.commandLine().getErr();
      err.println(e.getMessage());
      err.flush();
      return 1;
    }
  }

  /** A refusal: code, place, what was found, what was expected. */
  static IllegalArgumentException refused(
      String code, String place, String found, String expected) {
    return new IllegalArgumentException(
        code + " " + place + ": found " + found + ", expected " + expected);
  }
}
