package org.undercall.command.clips;

import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.undercall.adapter.clips.ClipFolder;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.command.option.SessionOption;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lists the sound clips of a session, or deletes them. */
@Command(
    name = "clips",
    description =
        "List the sound clips of a session and check them against its log, or delete them.",
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:every clip is as the log has it, or was deleted",
      "1:a clip was changed, or another fault, one line with its code"
    })
public final class ClipsCommand implements Callable<Integer> {
  private static final int CHANGED = 1;
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

  /** What to delete. */
  enum Part {
    NOTES
  }

  @Spec private CommandSpec spec;

  @Mixin private SessionOption session;

  @Option(names = "--remove", description = "Delete the clips; the log stays as it is.")
  private boolean remove;

  @Option(
      names = "--only",
      paramLabel = "PART",
      description = "With --remove: delete only the clips of notes (notes).")
  private Part only;

  /** Made by the command line reader. */
  public ClipsCommand() {}

  @Override
  public Integer call() throws Fault {
    if (only != null && !remove) {
      throw new ParameterException(spec.commandLine(), "--only is for --remove");
    }
    SessionFolder folder = session.folder();
    LogContent log = SessionLogFile.read(folder.log());
    List<ListedClip> listed = ListedClip.in(log.decisions());
    ClipFolder clips = new ClipFolder(folder.clips());
    Set<String> named = listed.stream().map(c -> c.clip().file()).collect(Collectors.toSet());
    return remove ? remove(clips, listed, named) : list(clips, listed, named);
  }

  private int list(ClipFolder clips, List<ListedClip> listed, Set<String> named) throws Fault {
    int changed = 0;
    long bytes = 0;
    for (ListedClip clip : listed) {
      ClipFolder.Found found = clips.look(clip.clip());
      print(line(clip, found));
      bytes += found.bytes();
      if (found.state() == ClipFolder.State.CHANGED) {
        changed++;
        PrintWriter err = spec.commandLine().getErr();
        err.println(ClipFolder.changed(clip.clip()).getMessage());
        err.flush();
      }
    }
    clips.others(named).forEach(file -> print(file + "  named by no decision"));
    print(listed.size() + " clips named by the log, " + kilobytes(bytes) + " on the disk.");
    return changed > 0 ? CHANGED : 0;
  }

  private static String line(ListedClip clip, ClipFolder.Found found) {
    return String.join(
        "  ",
        clip.clip().file(),
        TIME.format(clip.decision().at().wall()),
        found.state().name().toLowerCase(Locale.ROOT),
        kilobytes(found.bytes()),
        clip.heard().intent(),
        "\"" + clip.heard().text() + "\"" + (clip.isNote() ? " (unchecked)" : ""));
  }

  private int remove(ClipFolder clips, List<ListedClip> listed, Set<String> named) throws Fault {
    List<String> files =
        listed.stream().filter(c -> only == null || c.isNote()).map(c -> c.clip().file()).toList();
    List<String> others = only == null ? clips.others(named) : List.of();
    String what = only == null ? "all clips" : "the clips of notes";
    print("Deleting " + what + ": " + (files.size() + others.size()) + " files. The log stays.");
    int gone = 0;
    for (List<String> part : List.of(files, others)) {
      for (String file : part) {
        gone += clips.remove(file) ? 1 : 0;
      }
    }
    print(gone + " deleted, " + (files.size() + others.size() - gone) + " were absent already.");
    return 0;
  }

  private static String kilobytes(long bytes) {
    return (bytes + 999) / 1000 + " kB";
  }

  private void print(String line) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(line);
    out.flush();
  }
}
