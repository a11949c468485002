package org.undercall.adapter.table;

import java.util.List;

/**
 * Something that a table does not say for certain, and what would settle it. The answer is what
 * should stand in the cell.
 *
 * @param asked the meaning of the column, or the word of a line above the table
 * @param read what stands there; blank if nothing does
 * @param rows the rows it is asked for, by what names them; none for the table as a whole
 * @param places the addresses of the cells
 * @param code what is doubtful
 * @param expected what could stand there
 * @param possible answers that the program knows; others may be given
 */
public record Question(
    String asked,
    String read,
    List<String> rows,
    List<String> places,
    TableCode code,
    String expected,
    List<String> possible) {
  public Question {
    rows = List.copyOf(rows);
    places = List.copyOf(places);
    possible = List.copyOf(possible);
  }

  /** Whether it asks what a column means. */
  public boolean isOfAColumn() {
    return asked.equals(Layout.ASKED);
  }

  /**
   * Whether an answer is about a word, and so holds wherever that word stands. Any other, and any
   * about an empty cell, is for the rows it was asked for alone.
   */
  public boolean isOfAWord() {
    return isOfAWord(asked, read);
  }

  static boolean isOfAWord(String asked, String read) {
    return !read.isEmpty()
        && Column.of(asked).filter(column -> !AsWritten.words(column).isEmpty()).isPresent();
  }
}
