package org.undercall.adapter.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipException;

/**
 * What the reader of cells does not tell of the sheets of an XLSX: joined cells, hidden columns and
 * comments.
 */
final class XlsxParts {
  private static final String BOOK = "xl/workbook.xml";
  private static final Pattern AREA =
      Pattern.compile("([A-Z]{1,3})(\\d{1,7}):([A-Z]{1,3})(\\d{1,7})");

  private final ZipParts parts;
  private final Map<String, String> sheets = new HashMap<>();

  private XlsxParts(ZipParts parts) {
    this.parts = parts;
  }

  /** The parts of a workbook that was unpacked. */
  static XlsxParts of(ZipParts parts) throws IOException {
    if (!parts.names().contains(BOOK)) {
      throw new ZipException("no workbook in it");
    }
    XlsxParts all = new XlsxParts(parts);
    Map<String, String> targets = new HashMap<>();
    all.related(
        BOOK,
        (type, id, target) -> {
          if (type.equals("worksheet")) {
            targets.put(id, target);
          }
        });
    parts.each(
        BOOK,
        "sheet",
        part -> {
          if (targets.containsKey(part.get("id"))) {
            all.sheets.put(part.get("name"), targets.get(part.get("id")));
          }
        });
    return all;
  }

  /** Whether a sheet has cells: a chart on a sheet of its own has none. */
  boolean hasCells(String sheet) {
    return sheets.containsKey(sheet);
  }

  private interface Relation {
    void of(String type, String id, String target);
  }

  /** What a part refers to, by the last word of its kind. */
  private void related(String part, Relation taken) throws IOException {
    int cut = part.lastIndexOf('/') + 1;
    String folder = part.substring(0, cut);
    String relations = folder + "_rels/" + part.substring(cut) + ".rels";
    if (!parts.names().contains(relations)) {
      return;
    }
    parts.each(
        relations,
        "Relationship",
        each -> {
          String type = each.getOrDefault("Type", "");
          String target = each.getOrDefault("Target", "");
          taken.of(
              type.substring(type.lastIndexOf('/') + 1),
              each.getOrDefault("Id", ""),
              target.startsWith("/") ? target.substring(1) : flat(folder + target));
        });
  }

  private static String flat(String path) {
    String before = path;
    String flat = path.replaceFirst("[^/]+/\\.\\./", "");
    while (!flat.equals(before)) {
      before = flat;
      flat = flat.replaceFirst("[^/]+/\\.\\./", "");
    }
    return flat;
  }

  /** The joined cells of a sheet. */
  List<Grid.Merge> merges(String sheet) throws IOException {
    List<Grid.Merge> merges = new ArrayList<>();
    parts.each(sheets.get(sheet), "mergeCell", part -> area(part.getOrDefault("ref", ""), merges));
    return merges;
  }

  private static void area(String ref, List<Grid.Merge> merges) {
    Matcher area = AREA.matcher(ref);
    if (area.matches() && merges.size() <= Grid.MOST_ROWS) {
      merges.add(
          new Grid.Merge(
              Integer.parseInt(area.group(2)) - 1,
              Cell.column(area.group(1)),
              Integer.parseInt(area.group(4)) - 1,
              Cell.column(area.group(3))));
    }
  }

  /** The columns of a sheet that are not shown, from 0. */
  Set<Integer> hiddenColumns(String sheet) throws IOException {
    Set<Integer> hidden = new HashSet<>();
    parts.each(
        sheets.get(sheet),
        "col",
        part -> {
          if (part.getOrDefault("hidden", "0").matches("1|true")) {
            int last = Math.min(number(part.get("max")), Grid.MOST_COLUMNS);
            for (int column = number(part.get("min")); column <= last; column++) {
              hidden.add(column - 1);
            }
          }
        });
    return hidden;
  }

  private static int number(String text) {
    return text != null && text.matches("\\d{1,7}") ? Integer.parseInt(text) : Grid.MOST_COLUMNS;
  }

  /** The comments of a sheet. */
  List<Grid.Comment> comments(String sheet) throws IOException {
    XlsxComments comments = new XlsxComments(parts);
    List<String> notes = new ArrayList<>();
    List<String> threads = new ArrayList<>();
    related(
        sheets.get(sheet),
        (type, id, target) -> {
          if (type.equals("comments")) {
            notes.add(target);
          } else if (type.equals("threadedComment")) {
            threads.add(target);
          }
        });
    for (String part : threads) {
      comments.addThreads(part);
    }
    for (String part : notes) {
      comments.addNotes(part);
    }
    return comments.all();
  }
}
