package org.undercall.command.figure;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Computes one thing and shows formula, inputs, results, source and caution. */
@Command(
    name = "figure",
    description = {
      "Compute a torque, a preload, an angle stage, a whole joint, an adaptor, a twist or a window.",
      "Each can be written as a sheet to sign with --sheet."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = "0:computed",
    subcommands = {
      ConvertFigure.class,
      PreloadFigure.class,
      AngleFigure.class,
      AdaptorFigure.class,
      TwistFigure.class,
      ToolFigure.class,
      JointFigure.class,
      TorqueAngleFigure.class,
      VariantsFigure.class
    })
public final class FigureCommand implements Runnable {
  @Spec private CommandSpec spec;

  /** Made by the command line reader. */
  public FigureCommand() {}

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "found nothing to compute, expected one of convert, preload, ...");
  }
}
