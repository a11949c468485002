package org.undercall.command.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.undercall.adapter.table.DraftTable;
import org.undercall.adapter.table.TableCode;
import org.undercall.adapter.table.TableFaults;
import org.undercall.adapter.table.TorqueTable;
import org.undercall.core.writing.AnswerFault;
import org.undercall.core.writing.Draft;
import org.undercall.core.writing.Kept;

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
  void keep(Draft draft) throws TableFaults {
    NewFile.write(file, DraftTable.csv(Kept.of(draft)), true);
  }

  /**
   * Takes the answers up again.
   *
   * @throws TableFaults if the table was changed and has doubtful cells
   * @throws NotTakenUp if the answers would not make the same procedure
   */
  Draft takeUp() throws TableFaults, NotTakenUp {
    Kept kept = DraftTable.read(file);
    Draft draft = kept.draft();
    if (!kept.rows().isEmpty()) {
      TorqueTable.Wishes none =
          new TorqueTable.Wishes(
              java.util.List.of(), java.util.Map.of(), java.util.Optional.empty());
      TorqueTable table = TorqueTable.read(file, none);
      if (!table.faults().isEmpty()) {
        throw TableFaults.all(table.faults());
      }
      if (!TableJudge.read(draft).json().equals(table.json())) {
        throw new NotTakenUp(file);
      }
    }
    return draft;
  }

  /** Puts aside what was kept before, under a name that is free. */
  Path putAside() throws TableFaults {
    Path aside = Path.of(file + ".old");
    for (int i = 2; Files.exists(aside); i++) {
      aside = Path.of(file + ".old" + i);
    }
    try {
      return Files.move(file, aside);
    } catch (IOException e) {
      throw TableFaults.of(
          TableCode.CANNOT_WRITE,
          String.valueOf(aside.getFileName()),
          e.getClass().getSimpleName(),
          "a place that can be written");
    }
  }

  /** The procedure is written: its answers are not needed any more. */
  void remove() throws TableFaults {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw TableFaults.of(
          TableCode.CANNOT_WRITE,
          String.valueOf(file.getFileName()),
          e.getClass().getSimpleName(),
          "a file that can be removed");
    }
  }

  /** A table that the questions cannot make. */
  static final class NotTakenUp extends Exception {
    private static final long serialVersionUID = 1L;

    NotTakenUp(Path file) {
      super(
          AnswerFault.NOT_TAKEN_UP.code()
              + " "
              + file.getFileName()
              + ": found a table that holds more than is asked for, expected the one that was"
              + " kept; import makes a procedure of it");
    }
  }
}
