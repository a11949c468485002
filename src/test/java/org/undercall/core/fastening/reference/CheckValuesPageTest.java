package org.undercall.core.fastening.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import org.junit.jupiter.api.TestReporter;

@DisplayName("The page of check values")
class CheckValuesPageTest {
  private static final Path PAGE = Path.of("docs/evidence/check-values.md");

  @Test
  void isUpToDate(TestReporter reporter, TestInfo info) throws IOException {
    String text = CheckValuesPage.text(AllChecks.list(), KnownBad.numbers().toList());
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, text);
    }
    String groups = text.substring(text.indexOf("| group |"), text.indexOf("\n## Worked examples"));
    reporter.publishEntry(info.getDisplayName(), "\n" + groups);
    String committed = Files.exists(PAGE) ? Files.readString(PAGE) : "";
    assertEquals(
        committed, text, "docs/evidence/check-values.md is stale: -Dundercall.regenerate=true");
  }
}
