package org.undercall.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The table of fault codes")
class FaultCodesTest {
  private static final Path PAGE = Path.of("docs/reference/fault-codes.md");
  private static final Pattern ROW = Pattern.compile("(?m)^\\| ([A-Z]{3}-\\d{3}) \\|");

  @Test
  @DisplayName("tells of every code what it means, what to do and where it comes from")
  void whole() throws Exception {
    FaultCodesPage.rows()
        .forEach(
            (code, row) ->
                Stream.of(row.meaning(), row.remedy(), row.origin())
                    .forEach(cell -> assertTrue(!cell.isEmpty(), code + ": " + row)));
  }

  @Test
  @DisplayName("tells nothing of a code that the program does not have")
  void noOther() throws Exception {
    NavigableSet<String> other = new TreeSet<>(FaultCodesPage.told().keySet());
    for (String code : CodesInUse.all().keySet()) {
      other.remove(code);
      other.remove(code.substring(0, 3));
    }
    assertEquals(new TreeSet<>(), other);
  }

  @Test
  @DisplayName("has the codes of the program and no other, each once, with its meaning")
  void current() throws Exception {
    Map<String, FaultCodesPage.Told> rows = FaultCodesPage.rows();
    assertTrue(rows.size() > 200, rows.size() + " codes found");
    String text = FaultCodesPage.text();
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.writeString(PAGE, text);
    }
    String page = Files.readString(PAGE);
    Matcher row = ROW.matcher(page);
    assertEquals(
        String.join("\n", rows.keySet()),
        String.join("\n", row.results().map(r -> r.group(1)).toList()));
    assertEquals(text, page, PAGE + " is stale: -Dundercall.regenerate=true");
  }
}
