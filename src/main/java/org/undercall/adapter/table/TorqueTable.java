package org.undercall.adapter.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.port.Fault;

/**
 * A procedure made of a table of torques.
 *
 * @param json the text of the procedure file; blank if it is not known yet which sheet is read
 * @param preview what was taken as what, for the user
 * @param rows the row from 1 that each step came from, by the JSON pointer to the step
 * @param faults every doubtful cell; none if the text can be used
 * @param questions what would settle them, as far as an answer can
 * @param cells how many cells below the heading hold something
 */
public record TorqueTable(
    String json,
    List<String> preview,
    Map<String, String> rows,
    List<Fault.Finding> faults,
    List<Question> questions,
    int cells) {
  /** The largest file read, in bytes. */
  static final int MOST_BYTES = 2 * 1024 * 1024;

  public TorqueTable {
    preview = List.copyOf(preview);
    rows = Map.copyOf(rows);
    faults = List.copyOf(faults);
    questions = List.copyOf(questions);
  }

  /**
   * What the user says about a table.
   *
   * @param set values for what has no column or line, by its name
   * @param map meanings of columns, by heading or letters; {@code -} for none
   * @param sheet the sheet of a workbook; empty for the only one that can be a table
   * @param answers what was answered about it
   */
  public record Wishes(
      List<Map.Entry<String, String>> set,
      Map<String, String> map,
      Optional<String> sheet,
      Answers answers) {
    /** No wish and no answer. */
    public static final Wishes NONE =
        new Wishes(List.of(), Map.of(), Optional.empty(), Answers.NONE);

    public Wishes {
      set = List.copyOf(set);
      map = Map.copyOf(map);
    }

    /** Meanings of columns, as given and as answered. */
    Map<String, String> columns() {
      Map<String, String> all = new HashMap<>(answers.meanings());
      all.putAll(map);
      return all;
    }
  }

  /**
   * Reads a table.
   *
   * @throws Fault if it cannot be read as a table at all
   */
  public static TorqueTable read(Path file, Wishes wishes) throws Fault {
    String name = String.valueOf(file.getFileName());
    TableFaults faults = new TableFaults(name);
    byte[] bytes = bytes(file, faults);
    faults.throwIfAny();
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    if (ending.equals("xlsx")) {
      return of(XlsxGrid.read(bytes, faults), wishes, faults);
    }
    if (ending.equals("ods")) {
      return of(OdsGrid.read(bytes, faults), wishes, faults);
    }
    Layout layout = Layout.find(CsvGrid.read(bytes, faults), wishes.columns(), faults);
    Layout.requireNamed(List.of(layout), wishes.map(), faults);
    return new Reading(wishes, faults).of(Map.of("", layout), List.of());
  }

  private static TorqueTable of(List<Sheet> sheets, Wishes wishes, TableFaults faults)
      throws Fault {
    SheetChoice choice = new SheetChoice(sheets, wishes.columns());
    List<Sheet> read = choice.read(wishes.sheet(), wishes.answers(), faults);
    List<String> leftOut = choice.leftOut(read);
    if (read.isEmpty()) {
      List<Question> asked = faults.questions().stream().map(choice::withAnswers).toList();
      return new TorqueTable("", leftOut, Map.of(), faults.all(), asked, 0);
    }
    Map<String, Layout> layouts = new LinkedHashMap<>();
    for (Sheet sheet : read) {
      Layout layout = Layout.find(List.of(sheet.grid()), wishes.columns(), faults);
      layouts.put(read.size() == 1 ? "" : sheet.name(), layout);
    }
    Layout.requireNamed(layouts.values(), wishes.map(), faults);
    return new Reading(wishes, faults).of(layouts, leftOut);
  }

  /**
   * Reads a table that was written by {@link TableText}.
   *
   * @throws Fault if it cannot be read as a table at all
   */
  public static TorqueTable readAgain(String csv) throws Fault {
    TableFaults faults = new TableFaults("the table");
    List<Grid> grids = CsvGrid.read(csv.getBytes(StandardCharsets.UTF_8), faults);
    Layout layout = Layout.find(grids, Map.of(), faults);
    return new Reading(Wishes.NONE, faults).of(Map.of("", layout), List.of());
  }

  private static byte[] bytes(Path file, TableFaults faults) {
    if (!String.valueOf(file.getFileName()).matches("(?i).*\\.(csv|tsv|txt|xlsx|ods)")) {
      faults.file(TableCode.NOT_READABLE, "another ending", ".csv, .tsv, .txt, .xlsx or .ods");
      return new byte[0];
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        faults.file(TableCode.TOO_LARGE, "more than 2 MB", "at most 2 MB");
      }
      return bytes;
    } catch (IOException e) {
      faults.file(TableCode.NOT_READABLE, Fault.kind(e), "a file to read");
      return new byte[0];
    }
  }
}
