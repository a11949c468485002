package org.undercall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The page of libraries")
class LibrariesTest {
  private static final Path PAGE = Path.of("docs/reference/libraries.md");

  /** What Maven says the program runs with; written by every build. */
  private static final Path BUILD = Path.of("target", "runtime-libraries.txt");

  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| (\\S+:\\S+) \\| (\\S+) \\| (.+) \\|$");
  private static final Pattern BUILT =
      Pattern.compile(
          "(?m)^ +([\\w.-]+:[\\w.-]+):[\\w-]+:(?:[\\w.-]+:)?([\\w.-]+):(?:compile|runtime)\\b");

  private static NavigableSet<String> found(Pattern pattern, Path file) throws IOException {
    NavigableSet<String> all = new TreeSet<>();
    Matcher matcher = pattern.matcher(Files.readString(file));
    while (matcher.find()) {
      all.add(matcher.group(1) + " " + matcher.group(2));
    }
    return all;
  }

  @Test
  @DisplayName("lists every library that the program runs with, in its version, and no other")
  void current() throws IOException {
    NavigableSet<String> built = found(BUILT, BUILD);
    assertTrue(built.size() > 20, built::toString);
    assertEquals(String.join("\n", built), String.join("\n", found(ROW, PAGE)));
  }
}
