package org.undercall.adapter.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.intent.IntentKind;

@DisplayName("A file of own words")
class OwnWordsFileTest {
  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("words.json"), text);
  }

  private static List<String> codes(OwnWordsFault fault) {
    return fault.getMessage().lines().map(line -> line.substring(0, 7)).toList();
  }

  @Test
  @DisplayName("gives what each wording stands for")
  void read() throws Exception {
    Path file =
        file("{\"hold\": [\"coffee time for me\"], \"step completed\": [\"done with this one\"]}");
    assertEquals(
        Map.of(
            "coffee time for me", IntentKind.HOLD, "done with this one", IntentKind.STEP_COMPLETED),
        OwnWordsFile.read(file).wordings());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[]|WRD-001",
        "{\"hold\": |WRD-001",
        "{\"hold\": [\"a b\"], \"hold\": [\"c d\"]}|WRD-001",
        "{\"hold\": \"a b\"}|WRD-001",
        "{\"hold\": [7]}|WRD-001",
        "{\"holding\": [\"coffee time for me\"]}|WRD-002",
        "{\"value called\": [\"my number here\"]}|WRD-002",
        "{\"hold\": [\"coffee\"]}|WRD-003",
        "{\"hold\": [\"say again\"]}|WRD-004",
        "{\"hold\": [\"coffee time for me\", \"coffee time for me\"]}|WRD-004",
        "{\"hold\": [\"torque turned\"]}|WRD-005"
      })
  @DisplayName("is refused with the code of what is wrong")
  void refused(String text, String code) throws IOException {
    Path file = file(text);
    OwnWordsFault fault = assertThrows(OwnWordsFault.class, () -> OwnWordsFile.read(file));
    assertEquals(List.of(code), codes(fault), fault.getMessage());
    assertTrue(fault.getMessage().contains("words.json: "), fault.getMessage());
    assertTrue(fault.getMessage().contains("found "), fault.getMessage());
    assertTrue(fault.getMessage().contains("expected "), fault.getMessage());
  }

  @Test
  @DisplayName("is refused with all that is wrong at once, and if it is absent or too large")
  void all() throws IOException {
    Path two = file("{\"hold\": [\"coffee\", \"say again\"]}");
    OwnWordsFault fault = assertThrows(OwnWordsFault.class, () -> OwnWordsFile.read(two));
    assertEquals(List.of("WRD-003", "WRD-004"), codes(fault));
    Path absent = folder.resolve("absent.json");
    assertThrows(OwnWordsFault.class, () -> OwnWordsFile.read(absent));
    Path large = file("{\"hold\": [\"" + "a ".repeat(OwnWordsFile.MOST_BYTES) + "\"]}");
    assertThrows(OwnWordsFault.class, () -> OwnWordsFile.read(large));
  }
}
