package org.undercall.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.command.App;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

@DisplayName("The manual has")
class ManualTest {
  private static final List<CommandSpec> COMMANDS =
      Manual.commands(App.commandLine().getCommandSpec());

  @TempDir private Path folder;

  @Test
  @DisplayName("a page for every command, nested ones too, and no other")
  void everyCommand() throws IOException {
    Manual.pages(folder);
    try (Stream<Path> pages = Files.list(folder)) {
      assertEquals(
          COMMANDS.stream().map(one -> Manual.name(one) + ".adoc").collect(Collectors.toSet()),
          pages.map(page -> page.getFileName().toString()).collect(Collectors.toSet()));
    }
    assertTrue(
        COMMANDS.stream().anyMatch(one -> one.parent() != null && one.parent().parent() != null));
  }

  @Test
  @DisplayName("every example, option and exit status of the command's help")
  void everyPart() throws IOException {
    Manual.pages(folder);
    for (CommandSpec command : COMMANDS) {
      String page = Files.readString(folder.resolve(Manual.name(command) + ".adoc"));
      List<String> lines = page.lines().toList();
      assertTrue(lines.contains("== Examples"), command.qualifiedName());
      assertTrue(lines.contains(":mansource: " + command.root().version()[0]), command.name());
      for (String example : command.usageMessage().footer()) {
        assertTrue(lines.contains(example), () -> command.qualifiedName() + ": " + example);
      }
      for (OptionSpec option : command.options().stream().filter(o -> !o.hidden()).toList()) {
        String plain = option.longestName().replaceFirst("^--(no-)?", "--[no-]");
        String name = option.negatable() ? plain : option.longestName();
        assertTrue(page.contains("\n*" + name) || page.contains(" *" + name), name);
      }
      for (String status : command.usageMessage().exitCodeList().values()) {
        assertTrue(page.contains(status), () -> command.qualifiedName() + ": " + status);
      }
    }
  }

  @Test
  @DisplayName("nothing of the machine it was made on")
  void noMachine() throws IOException {
    Manual.pages(folder);
    Set<String> own =
        Set.of(System.getProperty("user.home") + "/", System.getProperty("user.dir") + "/");
    for (CommandSpec command : COMMANDS) {
      String page = Files.readString(folder.resolve(Manual.name(command) + ".adoc"));
      own.forEach(path -> assertFalse(page.contains(path), () -> command.name() + ": " + path));
    }
  }
}
