package org.undercall.command.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.command.App;

@DisplayName("The page on engineering")
class EngineeringPageTest {
  private static final Path PAGE = Path.of("docs/explanation/engineering.md");
  private static final Pattern BLOCK =
      Pattern.compile(
          "^ {4}\\$ undercall (.*)\\n((?:(?: {4}.*)?\\n)*?(?= {0,3}\\S|\\z))", Pattern.MULTILINE);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir private Path folder;

  @Test
  @DisplayName("shows what its commands really print")
  void realOutput() throws Exception {
    Matcher blocks = BLOCK.matcher(Files.readString(PAGE));
    int count = 0;
    while (blocks.find()) {
      count++;
      String shown = blocks.group(2).replaceAll("(?m)^ {4}", "").strip();
      assertEquals(shown, printed(blocks.group(1)), blocks.group(1));
    }
    assertTrue(count >= 7, "blocks " + count);
  }

  private String printed(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      String text = word.group(1) == null ? word.group(2) : word.group(1);
      boolean picture = text.startsWith("docs/pictures/");
      words.add(picture ? folder.resolve("plot.svg").toString() : text);
    }
    StringWriter out = new StringWriter();
    int status =
        App.commandLine().setOut(new PrintWriter(out)).execute(words.toArray(String[]::new));
    assertEquals(0, status, line);
    return out.toString().strip();
  }
}
