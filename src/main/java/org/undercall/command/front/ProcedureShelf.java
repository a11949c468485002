package org.undercall.command.front;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureCode;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.option.UseCode;
import org.undercall.command.option.UserFolders;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/**
 * The procedures that can be begun without naming their file.
 *
 * @param usable in the order they are found in
 * @param faults the first fault of each file that cannot be used, and folders that cannot be read
 */
public record ProcedureShelf(List<LoadedProcedure> usable, List<String> faults) {
  private static final int MOST_LOOKED_INTO = 2 << 20;
  private static final Pattern PHASES = Pattern.compile("(\"phases\"|(?m)^phases *:)");
  private static final Pattern CAUTIONS = Pattern.compile("(\"cautions\"|(?m)^cautions *:)");

  public ProcedureShelf {
    usable = List.copyOf(usable);
    faults = List.copyOf(faults);
  }

  /**
   * Looks into the current folder, its folder {@code procedures}, the user's own folder, also where
   * older versions had it, and the folder of demonstrations.
   */
  public static ProcedureShelf standard(Path demonstrations) {
    UserFolders.Place own = UserFolders.ofMachine().procedures();
    List<Path> others = new ArrayList<>(List.of(own.used()));
    own.other().ifPresent(others::add);
    others.add(demonstrations);
    return in(Path.of(""), others);
  }

  /**
   * Looks into the folder of work, its folder {@code procedures} and others, in this order. In the
   * folder of work only files count that look like a procedure, since anything may lie there.
   * Blocks, which are only included, are passed over.
   *
   * @param here the folder of work
   * @param others the user's own folders and that of demonstrations
   */
  public static ProcedureShelf in(Path here, List<Path> others) {
    Set<Path> files = new LinkedHashSet<>();
    List<String> faults = new ArrayList<>();
    collect(here, ProcedureShelf::looksLikeOne, files, faults);
    collect(here.resolve("procedures"), file -> true, files, faults);
    for (Path folder : others) {
      collect(folder, file -> true, files, faults);
    }
    List<LoadedProcedure> usable = new ArrayList<>();
    Set<Path> seen = new LinkedHashSet<>();
    for (Path file : files) {
      if (seen.add(real(file))) {
        load(file, usable, faults);
      }
    }
    return new ProcedureShelf(usable, faults);
  }

  private static void collect(
      Path folder, Predicate<Path> wanted, Set<Path> files, List<String> faults) {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (Stream<Path> all = Files.list(folder)) {
      all.filter(ProcedureFile::named)
          .filter(Files::isRegularFile)
          .filter(wanted)
          .sorted()
          .forEach(files::add);
    } catch (IOException e) {
      faults.add(
          new Fault.Finding(
                  UseCode.NO_ACCESS,
                  "folder " + Shown.plain(String.valueOf(folder.getFileName())),
                  Fault.kind(e),
                  "a folder of procedures that can be read")
              .toString());
    }
  }

  private static boolean looksLikeOne(Path file) {
    try {
      if (Files.size(file) > MOST_LOOKED_INTO) {
        return false;
      }
      String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
      return text.contains("procedure.schema.json")
          || (PHASES.matcher(text).find() && CAUTIONS.matcher(text).find());
    } catch (IOException e) {
      return false;
    }
  }

  private static void load(Path file, List<LoadedProcedure> usable, List<String> faults) {
    try {
      usable.add(ProcedureFile.load(file));
    } catch (Fault e) {
      if (e.code() == ProcedureCode.BLOCK_ALONE) {
        return;
      }
      int more = e.findings().size() - 1;
      String others = more == 0 ? "" : " (and " + more + " more: undercall check)";
      faults.add(e.first() + others);
    }
  }

  private static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException e) {
      return file.toAbsolutePath().normalize();
    }
  }
}
