package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.undercall.core.procedure.Procedure;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;
import org.undercall.text.Shown;

/**
 * Reads procedure files: JSON, or YAML if the name ends in {@code .yaml} or {@code .yml}; both are
 * described by the schema {@code procedure.schema.json}.
 */
public final class ProcedureFile {
  private static final String NAME = "(?i).*\\.(json|yaml|yml)";

  /** What every block has and no procedure. */
  private static final String OF_A_BLOCK = "takes";

  /** Makes the schema ready on the first use, and only once. */
  private static final class Ready {
    static final SchemaCheck SCHEMA = new SchemaCheck("whole-procedure.schema.json");
  }

  private ProcedureFile() {}

  /** Whether a file can be a procedure by its name. */
  public static boolean named(Path file) {
    return String.valueOf(file.getFileName()).matches(NAME);
  }

  /**
   * Reads and checks a procedure.
   *
   * @throws Fault with every fault found, if there is any
   */
  public static LoadedProcedure load(Path file) throws Fault {
    Faults faults = faults(file);
    return of(file, FileText.read(file, faults), faults);
  }

  /**
   * Checks the text of a procedure that is not written yet.
   *
   * @param file where it is to be written; its name tells the language of the text
   * @throws Fault with every fault found, if there is any
   */
  public static LoadedProcedure of(Path file, String text) throws Fault {
    return of(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Checks a procedure whose bytes were read already; its file is not read again.
   *
   * @param file where they were read; its name tells their language
   * @throws Fault with every fault found, if there is any
   */
  public static LoadedProcedure of(Path file, byte[] bytes) throws Fault {
    Faults faults = faults(file);
    return of(file, FileText.of(bytes, faults), faults);
  }

  private static Faults faults(Path file) {
    return new Faults(name(file));
  }

  private static String name(Path file) {
    Path name = file.getFileName();
    return Shown.plain(name == null ? file.toString() : name.toString());
  }

  private static LoadedProcedure of(Path file, FileText text, Faults faults) throws Fault {
    JsonNode root = LocatedJson.read(String.valueOf(file.getFileName()), text.text(), faults);
    if (root.has(OF_A_BLOCK)) {
      Faults alone = faults(file);
      Faults.Spot spot = faults.keySpot("/" + OF_A_BLOCK);
      alone.at(ProcedureCode.BLOCK_ALONE, spot, "a block", "a procedure that includes it");
      throw alone.all();
    }
    return Piece.isIn(root)
        ? assembled(root, file, text.sha256(), faults)
        : new LoadedProcedure(
            checked(root, faults),
            file,
            text.sha256(),
            faults.places(),
            Assembled.whole(root, text.read()));
  }

  private static LoadedProcedure assembled(JsonNode root, Path file, String sha256, Faults faults)
      throws Fault {
    Assembly.Whole whole = Assembly.of(root, file, name(file), faults);
    Procedure procedure = checked(whole.root(), whole.faults());
    Assembled assembled = Assembled.of(new Part(name(file), sha256, Optional.empty()), whole);
    byte[] bytes = assembled.text().getBytes(StandardCharsets.UTF_8);
    if (bytes.length > FileText.MOST_BYTES || assembled.parts().size() > Assembled.MOST_PARTS) {
      throw Assembly.tooLarge(name(file));
    }
    return new LoadedProcedure(
        procedure, file, Sha256.hex(bytes), whole.faults().places(), assembled);
  }

  private static Procedure checked(JsonNode root, Faults faults) throws Fault {
    Ready.SCHEMA.check(root, faults);
    new ProcedureRules(faults).check(root);
    faults.throwIfAny();
    return ProcedureReader.procedure(root);
  }
}
