package org.undercall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The libraries")
class LibrariesTest {
  private static final Path PAGE = Path.of("docs/reference/libraries.md");

  /** What Maven says the program runs with; written by every build. */
  private static final Path BUILD = Path.of("target", "runtime-libraries.txt");

  /** SHA-256 and place in Maven's repository of all that a build fetches. */
  private static final Path CHECKSUMS = Path.of(".mvn", "checksums", "checksums-central.sha256");

  private static final Path REPOSITORY =
      Path.of(
          System.getProperty(
              "maven.repository", System.getProperty("user.home") + "/.m2/repository"));

  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| (\\S+:\\S+) \\| (\\S+) \\| (.+) \\|$");
  private static final Pattern BUILT =
      Pattern.compile(
          "(?m)^ +([\\w.-]+:[\\w.-]+):[\\w-]+:(?:[\\w.-]+:)?([\\w.-]+):(?:compile|runtime)"
              + ":(.+?\\.jar)\\b");
  private static final Pattern SUM = Pattern.compile("(?m)^([0-9a-f]{64})  (\\S+)$");

  private static NavigableSet<String> found(Pattern pattern, Path file) throws IOException {
    NavigableSet<String> all = new TreeSet<>();
    Matcher matcher = pattern.matcher(Files.readString(file));
    while (matcher.find()) {
      all.add(matcher.group(1) + " " + matcher.group(2));
    }
    return all;
  }

  private static Map<Path, String> recorded() throws IOException {
    Map<Path, String> sums = new TreeMap<>();
    Matcher matcher = SUM.matcher(Files.readString(CHECKSUMS));
    while (matcher.find()) {
      sums.put(REPOSITORY.resolve(matcher.group(2)), matcher.group(1));
    }
    return sums;
  }

  private static String sum(Path file) throws IOException {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  @DisplayName("on the page are all that the program runs with, in their versions, and no other")
  void current() throws IOException {
    NavigableSet<String> built = found(BUILT, BUILD);
    assertTrue(built.size() > 20, built::toString);
    assertEquals(String.join("\n", built), String.join("\n", found(ROW, PAGE)));
  }

  @Test
  @DisplayName("that the program runs with are, each of them, the recorded bytes")
  void libraries() throws IOException {
    Map<Path, String> recorded = recorded();
    Matcher built = BUILT.matcher(Files.readString(BUILD));
    while (built.find()) {
      Path file = Path.of(built.group(3));
      assertEquals(recorded.get(file), sum(file), () -> file + " in " + CHECKSUMS);
    }
  }

  @Test
  @DisplayName("and plug-ins that the build fetched are the recorded bytes")
  void fetched() throws IOException {
    NavigableSet<String> other = new TreeSet<>();
    int checked = 0;
    for (Map.Entry<Path, String> sum : recorded().entrySet()) {
      if (Files.exists(sum.getKey())) {
        checked++;
        if (!sum.getValue().equals(sum(sum.getKey()))) {
          other.add(sum.getKey() + " found " + sum(sum.getKey()) + ", expected " + sum.getValue());
        }
      }
    }
    assertEquals(new TreeSet<>(), other);
    assertTrue(checked > 200, "only " + checked + " of the recorded files are there");
  }
}
