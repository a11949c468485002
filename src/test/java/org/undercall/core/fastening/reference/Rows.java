package org.undercall.core.fastening.reference;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.ThreadSize;

/** Reads the tables of outside values. */
public final class Rows {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

  private Rows() {}

  /** The rows of a table, by its name without the ending. */
  public static List<CSVRecord> of(String table) {
    try (Reader reader =
            new InputStreamReader(
                Objects.requireNonNull(
                    Rows.class.getResourceAsStream("/reference/" + table + ".csv"), table),
                StandardCharsets.UTF_8);
        CSVParser parser = FORMAT.parse(reader)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The thread of a row with its nominal diameter and pitch, whether the catalogue has it or not.
   */
  static ThreadSize thread(String designation, String pitch) {
    double diameter = Double.parseDouble(designation.replaceFirst("x.*", "").substring(1));
    return new ThreadSize(Length.mm(diameter), Length.mm(Double.parseDouble(pitch)));
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** The row's source, read or recalled as the table says, or computed if its source says so. */
  static Check.Citation citation(CSVRecord row) {
    String source = row.get("source");
    if (source.startsWith("computed")) {
      return computed(row);
    }
    boolean recalled =
        row.isMapped("from_memory")
            ? row.get("from_memory").equals("yes")
            : !row.get("how").startsWith("read");
    return new Check.Citation(source, recalled ? Basis.RECALLED : Basis.READ);
  }

  /** The row's source, for a value that was computed beforehand. */
  static Check.Citation computed(CSVRecord row) {
    return new Check.Citation(row.get("source"), Basis.COMPUTED);
  }
}
