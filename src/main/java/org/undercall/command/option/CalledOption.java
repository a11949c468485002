package org.undercall.command.option;

import java.time.Duration;
import org.undercall.listen.CalledEar;
import org.undercall.port.Ear;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The options {@code --open} and {@code --called}, for every command that listens for phrases. */
public final class CalledOption {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(names = "--open", description = "The ear is always open (the default).")
  private boolean alwaysOpen;

  @Option(names = "--called", description = "Phrases count only after \"attention please listen\".")
  private boolean called;

  @Option(
      names = "--open-for",
      paramLabel = "SECONDS",
      defaultValue = "30",
      description =
          "How long a called ear is open after the call and each reply (default: ${DEFAULT-VALUE}).")
  private int seconds;

  /** Made by the command line reader. */
  public CalledOption() {}

  /** The ear, or one in front of it that must be called. */
  public Ear of(Ear ear, Voice voice, Time time) {
    if (seconds < 1 || seconds > 3600) {
      throw wrong("found --open-for " + seconds + ", expected 1 to 3600 seconds");
    }
    if (alwaysOpen && called) {
      throw wrong("found --open and --called, expected one of them");
    }
    return called ? new CalledEar(ear, voice, time, Duration.ofSeconds(seconds)) : ear;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
