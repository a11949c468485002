package org.undercall.command.option;

import java.util.Optional;
import java.util.function.Consumer;
import org.undercall.adapter.clips.ClipFormat;
import org.undercall.adapter.clips.ClipWriter;
import org.undercall.session.Work;
import picocli.CommandLine.Option;

/** Whether and how the sound of phrases is kept. */
public final class ClipOptions {
  /** How clips are stored. */
  enum Kept {
    FLAC,
    WAV,
    NONE
  }

  /** Of which phrases. */
  enum Phrases {
    TAKEN,
    ALL
  }

  @Option(
      names = "--clips",
      paramLabel = "FORMAT",
      defaultValue = "flac",
      description = "Keep the sound of phrases: flac, wav or none (default: ${DEFAULT-VALUE}).")
  private Kept format;

  @Option(
      names = "--clips-of",
      paramLabel = "PHRASES",
      defaultValue = "taken",
      description = {
        "taken: phrases that were accepted or read back, and notes;",
        "all: also what was refused, asked again or left alone (default: ${DEFAULT-VALUE})."
      })
  private Phrases phrases;

  /** Made by the command line reader. */
  public ClipOptions() {}

  /** Has a session keep what was asked for; says once if that fails. */
  public void apply(Work work, Consumer<String> problems) {
    settings().ifPresent(s -> work.keep(new ClipWriter(work.folder().clips(), s, problems)));
  }

  /** Loads what the first clip needs. */
  public void prepare() {
    settings().ifPresent(s -> s.format().prepare());
  }

  private Optional<ClipWriter.Settings> settings() {
    return switch (format) {
      case NONE -> Optional.empty();
      case FLAC -> Optional.of(new ClipWriter.Settings(ClipFormat.FLAC, phrases == Phrases.ALL));
      case WAV -> Optional.of(new ClipWriter.Settings(ClipFormat.WAV, phrases == Phrases.ALL));
    };
  }
}
