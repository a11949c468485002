package org.undercall.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import picocli.CommandLine;

@DisplayName("The commands that the documents and the help name")
class DocumentedCommandsTest {
  private static final Pattern LINE =
      Pattern.compile("^\\s+(?:\\$ )?(?:\\./|> )?undercall((?: [^#]*)?)", Pattern.MULTILINE);
  private static final Pattern INLINE = Pattern.compile("`(?:\\./)?undercall ([^`]+)`");
  private static final Pattern PART = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");

  /** Commands that only read and print. */
  private static final Set<String> HARMLESS = Set.of("check", "show", "figure", "completion");

  /** A command as it is written, and where. */
  private record Written(String place, List<String> words) {
    boolean isWhole() {
      return !words.isEmpty() && words.stream().noneMatch(w -> w.equals("...") || w.equals("|"));
    }
  }

  private static List<Written> written() throws IOException {
    List<Path> pages = new ArrayList<>(List.of(Path.of("README.md")));
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      docs.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
    }
    List<Written> all = new ArrayList<>();
    for (Path page : pages) {
      String text = Files.readString(page);
      for (Pattern pattern : List.of(LINE, INLINE)) {
        Matcher found = pattern.matcher(text);
        while (found.find()) {
          String command = found.group(1).split(" {3,}|\n", 2)[0];
          List<String> words = new ArrayList<>(words(command));
          if (pattern.equals(INLINE) && words.size() == 1) {
            words.add("--help"); // Only its name is meant.
          }
          all.add(new Written(page + ": " + command.strip(), List.copyOf(words)));
        }
      }
    }
    return all.stream().filter(Written::isWhole).distinct().toList();
  }

  private static List<String> words(String command) {
    List<String> words = new ArrayList<>();
    Matcher part = PART.matcher(command);
    while (part.find()) {
      words.add(filled(part.group(1) != null ? part.group(1) : part.group(2)));
    }
    int redirected = words.indexOf(">");
    return redirected < 0 ? words : words.subList(0, redirected);
  }

  private static String filled(String word) {
    return word.equals("PROCEDURE") ? DEMO.toString() : word;
  }

  private static CommandLine quiet() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return App.commandLine().setOut(nowhere).setErr(nowhere);
  }

  @TestFactory
  @DisplayName("are understood")
  Stream<DynamicTest> understood() throws IOException {
    List<Written> all = written();
    assertTrue(all.size() > 30, all.size() + " commands found");
    return all.stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.place(), () -> quiet().parseArgs(one.words().toArray(String[]::new))));
  }

  @TestFactory
  @DisplayName("do what they say, if they only read")
  Stream<DynamicTest> run() throws IOException {
    List<Written> harmless =
        written().stream()
            .filter(one -> HARMLESS.contains(one.words().get(0)))
            .filter(one -> one.words().stream().noneMatch(w -> w.matches(".*\\.(pdf|html|svg)")))
            .filter(one -> one.words().size() > 1)
            .filter(one -> one.words().stream().noneMatch(w -> w.matches("FILE.*|SESSION|[A-Z]+")))
            .toList();
    assertTrue(harmless.size() > 6, harmless.size() + " commands to run");
    return harmless.stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.place(),
                    () -> {
                      StringWriter err = new StringWriter();
                      CommandLine line = quiet().setErr(new PrintWriter(err, true));
                      assertEquals(
                          0, line.execute(one.words().toArray(String[]::new)), err::toString);
                    }));
  }

  @TestFactory
  @DisplayName("in the help are understood, and each command has one")
  Stream<DynamicTest> helps() {
    List<CommandLine> lines = new ArrayList<>();
    collect(App.commandLine(), lines);
    return lines.stream()
        .map(
            line ->
                DynamicTest.dynamicTest(
                    line.getCommandSpec().qualifiedName(), () -> exampleOf(line)));
  }

  private static void exampleOf(CommandLine line) {
    String[] footer = line.getCommandSpec().usageMessage().footer();
    assertTrue(footer.length > 0, "no example");
    for (String example : footer) {
      assertTrue(example.startsWith("  undercall "), example);
      List<String> words = words(example.strip().replaceFirst("^undercall ", ""));
      quiet().parseArgs(words.toArray(String[]::new));
    }
  }

  private static void collect(CommandLine line, List<CommandLine> lines) {
    lines.add(line);
    line.getSubcommands().values().forEach(below -> collect(below, lines));
  }

  @Test
  @DisplayName("are completed by a shell script that names every command")
  void completion() {
    StringWriter out = new StringWriter();
    CommandLine line = App.commandLine().setOut(new PrintWriter(out));
    assertEquals(0, line.execute("completion"));
    Set<String> names = line.getSubcommands().keySet();
    assertFalse(names.isEmpty());
    assertEquals(
        Set.of(),
        names.stream().filter(name -> !out.toString().contains(name)).collect(Collectors.toSet()));
    assertTrue(out.toString().contains("complete -F"), "bash completion");
  }
}
