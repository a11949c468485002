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

/** Reads the tables of outside values. */
final class Rows {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

  private Rows() {}

  static List<CSVRecord> of(String table) {
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

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** The row's source, read or recalled as the table says, or computed if its source says so. */
  static Check.Citation citation(CSVRecord row) {
    String source = row.get("source");
    if (source.startsWith("computed")) {
      return computed(row);
    }
    boolean recalled = row.get("from_memory").equals("yes");
    return new Check.Citation(source, recalled ? Basis.RECALLED : Basis.READ);
  }

  /** The row's source, for a value that was computed beforehand. */
  static Check.Citation computed(CSVRecord row) {
    return new Check.Citation(row.get("source"), Basis.COMPUTED);
  }
}
