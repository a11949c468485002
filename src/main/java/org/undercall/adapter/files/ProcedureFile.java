package org.undercall.adapter.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Reads procedure files: JSON, or YAML if the name ends in {@code .yaml} or {@code .yml}; both are
 * described by the schema {@code procedure.schema.json}.
 */
public final class ProcedureFile {
  private static final String NAME = "(?i).*\\.(json|yaml|yml)";
  private static final String YAML_NAME = "(?i).*\\.ya?ml";

  /** Makes the schema ready on the first use, and only once. */
  private static final class Ready {
    static final SchemaCheck SCHEMA = new SchemaCheck();
  }

  private ProcedureFile() {}

  /** Whether a file can be a procedure by its name. */
  public static boolean named(Path file) {
    return String.valueOf(file.getFileName()).matches(NAME);
  }

  /** Whether a file is read as YAML, by its name. */
  static boolean isYaml(String name) {
    return name.matches(YAML_NAME);
  }

  /**
   * Reads and checks a procedure.
   *
   * @throws ProcedureFaults with every fault found, if there is any
   */
  public static LoadedProcedure load(Path file) throws ProcedureFaults {
    Faults faults = faults(file);
    return of(file, FileText.read(file, faults), faults);
  }

  /**
   * Checks the text of a procedure that is not written yet.
   *
   * @param file where it is to be written; its name tells the language of the text
   * @throws ProcedureFaults with every fault found, if there is any
   */
  public static LoadedProcedure of(Path file, String text) throws ProcedureFaults {
    Faults faults = faults(file);
    return of(file, FileText.of(text.getBytes(StandardCharsets.UTF_8), faults), faults);
  }

  private static Faults faults(Path file) {
    Path name = file.getFileName();
    return new Faults(Shown.plain(name == null ? file.toString() : name.toString()));
  }

  private static LoadedProcedure of(Path file, FileText text, Faults faults)
      throws ProcedureFaults {
    JsonNode root =
        isYaml(String.valueOf(file.getFileName()))
            ? LocatedJson.readYaml(text.text(), faults)
            : LocatedJson.read(text.text(), faults);
    Ready.SCHEMA.check(root, faults);
    new ProcedureRules(faults).check(root);
    faults.throwIfAny();
    return new LoadedProcedure(
        ProcedureReader.procedure(root), file, text.sha256(), faults.places());
  }
}
