package org.undercall.command.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.PersonName;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Who may see what was done, and whose work is an apprentice's. */
public final class CrewOptions {
  private static final int MOST = 100;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--witness",
      paramLabel = "NAME",
      split = ",",
      description = "Who may be a witness; several with commas (default: any name but yours).")
  private List<String> names = new ArrayList<>();

  @Option(
      names = "--witnesses",
      paramLabel = "FILE",
      description = "A file with the names of all who may be witnesses, one a line.")
  private Path file;

  @Option(
      names = "--apprentice",
      paramLabel = "NAME",
      description = "Who works is this apprentice: reasons are told, each fastener has a witness.")
  private String apprentice;

  /** Made by the command line reader. */
  public CrewOptions() {}

  /** The apprentice who works; empty if none does. */
  Optional<String> apprentice() {
    return Optional.ofNullable(apprentice).map(name -> name(name, "--apprentice"));
  }

  /**
   * What is recorded of them when the work begins or goes on.
   *
   * @throws ParameterException if a name cannot be spelled, or the file cannot be read
   */
  List<SessionEvent> given() {
    List<SessionEvent> given = new ArrayList<>();
    List<String> all = new ArrayList<>();
    names.forEach(name -> all.add(name(name, "--witness")));
    all.addAll(listed());
    if (all.size() > MOST) {
      throw wrong("found " + all.size() + " witnesses, expected at most " + MOST);
    }
    if (!all.isEmpty()) {
      given.add(new SessionEvent.WitnessesKnown(String.join(", ", all)));
    }
    apprentice().ifPresent(name -> given.add(new SessionEvent.ApprenticeWorks(name)));
    return given;
  }

  private List<String> listed() {
    if (file == null) {
      return List.of();
    }
    List<String> all = new ArrayList<>();
    int line = 0;
    for (String text : lines()) {
      line++;
      if (!text.isBlank()) {
        all.add(name(text, file + ", line " + line));
      }
    }
    if (all.isEmpty()) {
      throw wrong(file + ": found no name, expected one a line");
    }
    return all;
  }

  private List<String> lines() {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw wrong("--witnesses: found no file that can be read, " + file + ", expected one");
    }
  }

  private String name(String text, String place) {
    String name = text.strip();
    if (!PersonName.canBeSpelled(name)) {
      throw wrong(
          place
              + ": found \""
              + name
              + "\", expected a name of 1 to 40 letters A to Z, digits and blanks, to be spelled");
    }
    return name;
  }

  private ParameterException wrong(String what) {
    return new ParameterException(spec.commandLine(), what);
  }
}
