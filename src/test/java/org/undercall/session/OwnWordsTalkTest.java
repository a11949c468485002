package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.words.OwnWordsFiles;
import org.undercall.command.App;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.OwnWords;
import org.undercall.listen.KeyboardEar;
import org.undercall.listen.OwnWordsEar;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import picocli.CommandLine;

@DisplayName("A technician's own words and settings")
class OwnWordsTalkTest {
  private static final OwnWords OWN = OwnWords.of(Map.of("coffee time for me", IntentKind.HOLD));
  @TempDir private Path folder;

  @Test
  @DisplayName("are taken when typed, but not in a note")
  void typed() throws Ear.EndOfInput {
    KeyboardEar keys =
        new KeyboardEar(new StringReader("coffee time for me\ncoffee time for me\n"), () -> {});
    try (Ear ear = new OwnWordsEar(keys, OWN)) {
      Heard heard = ear.next(Set.of(IntentKind.HOLD), 5_000).orElseThrow();
      assertEquals("take a break now", heard.text());
      assertEquals(Heard.How.TYPED, heard.how());
      assertEquals(Optional.of("coffee time for me"), text(ear, IntentKind.NOTE_TEXT));
    }
  }

  @Test
  @DisplayName("work typed from a pack of another language, with its own letters")
  void german() throws Exception {
    OwnWords pack = OwnWordsFiles.read(List.of(Path.of("shared", "words", "de.yaml"))).own();
    KeyboardEar keys =
        new KeyboardEar(new StringReader("Prüfung war in Ordnung!\nfertig\n"), () -> {});
    try (Ear ear = new OwnWordsEar(keys, pack)) {
      assertEquals(Optional.of("check passed"), text(ear, IntentKind.CHECK_PASSED));
      assertEquals(Optional.of("fertig"), text(ear, IntentKind.CHECK_PASSED));
    }
  }

  @Test
  @DisplayName("of several files are checked together; an unknown word is told with its file")
  void severalFiles() throws Exception {
    Path own = Files.writeString(folder.resolve("own.json"), "{\"hold\":[\"coffee time for me\"]}");
    String pack = Path.of("shared", "words", "de.yaml").toString();
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line =
        App.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err, true));
    assertEquals(0, line.execute("words", "--typed", own.toString(), pack), err::toString);
    assertTrue(out.toString().contains(pack + ", de, wordings: "), out.toString());
    assertEquals(1, line.execute("words", own.toString(), pack));
    List<String> told = err.toString().lines().toList();
    assertTrue(told.stream().allMatch(l -> l.startsWith("WRD-006 " + pack + ": ")), err::toString);
    assertTrue(told.stream().anyMatch(l -> l.contains("\"prüfung\"")), err::toString);
    CommandLine words =
        App.commandLine()
            .parseArgs("rehearse", "--words", "a.yaml", "--words", "b.yaml,c.yaml")
            .subcommand()
            .commandSpec()
            .commandLine();
    assertEquals(3, ((List<?>) words.getCommandSpec().findOption("--words").getValue()).size());
  }

  private static Optional<String> text(Ear ear, IntentKind allowed) throws Ear.EndOfInput {
    return ear.next(Set.of(allowed), 5_000).map(Heard::text);
  }

  @Test
  @DisplayName("are checked, with the words that the speech model does not know")
  void checked() throws Exception {
    Path good =
        Files.writeString(folder.resolve("good.json"), "{\"hold\":[\"coffee time for me\"]}");
    Path bad = Files.writeString(folder.resolve("bad.json"), "{\"hold\":[\"qwxyz time for me\"]}");
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line =
        App.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err, true));
    assertEquals(0, line.execute("words", good.toString()), err::toString);
    assertTrue(out.toString().contains("hold, as \"take a break now\""), out.toString());
    assertEquals(1, line.execute("words", bad.toString()));
    assertTrue(err.toString().startsWith("WRD-006 "), err.toString());
  }

  @Test
  @DisplayName("settings from a file stand where an option is not given")
  void settings() throws Exception {
    Path file = Files.writeString(folder.resolve("s.properties"), "undercall.work.digits=apart\n");
    CommandLine line = App.withSettings(App.commandLine(), file);
    assertEquals("APART", digits(line, "work"));
    assertEquals("NATURAL", digits(line, "work", "--digits", "natural"));
    CommandLine without = App.withSettings(App.commandLine(), folder.resolve("absent"));
    assertEquals("GROUPED", digits(without, "work"));
  }

  private static String digits(CommandLine line, String... args) {
    CommandLine.ParseResult parsed = line.parseArgs(args).subcommand();
    return parsed.commandSpec().findOption("--digits").getValue().toString();
  }
}
