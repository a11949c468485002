package org.undercall.command.table;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.procedure.ProcedureFaults;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.table.DraftTable;
import org.undercall.adapter.table.TableFaults;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Judge;
import org.undercall.core.writing.Kept;

/** Judges answers by making the table of them that {@code import} would read, and reading it. */
final class TableJudge implements Judge {
  private static final Path NAMELESS = Path.of("new.json");

  private final Clock clock;

  TableJudge(Clock clock) {
    this.clock = clock;
  }

  @Override
  public List<String> doubts(Draft whole) {
    try {
      TorqueTable read = read(whole);
      if (read.faults().isEmpty()) {
        ProcedureFile.of(NAMELESS, read.json());
      }
      return read.faults().stream()
          .map(f -> told(f.code().code(), f.found(), f.expected()))
          .distinct()
          .toList();
    } catch (TableFaults e) {
      return e.faults().stream().map(f -> told(f.code().code(), f.found(), f.expected())).toList();
    } catch (ProcedureFaults e) {
      return e.faults().stream().map(f -> told(f.code().code(), f.found(), f.expected())).toList();
    }
  }

  private static String told(String code, String found, String expected) {
    return code + " found " + found + ", expected " + expected;
  }

  static TorqueTable read(Draft draft) throws TableFaults {
    return TorqueTable.readAgain(DraftTable.csv(Kept.of(draft)));
  }

  /** The procedure of the steps that are whole; empty if there is none yet. */
  Optional<Procedure> procedure(Draft draft) {
    try {
      return draft.rows().isEmpty()
          ? Optional.empty()
          : Optional.of(ProcedureFile.of(NAMELESS, read(draft).json()).procedure());
    } catch (TableFaults | ProcedureFaults e) {
      return Optional.empty();
    }
  }

  /** What the check finds today. */
  List<Finding> findings(Procedure procedure) {
    return ProcedureCheck.of(procedure, LocalDate.now(clock));
  }

  /** A finding as one line. */
  static String line(Finding finding) {
    return finding.rule().code()
        + " "
        + finding.pointer()
        + ": found "
        + finding.found()
        + ", expected "
        + finding.expected();
  }
}
