package org.undercall.core.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The page on the behaviour")
class BehaviourDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/reference/behaviour.md");

  @Test
  @DisplayName("shows the table and the ways as they are")
  void isNotStale() throws IOException {
    String expected = BehaviourPage.text();
    if (Boolean.getBoolean("undercall.regenerate")) {
      Files.writeString(DOCUMENT, expected);
    }
    String found = Files.exists(DOCUMENT) ? Files.readString(DOCUMENT) : "";
    assertEquals(
        expected,
        found,
        "docs/reference/behaviour.md is stale: run mvn test -Dtest=BehaviourDocumentTest"
            + " -Dundercall.regenerate=true");
  }

  @Test
  @DisplayName("has every phase once in its diagram")
  void groupsEveryPhase() {
    assertEquals(List.of(Phase.values()), BehaviourPage.grouped());
  }

  @Test
  @DisplayName("describes every phase")
  void describesEveryPhase() {
    assertEquals(BehaviourPage.all(), BehaviourPage.described());
  }
}
