package org.undercall.command.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.undercall.adapter.table.DraftTable;
import org.undercall.adapter.table.TableCode;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.core.term.Refused;
import org.undercall.core.writing.AnswerFault;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Kept;
import org.undercall.port.Fault;

/** Keeps the answers as a table beside the procedure file until that is written. */
final class KeptAnswers {
  private final Path file;

  /** The answers for a procedure file. */
  KeptAnswers(Path procedure) {
    this.file = Path.of(procedure + ".csv");
  }

  Path file() {
    return file;
  }

  boolean areThere() {
    return Files.exists(file);
  }

  /** Keeps the answers so far, so that they outlast any end of the program. */
  void keep(Draft draft) throws Fault {
    NewFile.write(file, DraftTable.csv(Kept.of(draft)), true);
  }

  /**
   * Takes the answers up again.
   *
   * @throws Fault if the table was changed and has doubtful cells
   * @throws Refused NEW-006 if the answers would not make the same procedure
   */
  Draft takeUp() throws Fault {
    Kept kept = DraftTable.read(file);
    Draft draft = kept.draft();
    if (!kept.rows().isEmpty()) {
      TorqueTable table = TorqueTable.read(file, TorqueTable.Wishes.NONE);
      if (!table.faults().isEmpty()) {
        throw new Fault(table.faults());
      }
      if (!TableJudge.read(draft).json().equals(table.json())) {
        throw new Refused(
            AnswerFault.NOT_TAKEN_UP.code(),
            String.valueOf(file.getFileName()),
            "a table that holds more than is asked for",
            "the one that was kept; import makes a procedure of it");
      }
    }
    return draft;
  }

  /** Puts aside what was kept before, under a name that is free. */
  Path putAside() throws Fault {
    Path aside = NewFile.aside(file);
    try {
      return Files.move(file, aside);
    } catch (IOException e) {
      throw new Fault(
          TableCode.CANNOT_WRITE,
          String.valueOf(aside.getFileName()),
          Fault.kind(e),
          "a place that can be written");
    }
  }

  /** The procedure is written: its answers are not needed any more. */
  void remove() throws Fault {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new Fault(
          TableCode.CANNOT_WRITE,
          String.valueOf(file.getFileName()),
          Fault.kind(e),
          "a file that can be removed");
    }
  }
}
