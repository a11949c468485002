package org.undercall.adapter.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.undercall.core.difference.Difference;
import org.undercall.text.Shown;

/** What differs between two procedures, as text and as JSON. */
public final class DifferencesText {
  private DifferencesText() {}

  /** A line for each difference with its weight before it, and how many there are. */
  public static String of(List<Difference> differences) {
    StringBuilder text = new StringBuilder();
    for (Difference each : differences) {
      String line = Shown.plain(each.line());
      text.append(String.format(Locale.ROOT, "  %-9s%s%n", each.weight().word(), line));
    }
    return text.append(counted(differences)).append(System.lineSeparator()).toString();
  }

  private static String counted(List<Difference> differences) {
    if (differences.isEmpty()) {
      return "No difference.";
    }
    return differences.size() == 1 ? "1 difference." : differences.size() + " differences.";
  }

  /**
   * One object, indented, ended with a line feed.
   *
   * @param before name of the older file
   * @param after name of the newer file
   */
  public static String json(String before, String after, List<Difference> differences) {
    ObjectNode root = JsonText.object();
    root.put("before", before).put("after", after).put("same", differences.isEmpty());
    ArrayNode list = root.putArray("differences");
    for (Difference each : differences) {
      list.addObject()
          .put("weight", each.weight().word())
          .put("step", each.step())
          .put("where", each.where())
          .put("what", each.what())
          .put("before", each.before())
          .put("after", each.after())
          .put("note", each.note());
    }
    return JsonText.of(root);
  }
}
