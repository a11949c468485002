package org.undercall.command.table;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.table.DraftTable;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Judge;
import org.undercall.core.writing.Kept;
import org.undercall.port.Fault;

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
      return read.faults().stream().map(TableJudge::told).distinct().toList();
    } catch (Fault e) {
      return e.findings().stream().map(TableJudge::told).toList();
    }
  }

  private static String told(Fault.Finding finding) {
    return finding.code().id() + " " + finding.told();
  }

  static TorqueTable read(Draft draft) throws Fault {
    return TorqueTable.readAgain(DraftTable.csv(Kept.of(draft)));
  }

  /** The procedure of the steps that are whole; empty if there is none yet. */
  Optional<Procedure> procedure(Draft draft) {
    try {
      return draft.rows().isEmpty()
          ? Optional.empty()
          : Optional.of(ProcedureFile.of(NAMELESS, read(draft).json()).procedure());
    } catch (Fault e) {
      return Optional.empty();
    }
  }

  /** What the check finds today. */
  List<Finding> findings(Procedure procedure) {
    return ProcedureCheck.of(procedure, LocalDate.now(clock));
  }
}
