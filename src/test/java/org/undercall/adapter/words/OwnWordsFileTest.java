package org.undercall.adapter.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.OwnWords;
import org.undercall.port.Fault;

@DisplayName("A file of own words")
class OwnWordsFileTest {
  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("words.json"), text);
  }

  private static OwnWordsFiles read(Path... files) throws Fault {
    return OwnWordsFiles.read(List.of(files));
  }

  private static List<String> codes(Fault fault) {
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
        read(file).own().wordings());
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
        "{\"hold\": [\"torque turned\"]}|WRD-005",
        "{\"language\": \"no_tag\"}|WRD-007",
        "{\"language\": \"\"}|WRD-007",
        "{\"language\": 7}|WRD-007"
      })
  @DisplayName("is refused with the code of what is wrong")
  void refused(String text, String code) throws IOException {
    Path file = file(text);
    Fault fault = assertThrows(Fault.class, () -> read(file));
    assertEquals(List.of(code), codes(fault), fault.getMessage());
    assertTrue(fault.getMessage().contains("words.json: "), fault.getMessage());
    assertTrue(fault.getMessage().contains("found "), fault.getMessage());
    assertTrue(fault.getMessage().contains("expected "), fault.getMessage());
  }

  @Test
  @DisplayName("is refused with all that is wrong at once, and if it is absent or too large")
  void all() throws IOException {
    Path two = file("{\"hold\": [\"coffee\", \"say again\"]}");
    Fault fault = assertThrows(Fault.class, () -> read(two));
    assertEquals(List.of("WRD-003", "WRD-004"), codes(fault));
    Path absent = folder.resolve("absent.json");
    assertThrows(Fault.class, () -> read(absent));
    Path large = file("{\"hold\": [\"" + "a ".repeat(OwnWordsFile.MOST_BYTES) + "\"]}");
    assertThrows(Fault.class, () -> read(large));
  }

  @Test
  @DisplayName("may be YAML and state its language")
  void yaml() throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("de.yaml"), "# words\nlanguage: de-CH\nhold: [mach mal kurz pause]\n");
    OwnWordsFiles.Pack pack = read(file).packs().get(0);
    assertEquals(Optional.of(Locale.forLanguageTag("de-CH")), pack.language());
    assertEquals(Map.of("mach mal kurz pause", IntentKind.HOLD), pack.wordings());
    Files.writeString(file, "hold: [mach mal pause jetzt]\nhold: [mach mal schluss jetzt]\n");
    Fault fault = assertThrows(Fault.class, () -> read(file));
    assertEquals(List.of("WRD-001"), codes(fault), fault.getMessage());
  }

  @Test
  @DisplayName("is held against the other files, and each fault names its file and the other")
  void several() throws Exception {
    Path one = file("{\"hold\": [\"coffee time for me\"]}");
    Path same = Files.writeString(folder.resolve("b.yaml"), "resume: [coffee time for me]\n");
    Path close = Files.writeString(folder.resolve("c.yaml"), "resume: [coffee time for you]\n");
    Path apart = Files.writeString(folder.resolve("d.yaml"), "resume: [es geht jetzt weiter]\n");
    OwnWordsFiles all = read(one, apart);
    assertEquals(2, all.own().wordings().size());
    assertEquals(apart, all.fileOf("es geht jetzt weiter"));
    String twice = assertThrows(Fault.class, () -> read(one, same)).getMessage();
    assertTrue(twice.startsWith("WRD-004 " + same + ": "), twice);
    assertTrue(twice.contains(one.toString()), twice);
    String near = assertThrows(Fault.class, () -> read(one, close)).getMessage();
    assertEquals(List.of("WRD-005", "WRD-005"), near.lines().map(l -> l.substring(0, 7)).toList());
    assertTrue(
        near.lines().anyMatch(l -> l.startsWith("WRD-005 " + close) && l.contains(" of " + one)),
        near);
    Path absent = folder.resolve("absent.json");
    Fault both = assertThrows(Fault.class, () -> read(absent, file("[]")));
    assertEquals(List.of("WRD-001", "WRD-001"), codes(both));
  }

  @Test
  @DisplayName("can be made blank for a language, with every meaning that takes own words")
  void blank() throws Exception {
    String text = OwnWordsBlank.text("pt-br");
    Path file = Files.writeString(folder.resolve("blank.yaml"), text);
    OwnWordsFiles.Pack pack = read(file).packs().get(0);
    assertEquals(Optional.of(Locale.forLanguageTag("pt-BR")), pack.language());
    assertEquals(Map.of(), pack.wordings());
    for (IntentKind kind : IntentKind.values()) {
      String line = OwnWordsFile.name(kind) + ": []";
      boolean takes =
          OwnWords.problems(Map.of("xa xb xc xd xe", kind)).stream()
              .noneMatch(p -> p.trouble() == OwnWords.Trouble.NO_FIXED_WORDING);
      assertEquals(takes, text.lines().anyMatch(line::equals), line);
      assertEquals(takes, text.contains("# " + kind.meaning()), kind.meaning());
    }
    assertTrue(text.contains("# English: \"take a break now\", \"wait a moment please\""), text);
    assertThrows(Fault.class, () -> OwnWordsBlank.text("no_tag"));
  }

  @Test
  @DisplayName("comes for German, with words for every meaning that takes some and is not English")
  void german() throws Exception {
    OwnWordsFiles.Pack pack = read(Path.of("shared", "words", "de.yaml")).packs().get(0);
    assertEquals(Optional.of(Locale.GERMAN), pack.language());
    Set<IntentKind> left = EnumSet.copyOf(OwnWords.possible());
    left.removeAll(Set.copyOf(pack.wordings().values()));
    assertEquals(EnumSet.of(IntentKind.ATTENTION, IntentKind.BE_QUIET), left);
  }
}
