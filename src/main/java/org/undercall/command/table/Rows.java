package org.undercall.command.table;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Places of a table, told together. */
final class Rows {
  private static final Pattern ROW = Pattern.compile("(.* row )([0-9]{1,7})");

  private Rows() {}

  /** "list.csv row 2 to 5, 8" for five rows of one table; places that are no rows one by one. */
  static String joined(List<String> places) {
    List<String> told = new ArrayList<>();
    String table = "";
    String begin = "";
    int last = 0;
    for (String place : places) {
      Matcher row = ROW.matcher(place);
      String of = row.matches() ? row.group(1) : place;
      int number = row.matches() ? Integer.parseInt(row.group(2)) : 0;
      boolean sameTable = row.matches() && of.equals(table);
      if (sameTable && number == last + 1) {
        told.set(told.size() - 1, begin + " to " + number);
      } else {
        begin = sameTable ? row.group(2) : place;
        told.add(begin);
      }
      table = of;
      last = number;
    }
    return String.join(", ", told);
  }
}
