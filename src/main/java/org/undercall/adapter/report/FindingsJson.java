package org.undercall.adapter.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;

/** Findings about a procedure as JSON, with the same content as the text. */
public final class FindingsJson {
  private FindingsJson() {}

  /**
   * One object, indented, ended with a line feed.
   *
   * @param file name of the procedure's file; a finding in a block names the block's
   * @param on the day calibrations were judged for
   * @param findings in the order to be shown
   */
  public static String of(String file, LocalDate on, List<PlacedFinding> findings) {
    ObjectNode root = JsonText.object();
    root.put("file", file);
    root.put("on", on.toString());
    ArrayNode list = root.putArray("findings");
    for (PlacedFinding placed : findings) {
      ObjectNode finding = list.addObject();
      if (!placed.place().name().equals(file)) {
        finding.put("file", placed.place().name());
      }
      finding
          .put("code", placed.finding().rule().code())
          .put("severity", FindingsText.word(placed.finding().rule().severity()))
          .put("pointer", placed.place().pointer())
          .put("line", placed.place().line())
          .put("column", placed.place().column())
          .put("meaning", placed.finding().rule().meaning())
          .put("found", placed.finding().found())
          .put("expected", placed.finding().expected())
          .put("todo", placed.finding().todo())
          .put("source", placed.finding().rule().source())
          .put("assumes", placed.finding().rule().assumes())
          .put("unseen", placed.finding().rule().unseen());
    }
    return JsonText.of(root);
  }
}
