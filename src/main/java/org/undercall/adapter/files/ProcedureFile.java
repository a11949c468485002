package org.undercall.adapter.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;

/** Reads procedure files: JSON, described by the schema {@code procedure.schema.json}. */
public final class ProcedureFile {

  /** Makes the schema ready on the first use, and only once. */
  private static final class Ready {
    static final SchemaCheck SCHEMA = new SchemaCheck();
  }

  private ProcedureFile() {}

  /**
   * Reads and checks a procedure.
   *
   * @throws ProcedureFaults with every fault found, if there is any
   */
  public static LoadedProcedure load(Path file) throws ProcedureFaults {
    Path name = file.getFileName();
    Faults faults = new Faults(Shown.plain(name == null ? file.toString() : name.toString()));
    FileText text = FileText.read(file, faults);
    JsonNode root = LocatedJson.read(text.text(), faults);
    Ready.SCHEMA.check(root, faults);
    new ProcedureRules(faults).check(root);
    faults.throwIfAny();
    return new LoadedProcedure(
        ProcedureReader.procedure(root), file, text.sha256(), faults.places());
  }
}
