package org.undercall.command.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.command.App;
import picocli.CommandLine;

@DisplayName("The command diff")
class DiffCommandTest {
  private static final Path DEMO = Path.of("shared/procedures/demo-lateral-link.json");
  private static final Path BLOCKS = Path.of("shared/procedures/trailing-arm-from-blocks.json");

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(Object... arguments) {
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    String[] words = new String[arguments.length];
    for (int i = 0; i < words.length; i++) {
      words[i] = arguments[i].toString();
    }
    return line.execute(words);
  }

  @Test
  @DisplayName("finds none between a file and itself, nor between blocks and what they make")
  void same() {
    assertEquals(0, run("diff", DEMO, DEMO), err::toString);
    assertEquals("No difference." + System.lineSeparator(), out.toString());
    Path whole = folder.resolve("whole.json");
    assertEquals(0, run("assemble", BLOCKS, "--out", whole), err::toString);
    assertEquals(0, run("diff", BLOCKS, whole), out::toString);
  }

  @Test
  @DisplayName("tells each, as text and as JSON, with its exit status")
  void different() throws IOException {
    String json = Files.readString(DEMO);
    Path other = folder.resolve("other.json");
    Files.writeString(
        other,
        json.replaceFirst("\"drive\" *: *[0-9]+", "\"drive\": 19")
            .replaceFirst("\"revision\" *: *\"", "\"revision\": \"9"));
    assertEquals(3, run("diff", DEMO, other), err::toString);
    assertTrue(out.toString().contains("tightens "), out::toString);
    assertTrue(out.toString().indexOf("tightens ") < out.toString().indexOf("text "));
    out.getBuffer().setLength(0);
    assertEquals(3, run("diff", "--json", DEMO, other), err::toString);
    JsonNode root = new ObjectMapper().readTree(out.toString());
    assertEquals("tightens", root.at("/differences/0/weight").asText());
    assertEquals("false", root.at("/same").asText());
  }

  @Test
  @DisplayName("says which file cannot be used")
  void fault() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.json"), "{}");
    assertEquals(1, run("diff", DEMO, bad));
    assertTrue(err.toString().contains("PRO-"), err::toString);
    assertEquals(2, run("diff", DEMO));
  }
}
