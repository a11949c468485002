package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Every rule of the check")
class CheckPageTest {
  private static final Path EXPECTED = Path.of("src/test/resources/procedures/check/expected.csv");

  @Test
  @DisplayName("stands on its page with severity, meaning and source")
  void onItsPage() throws IOException {
    String page = Files.readString(Path.of("docs/reference/procedure-check.md"));
    for (CheckRule rule : CheckRule.values()) {
      String severity = rule.severity().name().toLowerCase(java.util.Locale.ROOT);
      String row =
          "| "
              + rule.code()
              + " | "
              + severity
              + " | "
              + rule.meaning()
              + " | "
              + rule.source()
              + " |";
      assertTrue(page.contains(row), row);
    }
  }

  @Test
  @DisplayName("has a bad procedure of its own")
  void badProcedure() throws IOException {
    Set<String> covered;
    try (Stream<String> lines = Files.lines(EXPECTED)) {
      covered = lines.map(line -> line.split(",", -1)[1]).collect(Collectors.toSet());
    }
    Set<CheckRule> missing = EnumSet.allOf(CheckRule.class);
    missing.removeIf(rule -> covered.contains(rule.code()));
    assertEquals(Set.of(), missing);
  }

  @Test
  @DisplayName("has a number of its own")
  void distinct() {
    long codes = Stream.of(CheckRule.values()).map(CheckRule::code).distinct().count();
    assertEquals(CheckRule.values().length, codes);
  }
}
