package org.undercall.command.front;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.command.App;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.session.OpenSessions;
import picocli.CommandLine;

@DisplayName("The first screen")
class WelcomeTest {
  /** All but the text of a note, which takes any words. */
  private static final Set<IntentKind> WORDS =
      EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));

  private static final String TEXT = String.join("\n", Welcome.LINES);

  @TempDir Path folder;

  private static List<String> matches(String pattern) {
    return Pattern.compile(pattern).matcher(TEXT).results().map(r -> r.group(1)).toList();
  }

  @Test
  @DisplayName("fits a terminal of 24 lines and 80 columns, with the line that asks to go on")
  void fits() {
    assertTrue(Welcome.LINES.size() <= 23, Welcome.LINES.size() + " lines");
    Welcome.LINES.forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @Test
  @DisplayName("names only phrases that are understood")
  void phrases() {
    List<String> phrases = matches("\"([^\"]+)\"");
    assertTrue(phrases.size() >= 10, phrases::toString);
    for (String phrase : phrases) {
      IntentKind kind = Interpreter.interpret(RecognisedPhrase.typed(phrase), WORDS, 0.6).kind();
      assertTrue(kind != IntentKind.UNCLEAR, phrase);
    }
  }

  @Test
  @DisplayName("names only commands that there are")
  void commands() {
    CommandLine line = App.commandLine();
    List<String> commands = matches("undercall ([a-z]+)");
    assertTrue(commands.size() >= 5, commands::toString);
    for (String command : commands) {
      assertTrue(line.getSubcommands().containsKey(command), command);
    }
  }

  @Test
  @DisplayName("has the cautions, the gate, the way to stop and the place of the log")
  void parts() {
    for (String part :
        List.of(
            "under a jack alone",
            "maker's repair data",
            "Local codes",
            "ride height only",
            "Ctrl-C",
            "doctor says where",
            "invented")) {
      assertTrue(TEXT.contains(part), part);
    }
  }

  @Test
  @DisplayName("is the front page before the first session, and gone after it")
  void frontPage() throws Exception {
    OffsetDateTime now = OffsetDateTime.parse("2026-11-25T08:00:00+01:00");
    assertEquals(Welcome.LINES, FrontPage.lines(OpenSessions.in(folder), now));
    Path broken = Files.createDirectories(folder.resolve("2026-01-01-000000-x"));
    Files.writeString(broken.resolve("log.jsonl"), "x\ny\n");
    List<String> later = FrontPage.lines(OpenSessions.in(folder), now);
    assertTrue(later.stream().anyMatch(l -> l.contains("LOG-004 ")), later::toString);
    assertTrue(later.stream().anyMatch(l -> l.startsWith("undercall work ")));
  }

  @Test
  @DisplayName("comes with the offer and a usage error where nobody can be asked")
  void nobody() {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Path sessions = folder.resolve("none");
    int status =
        App.commandLine()
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute("rehearse", "--sessions", sessions.toString());
    assertEquals(2, status);
    assertTrue(out.toString().contains(Welcome.LINES.get(0)));
    assertTrue(out.toString().contains("  1  "));
    assertTrue(err.toString().startsWith("USE-001 found no PROCEDURE"), err::toString);
    assertTrue(err.toString().contains("undercall rehearse shared"), err::toString);
  }
}
