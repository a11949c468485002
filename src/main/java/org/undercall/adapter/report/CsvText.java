package org.undercall.adapter.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;

/**
 * A table as CSV (RFC 4180): a heading line, commas, CR LF.
 *
 * <p>A text that a spreadsheet would run as a formula gets an apostrophe in front: one that begins,
 * after any blanks, with {@code = + - @} or their full-width forms and is no number.
 */
public final class CsvText {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
  private static final Pattern FORMULA =
      Pattern.compile("[\\s\\p{Z}\\p{C}]*[=+\\-@＝＋－＠].*", Pattern.DOTALL);

  private final StringBuilder text = new StringBuilder();

  /** A table with these columns. */
  public CsvText(List<String> columns) {
    row(columns.toArray());
  }

  /** A row; an empty optional is an empty field. */
  public void row(Object... fields) {
    Object[] shown = Arrays.stream(fields).map(CsvText::field).toArray();
    text.append(CSVFormat.RFC4180.format(shown)).append("\r\n");
  }

  private static String field(Object field) {
    Object value = field instanceof Optional<?> optional ? optional.orElse(null) : field;
    return value == null ? "" : harmless(value.toString());
  }

  static String harmless(String field) {
    boolean formula = FORMULA.matcher(field).matches() && !NUMBER.matcher(field).matches();
    return formula ? "'" + field : field;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
