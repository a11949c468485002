package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Places told together")
class RowsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a.csv row 2 | a.csv row 2",
        "a.csv row 2;a.csv row 3;a.csv row 4 | a.csv row 2 to 4",
        "a.csv row 2;a.csv row 4;a.csv row 5;a.csv row 9 | a.csv row 2, 4 to 5, 9",
        "a.csv row 2;b.csv row 3 | a.csv row 2, b.csv row 3",
        "a.csv /tools/0;a.csv row 1;a.csv row 2 | a.csv /tools/0, a.csv row 1 to 2",
        "a.csv row 1;a.csv /tools/0;a.csv row 2 | a.csv row 1, a.csv /tools/0, a.csv row 2"
      })
  @DisplayName("are rows of one table from and to, and others one by one")
  void joined(String places, String told) {
    assertEquals(told, Rows.joined(List.of(places.split(";", -1))));
  }
}
