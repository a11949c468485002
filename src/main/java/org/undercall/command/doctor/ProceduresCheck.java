package org.undercall.command.doctor;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.command.front.ProcedureShelf;
import org.undercall.core.check.CheckRule;
import org.undercall.core.check.ProcedureCheck;

/**
 * The procedures that are offered, and the calibration of the wrenches they name.
 *
 * @param shelf where they are
 * @param today the day for which calibrations are judged
 */
record ProceduresCheck(Supplier<ProcedureShelf> shelf, LocalDate today) implements Check {
  @Override
  public String name() {
    return "procedures";
  }

  @Override
  public Found look() {
    ProcedureShelf found = shelf.get();
    if (!found.faults().isEmpty()) {
      return Found.note(
          found.faults().get(0) + more(found.faults().size()),
          "correct it, with all its faults at once: undercall check PROCEDURE");
    }
    if (found.usable().isEmpty()) {
      return Found.note(
          DoctorCode.NO_PROCEDURE.line("no procedure", "one here, or in the folder procedures"),
          "put one there, or name its file: undercall work PROCEDURE");
    }
    List<String> overdue = found.usable().stream().flatMap(p -> overdue(p).stream()).toList();
    if (!overdue.isEmpty()) {
      return Found.note(
          overdue.get(0) + more(overdue.size()),
          "have it calibrated, then write the new day into the procedure");
    }
    return Found.well(found.usable().size() + " found, wrenches calibrated within a year");
  }

  private List<String> overdue(LoadedProcedure loaded) {
    return ProcedureCheck.of(loaded.procedure(), today).stream()
        .filter(finding -> finding.rule() == CheckRule.CALIBRATION_OVER)
        .map(finding -> finding.at(String.valueOf(loaded.file().getFileName())))
        .toList();
  }

  private static String more(int all) {
    return all == 1 ? "" : " (and " + (all - 1) + " more)";
  }
}
