package org.undercall.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes {@code docs/reference/fault-codes.md} from the codes in use and what is told of them. */
final class FaultCodesPage {
  private static final Path TOLD = Path.of("src/test/resources/org/undercall/docs/fault-codes.txt");

  private static final String HEAD =
      """
      # Fault codes

      Generated from the code and `src/test/resources/org/undercall/docs/fault-codes.txt`;
      `mvn test -Dtest=FaultCodesTest -Dundercall.regenerate=true` rewrites it.

      A fault is one line: its code, the place, what was found and what was expected. A code is permanent and is never given
      out again. `undercall doctor` finds most of what keeps the work from beginning;
      [troubleshooting.md](../how-to/troubleshooting.md) goes by what you notice.

      """;

  /** What is told of a code or a part beside the code: meaning, what to do, where it comes from. */
  record Told(String meaning, String remedy, String origin) {
    private Told orElse(String stated, Told part) {
      return new Told(
          stated.isEmpty() ? meaning : stated,
          remedy.isEmpty() ? part.remedy : remedy,
          origin.isEmpty() ? part.origin : origin);
    }
  }

  private FaultCodesPage() {}

  /** What the file tells, by code or by the three letters of a part. */
  static NavigableMap<String, Told> told() throws IOException {
    NavigableMap<String, Told> told = new TreeMap<>();
    for (String line : Files.readAllLines(TOLD)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        String[] cells = line.split("\\|", -1);
        Told before =
            told.put(
                cells[0].strip(), new Told(cells[1].strip(), cells[2].strip(), cells[3].strip()));
        if (before != null) {
          throw new IllegalStateException("twice: " + line);
        }
      }
    }
    return told;
  }

  /** Each code in use with its whole row; what nobody tells is empty. */
  static NavigableMap<String, Told> rows() throws IOException, ReflectiveOperationException {
    Told nothing = new Told("", "", "");
    NavigableMap<String, Told> told = told();
    NavigableMap<String, Told> rows = new TreeMap<>();
    for (Map.Entry<String, String> code : CodesInUse.all().entrySet()) {
      Told part = told.getOrDefault(code.getKey().substring(0, 3), nothing);
      Told own = told.getOrDefault(code.getKey(), nothing);
      rows.put(code.getKey(), own.orElse(code.getValue(), part));
    }
    return rows;
  }

  static String text() throws IOException, ReflectiveOperationException {
    NavigableMap<String, Told> rows = rows();
    Map<String, Long> parts =
        rows.keySet().stream()
            .collect(
                Collectors.groupingBy(c -> c.substring(0, 3), TreeMap::new, Collectors.counting()));
    List<String> counted = new ArrayList<>();
    parts.forEach((part, count) -> counted.add(part + " " + count));
    StringBuilder page = new StringBuilder(HEAD);
    page.append("Codes: %d (%s).%n%n".formatted(rows.size(), String.join(", ", counted)));
    page.append("| code | meaning | what to do | where it comes from |\n|---|---|---|---|\n");
    rows.forEach(
        (code, row) ->
            page.append(
                "| %s | %s | %s | %s |%n"
                    .formatted(code, row.meaning(), row.remedy(), row.origin())));
    return page.toString();
  }
}
