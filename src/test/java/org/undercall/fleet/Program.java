package org.undercall.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.undercall.command.App;
import picocli.CommandLine;

/** The program's answer to commands about a folder of sessions. */
final class Program {
  private Program() {}

  static String run(Path sessions, String... words) {
    StringWriter out = new StringWriter();
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(out));
    List<String> all = new ArrayList<>(Arrays.asList(words));
    all.addAll(List.of("--sessions", sessions.toString()));
    assertEquals(0, line.execute(all.toArray(String[]::new)), out::toString);
    return out.toString();
  }
}
