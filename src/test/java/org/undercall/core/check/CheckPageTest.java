package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Every rule of the check")
class CheckPageTest {
  private static final Path EXPECTED = Path.of("src/test/resources/procedures/check/expected.csv");
  private static final Path JOINTS = Path.of("src/test/resources/procedures/check/bad-joints.csv");
  private static final Path PAGE = Path.of("docs/reference/procedure-check.md");
  private static final String HEADING = "## The rules";

  @Test
  @DisplayName("stands on its page with what it means, rests on and cannot see")
  void onItsPage() throws IOException {
    String page = Files.readString(PAGE);
    String before = page.substring(0, page.indexOf(HEADING) + HEADING.length());
    String made = before + "\n\n" + rules() + "\n" + bases();
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.writeString(PAGE, made);
    }
    assertEquals(made, Files.readString(PAGE), PAGE + " is stale");
  }

  private static String rules() {
    StringBuilder text =
        new StringBuilder(
            "| code | severity | meaning | what to do | basis |\n|---|---|---|---|---|\n");
    for (CheckRule rule : inOrder()) {
      row(
          text,
          rule.code(),
          rule.severity().name().toLowerCase(Locale.ROOT),
          rule.meaning(),
          rule.todo(),
          String.valueOf(basisOf(rule)));
    }
    return text.toString();
  }

  /** Each basis once, numbered as the rules first name it. */
  private static String bases() {
    StringBuilder text =
        new StringBuilder(
            "## What they rest on\n\n| basis | source | assumes | cannot see |\n|---|---|---|---|\n");
    List<List<String>> bases = distinctBases();
    for (int i = 0; i < bases.size(); i++) {
      row(
          text,
          String.valueOf(i + 1),
          bases.get(i).get(0),
          bases.get(i).get(1),
          bases.get(i).get(2));
    }
    return text.toString();
  }

  private static int basisOf(CheckRule rule) {
    return distinctBases().indexOf(basis(rule)) + 1;
  }

  private static List<List<String>> distinctBases() {
    return inOrder().stream().map(CheckPageTest::basis).distinct().toList();
  }

  private static List<String> basis(CheckRule rule) {
    return List.of(rule.source(), rule.assumes(), rule.unseen());
  }

  private static List<CheckRule> inOrder() {
    return Stream.of(CheckRule.values()).sorted(Comparator.comparing(CheckRule::code)).toList();
  }

  private static void row(StringBuilder text, String... cells) {
    text.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }

  @Test
  @DisplayName("has a bad procedure or a bad joint of its own")
  void badProcedure() throws IOException {
    Set<String> covered = new HashSet<>();
    try (Stream<String> lines = Files.lines(EXPECTED)) {
      lines.map(line -> line.split(",", -1)[1]).forEach(covered::add);
    }
    try (Stream<String> lines = Files.lines(JOINTS)) {
      lines.map(line -> line.split("\\|", -1)[1]).forEach(covered::add);
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
