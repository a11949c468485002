package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads from a row what is screwed: thread, kind, class, and whether it is used once. */
final class PartCells {
  /** Classes of nuts by ISO 898-2. */
  private static final String NUT_CLASS = "5|6|8|9|10|12";

  private static final List<String> MARKINGS =
      List.of("4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9");

  private final RowCells row;
  private final TableFaults faults;

  PartCells(RowCells row, TableFaults faults) {
    this.row = row;
    this.faults = faults;
  }

  void thread(ObjectNode fastener) {
    Cell cell = row.required(Column.THREAD);
    Optional<String> thread = Threads.read(cell.given());
    if (thread.isPresent()) {
      fastener.put("thread", thread.get());
    } else if (!cell.isEmpty()) {
      faults.at(
          cell,
          TableCode.THREAD,
          cell.shown(),
          "diameter and a pitch of its table (ISO 261, ASME B1.1), such as M12x1.5 or 1/2-20 UNF");
    }
  }

  /** What is turned; not needed if the name says that it is a bolt. */
  void hardware(ObjectNode fastener) {
    Cell cell = row.cell(Column.HARDWARE);
    boolean open = cell.row() < 0 || cell.isEmpty();
    String name = row.cell(Column.FASTENER).given().toLowerCase(Locale.ROOT);
    boolean told = open && name.matches(".*\\b(bolts?|screws?)\\b.*") && !name.contains("nut");
    if (told) {
      fastener.put("hardware", "bolt");
    } else {
      List<String> words = List.of("bolt", "nut", "self-locking-nut");
      row.word(fastener, "hardware", Column.HARDWARE, words, true);
    }
  }

  /** Whether it is used once, which a column "renew" or one "re-use" may say too. */
  void oneTime(ObjectNode fastener) {
    if (row.hasColumn(Column.REUSABLE) && !row.hasColumn(Column.ONE_TIME)) {
      reusable(fastener);
    } else {
      Column says = renewSaysWhether() ? Column.RENEW : Column.ONE_TIME;
      row.truth(fastener, "oneTimeUse", says, true);
    }
  }

  /** Whether the column "renew" says that a part is renewed, and not why. */
  boolean renewSaysWhether() {
    String renew = row.cell(Column.RENEW).given().toLowerCase(Locale.ROOT);
    return !row.hasColumn(Column.ONE_TIME)
        && (renew.matches("yes|no") || AsWritten.word(Column.ONE_TIME, renew).isPresent());
  }

  /** "Yes" means the opposite here; a mark without words may mean either. */
  private void reusable(ObjectNode fastener) {
    Cell cell = row.required(Column.REUSABLE);
    String text = cell.given().toLowerCase(Locale.ROOT);
    Optional<String> words = AsWritten.word(Column.ONE_TIME, text).filter(w -> text.length() > 1);
    switch (text) {
      case "yes", "y", "true" -> fastener.put("oneTimeUse", false);
      case "no", "n", "false" -> fastener.put("oneTimeUse", true);
      default -> {
        if (words.isPresent()) {
          fastener.put("oneTimeUse", words.get().equals("yes"));
        } else if (!cell.isEmpty()) {
          faults.at(cell, TableCode.WORD, cell.shown(), "yes or no: may it be used again?");
        }
      }
    }
  }

  /** The class of a nut, which may stand in the column of classes: 8, where a bolt has 8.8. */
  void nutClass(ObjectNode fastener) {
    Column column = isNutClass(fastener) ? Column.MARKING : Column.NUT_CLASS;
    row.text(fastener, "nutClass", column, false);
  }

  private boolean isNutClass(ObjectNode fastener) {
    return fastener.path("hardware").asText().endsWith("nut")
        && row.cell(Column.MARKING).given().matches(NUT_CLASS)
        && row.cell(Column.NUT_CLASS).isEmpty();
  }

  /** The head marking, as it is read out; while it is asked what is turned a nut's class waits. */
  void marking(ObjectNode fastener, ObjectNode variant) {
    Cell cell = row.cell(Column.MARKING);
    boolean mayBeNut = !fastener.has("hardware") && cell.given().matches(NUT_CLASS);
    if (cell.isEmpty() || mayBeNut || isNutClass(fastener)) {
      return;
    }
    String text = cell.given().replace(',', '.').replaceFirst("(?i)^(class|cl\\.?|grade) ", "");
    if (MARKINGS.contains(text)) {
      variant.put("marking", text);
    } else {
      TableCode code = Amounts.isDate(cell.given()) ? TableCode.DATE : TableCode.MARKING;
      faults.at(cell, code, cell.shown(), "a property class such as 8.8 or 10.9");
    }
  }

  /** The classes that a date may have been, with the day before or after the month. */
  static boolean isMarking(String text) {
    return MARKINGS.contains(text);
  }
}
