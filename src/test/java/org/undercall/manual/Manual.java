package org.undercall.manual;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.undercall.command.App;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/**
 * Makes the manual from the commands: a page in AsciiDoc for each, which the build turns into pages
 * for {@code man}, and the script that completes commands in bash.
 */
public final class Manual {
  private Manual() {}

  /** Makes it. Arguments: the folder for the pages, the file for the script. */
  public static void main(String[] args) throws IOException {
    pages(Path.of(args[0]));
    CommandLine root = App.commandLine();
    Path script = Path.of(args[1]);
    Files.createDirectories(script.getParent());
    Files.writeString(script, AutoComplete.bash(root.getCommandName(), root) + "\n");
  }

  /** Writes a page for each command into a folder, which may hold others of them. */
  static void pages(Path folder) throws IOException {
    CommandSpec root = App.commandLine().getCommandSpec();
    int status =
        ManPageGenerator.generateManPage(folder.toFile(), null, new boolean[0], true, root);
    if (status != 0) {
      throw new IOException("found status " + status + ", expected pages in " + folder);
    }
    for (CommandSpec command : commands(root)) {
      Path page = folder.resolve(name(command) + ".adoc");
      Files.writeString(page, mended(Files.readString(page), command));
    }
  }

  /** A command and all below it. */
  static List<CommandSpec> commands(CommandSpec root) {
    List<CommandSpec> all = new ArrayList<>(List.of(root));
    root.subcommands().values().forEach(line -> all.addAll(commands(line.getCommandSpec())));
    return all;
  }

  /** The page's name, such as {@code undercall-figure-convert}. */
  static String name(CommandSpec command) {
    return command.qualifiedName("-");
  }

  /** Headings without a colon, examples letter by letter, and names of pages in place of links. */
  private static String mended(String page, CommandSpec command) {
    String text =
        page.replaceAll("(?m)^== +(.*?):? *$", "== $1")
            .replace("[%hardbreaks]\n  ", "  ")
            .replaceAll("(?m)^xref:(undercall[a-z-]*)\\.adoc\\[[^]]*]::$", "*$1*(1)::");
    String others =
        Stream.concat(Stream.ofNullable(command.parent()), beside(command))
            .map(other -> "*" + name(other) + "*(1)")
            .reduce((one, other) -> one + ", " + other)
            .orElse("");
    return others.isEmpty() ? text : text + "\n== See also\n\n" + others + "\n";
  }

  /** The other commands of the same group, except those of the program itself. */
  private static Stream<CommandSpec> beside(CommandSpec command) {
    return command.parent() == null || command.parent().parent() == null
        ? Stream.empty()
        : command.parent().subcommands().values().stream()
            .map(CommandLine::getCommandSpec)
            .filter(other -> !other.equals(command));
  }
}
