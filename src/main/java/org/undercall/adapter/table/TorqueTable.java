package org.undercall.adapter.table;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercall.port.Fault;
import org.undercall.text.Shown;

/**
 * A procedure made of a table of torques.
 *
 * @param json the text of the procedure file
 * @param preview what was taken as what, for the user
 * @param rows the row from 1 that each step came from, by the JSON pointer to the step
 * @param faults every doubtful cell; none if the text can be used
 * @param questions what would settle them, as far as an answer can
 * @param cells how many cells below the heading hold something
 */
public record TorqueTable(
    String json,
    List<String> preview,
    Map<String, Integer> rows,
    List<Fault.Finding> faults,
    List<Question> questions,
    int cells) {
  /** The largest file read, in bytes. */
  static final int MOST_BYTES = 2 * 1024 * 1024;

  private static final ObjectMapper MAPPER =
      new ObjectMapper().configure(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN, true);

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
   * @param sheet the sheet of a workbook; empty for the only one
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
    private Map<String, String> columns() {
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
    List<Grid> grids =
        name.toLowerCase(Locale.ROOT).endsWith(".xlsx")
            ? List.of(XlsxGrid.read(bytes, wishes.sheet(), faults))
            : CsvGrid.read(bytes, faults);
    return of(Layout.find(grids, wishes.columns(), faults), wishes, faults);
  }

  /**
   * Reads a table that was written by {@link TableText}.
   *
   * @throws Fault if it cannot be read as a table at all
   */
  public static TorqueTable readAgain(String csv) throws Fault {
    TableFaults faults = new TableFaults("the table");
    List<Grid> grids = CsvGrid.read(csv.getBytes(StandardCharsets.UTF_8), faults);
    return of(Layout.find(grids, Map.of(), faults), Wishes.NONE, faults);
  }

  private static TorqueTable of(Layout layout, Wishes wishes, TableFaults faults) throws Fault {
    faults.under(layout);
    TableHead head = new TableHead(faults);
    head.above(layout);
    Map<Column, String> given = new EnumMap<>(Column.class);
    for (Map.Entry<String, String> entry : wishes.set()) {
      String word = entry.getKey().strip().toLowerCase(Locale.ROOT);
      if (TableHead.WORDS.contains(word)) {
        head.option(word, entry.getValue());
      } else if (Column.of(word).filter(c -> layout.column(c) < 0).isPresent()) {
        given.put(Column.of(word).orElseThrow(), entry.getValue());
      } else {
        String expected = "the name of something that has no column";
        faults.add(TableCode.HEAD, "--set", Shown.quoted(word), expected);
      }
    }
    for (String word : TableHead.WORDS) {
      wishes.answers().find(word, "", "").ifPresent(answer -> head.answer(word, answer));
    }
    Steps steps = new Steps(layout, given, wishes.answers(), faults);
    steps.read();
    ObjectNode root = head.root(steps.sources());
    root.set("phases", steps.phases());
    List<String> preview = new ArrayList<>(layout.preview());
    wishes.set().forEach(e -> preview.add("  --set " + e.getKey() + " = " + e.getValue()));
    head.notTaken().forEach(line -> preview.add("  above the table, not taken: " + line));
    preview.add(steps.counted());
    layout.askUntaken(wishes.columns(), faults);
    return new TorqueTable(
        text(root), preview, steps.rows(), faults.all(), faults.questions(), layout.cells());
  }

  private static String text(ObjectNode root) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree can be written", e);
    }
  }

  private static byte[] bytes(Path file, TableFaults faults) {
    if (!String.valueOf(file.getFileName()).matches("(?i).*\\.(csv|tsv|txt|xlsx)")) {
      faults.file(TableCode.NOT_READABLE, "another ending", ".csv, .tsv, .txt or .xlsx");
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
