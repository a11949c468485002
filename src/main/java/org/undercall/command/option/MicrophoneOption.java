package org.undercall.command.option;

import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --microphone}, for every command that may listen to one. */
public final class MicrophoneOption {
  @Option(
      names = "--microphone",
      paramLabel = "NAME",
      description = "A microphone with this in its name (default: the system's choice).")
  private String name;

  /** Made by the command line reader. */
  public MicrophoneOption() {}

  /** Part of its name; empty for the system's choice. */
  public Optional<String> name() {
    return Optional.ofNullable(name);
  }
}
