package org.undercall.command.work;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import org.undercall.command.option.UserFolders;
import org.undercall.core.term.TalkLevel;
import picocli.CommandLine.Option;

/** How much is said: as given, else as the technician had it last. */
public final class TalkOption {
  @Option(
      names = "--talk",
      paramLabel = "LEVEL",
      description =
          "How much is said: full, normal (in brief what was heard before), or short"
              + " (default: as this technician had it last, at first normal).")
  private TalkLevel level;

  private final Path kept;

  /** Made by the command line reader. */
  public TalkOption() {
    this(UserFolders.ofMachine().talk().used());
  }

  /** With the file in which levels are kept. */
  TalkOption(Path kept) {
    this.kept = kept;
  }

  /** The level that was given; empty if none was. */
  Optional<TalkLevel> given() {
    return Optional.ofNullable(level);
  }

  /**
   * The level that a technician had last. A file that cannot be read, or an odd word in it, is
   * passed over.
   */
  TalkLevel level(Optional<String> technician) {
    String word = new KeptLines(kept).read().getProperty(key(technician), "");
    for (TalkLevel each : TalkLevel.values()) {
      if (each.name().equalsIgnoreCase(word)) {
        return each;
      }
    }
    return TalkLevel.NORMAL;
  }

  /**
   * Keeps the level that a technician went on with; one that stood in the file stays if it fails.
   */
  void keep(Optional<String> technician, TalkLevel used) {
    Properties all = new KeptLines(kept).read();
    String word = used.name().toLowerCase(Locale.ROOT);
    String before = all.getProperty(key(technician), "normal");
    if (before.equals(word)) {
      return;
    }
    all.setProperty(key(technician), word);
    new KeptLines(kept).write(all, "how much each technician wants to hear");
  }

  private static String key(Optional<String> technician) {
    return technician.orElse("anybody");
  }
}
