package org.undercall.adapter.table;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.undercall.text.Shown;

/** Reads the tables of one file, one after the other, as one procedure. */
final class Reading {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().configure(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN, true);

  private final TorqueTable.Wishes wishes;
  private final TableFaults faults;
  private final TableHead head;
  private final List<String> preview = new ArrayList<>();

  Reading(TorqueTable.Wishes wishes, TableFaults faults) {
    this.wishes = wishes;
    this.faults = faults;
    this.head = new TableHead(faults);
  }

  /**
   * The procedure.
   *
   * @param layouts by the sheet they are on, in their order; the name is blank if it is the only
   *     one
   * @param leftOut what is left out of the file, for the user
   */
  TorqueTable of(Map<String, Layout> layouts, List<String> leftOut) {
    layouts.forEach(
        (sheet, layout) -> {
          faults.under(layout, sheet);
          head.above(layout);
          preview.addAll(layout.preview());
        });
    Steps steps = new Steps(given(layouts.values()), wishes.answers(), faults);
    for (String word : TableHead.WORDS) {
      wishes.answers().find(word, "", "").ifPresent(answer -> head.answer(word, answer));
    }
    List<String> comments = new ArrayList<>();
    layouts.forEach(
        (sheet, layout) -> {
          faults.under(layout, sheet);
          CellComments beside = new CellComments(layout, wishes.answers(), faults);
          steps.read(layout, beside, sheet);
          beside.elsewhere().forEach(text -> head.option("caution", text));
          comments.addAll(beside.told());
        });
    steps.end();
    ObjectNode root = head.root(steps.sources());
    root.set("phases", steps.phases());
    wishes.set().forEach(e -> preview.add("  --set " + e.getKey() + " = " + e.getValue()));
    head.notTaken().forEach(line -> preview.add("  above the table, not taken: " + line));
    preview.addAll(comments);
    preview.add(steps.counted());
    preview.addAll(leftOut);
    layouts.values().forEach(layout -> layout.askUntaken(wishes.columns(), faults));
    int cells = layouts.values().stream().mapToInt(Layout::cells).sum();
    return new TorqueTable(
        text(root), preview, steps.rows(), faults.all(), faults.questions(), cells);
  }

  /** What is given for what has no column. */
  private Map<Column, String> given(Iterable<Layout> layouts) {
    Map<Column, String> given = new EnumMap<>(Column.class);
    for (Map.Entry<String, String> entry : wishes.set()) {
      String word = entry.getKey().strip().toLowerCase(Locale.ROOT);
      Column column = Column.of(word).orElse(null);
      boolean free = column != null;
      for (Layout layout : layouts) {
        free &= column != null && layout.column(column) < 0;
      }
      if (TableHead.WORDS.contains(word)) {
        head.option(word, entry.getValue());
      } else if (free) {
        given.put(column, entry.getValue());
      } else {
        String expected = "the name of something that has no column";
        faults.add(TableCode.HEAD, "--set", Shown.quoted(word), expected);
      }
    }
    return given;
  }

  private static String text(ObjectNode root) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree can be written", e);
    }
  }
}
