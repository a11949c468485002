package org.undercall.command.table;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.report.DifferencesText;
import org.undercall.core.difference.Difference;
import org.undercall.core.difference.Differences;
import org.undercall.core.difference.Weight;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;

/**
 * What would become another in a procedure that is there already: it is told, and taken only if
 * that is said.
 */
final class Replacing {
  private final Path target;
  private final PrintWriter out;
  private final boolean same;

  private Replacing(Path target, PrintWriter out, boolean same) {
    this.target = target;
    this.out = out;
    this.same = same;
  }

  /** Tells what differs from the file that is there, if there is one. */
  static Replacing told(Path target, Procedure newer, PrintWriter out) {
    boolean same = Files.exists(target) && tell(target, newer, out);
    out.flush();
    return new Replacing(target, out, same);
  }

  /** Whether both are the same. */
  private static boolean tell(Path target, Procedure newer, PrintWriter out) {
    try {
      List<Difference> all = Differences.of(ProcedureFile.load(target).procedure(), newer);
      long gone = all.stream().filter(each -> each.weight() == Weight.GONE).count();
      if (gone > 0) {
        out.println("Fasteners that " + target.getFileName() + " has and the table not: " + gone);
      }
      out.println("Against " + target.getFileName() + " as it is:");
      out.print(DifferencesText.of(all));
      return all.isEmpty();
    } catch (Fault e) {
      out.println(target.getFileName() + " as it is cannot be compared: " + e.first());
      return false;
    }
  }

  /**
   * Writes the file, if that is wanted; what was there is kept beside it.
   *
   * @param asked whether somebody can be asked
   * @param force whether it is wanted in any case
   * @return whether it is there now as it should be
   * @throws Fault TAB-029 if it is there and nobody can be asked, TAB-030 if it cannot be written
   */
  boolean written(String json, BufferedReader keyboard, boolean asked, boolean force) throws Fault {
    if (same) {
      out.println("Nothing to write: " + target + " says the same already.");
    } else if (!Files.isRegularFile(target) || (!force && !asked)) {
      NewFile.write(target, json, false);
      out.println("Wrote " + target);
    } else if (force || TypedInterview.saysYes(keyboard, out, question())) {
      Path kept = NewFile.replace(target, json);
      out.println("Wrote " + target + "; as it was before: " + kept.getFileName());
    } else {
      out.println("Nothing written: the changes were not taken.");
      return false;
    }
    out.flush();
    return true;
  }

  private String question() {
    return "Take these changes into " + target.getFileName() + "? yes / no [no]: ";
  }
}
