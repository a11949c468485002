package org.undercall.adapter.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.undercall.port.Fault;

/** Reads a table from CSV in every way it can be meant: charset found out, delimiters tried. */
final class CsvGrid {
  private static final List<Character> DELIMITERS = List.of(',', ';', '\t', '|');
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  private CsvGrid() {}

  /** A text and the name of its charset. */
  private record Decoded(String text, String charset) {}

  /** The table for each delimiter that the text can be read with. */
  static List<Grid> read(byte[] bytes, TableFaults faults) throws Fault {
    Decoded decoded = decoded(bytes);
    if (decoded.text().indexOf(0) >= 0) {
      faults.file(TableCode.NOT_TEXT, "zero bytes", "CSV in UTF-8, or UTF-16 with its mark");
    }
    faults.throwIfAny();
    List<Grid> grids = new ArrayList<>();
    for (char delimiter : DELIMITERS) {
      if (decoded.text().indexOf(delimiter) >= 0) {
        grid(decoded, delimiter, faults).ifPresent(grids::add);
      }
    }
    faults.throwIfAny();
    if (grids.isEmpty()) {
      faults.file(TableCode.NOT_TEXT, "no columns", "CSV with comma, semicolon, tab or bar");
    }
    faults.throwIfAny();
    return grids;
  }

  private static Decoded decoded(byte[] bytes) {
    int first = bytes.length < 2 ? 0 : ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
    if (first == 0xFEFF || first == 0xFFFE) {
      return new Decoded(new String(bytes, StandardCharsets.UTF_16), "UTF-16");
    }
    return strict(bytes, StandardCharsets.UTF_8)
        .map(text -> new Decoded(text.startsWith("\uFEFF") ? text.substring(1) : text, "UTF-8"))
        .or(() -> strict(bytes, WINDOWS).map(text -> new Decoded(text, "Windows-1252")))
        .orElse(new Decoded("\0", ""));
  }

  private static Optional<String> strict(byte[] bytes, Charset charset) {
    try {
      return Optional.of(
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private static Optional<Grid> grid(Decoded decoded, char delimiter, TableFaults faults) {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    List<List<Cell>> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(decoded.text(), format)) {
      for (CSVRecord line : parser) {
        if (rows.size() >= Grid.MOST_ROWS || line.size() > Grid.MOST_COLUMNS) {
          faults.file(
              TableCode.TOO_LARGE,
              rows.size() + 1 + " rows, " + line.size() + " columns",
              "at most " + Grid.MOST);
          return Optional.empty();
        }
        List<Cell> row = new ArrayList<>();
        for (String text : line) {
          String plain = text.replaceFirst("^'(?=[=+@-])", "");
          row.add(Cell.of(rows.size(), row.size(), plain, Cell.Kind.TEXT));
        }
        rows.add(row);
      }
    } catch (IOException | UncheckedIOException e) {
      return Optional.empty();
    }
    String name = delimiter == '\t' ? "tab" : "\"" + delimiter + "\"";
    String readAs = decoded.charset() + ", columns divided by " + name;
    return Optional.of(new Grid(rows, List.of(), Grid.Hidden.NONE, List.of(), readAs));
  }
}
