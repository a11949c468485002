package org.undercall.command.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.command.App;
import org.undercall.fleet.MakeSessions;
import picocli.CommandLine;

@DisplayName("The commands about many sessions")
class FleetCommandsTest {
  @TempDir static Path folder;

  @BeforeAll
  static void make() throws Exception {
    MakeSessions.main(new String[] {"30", folder.toString(), "3"});
    Path log = SessionFolder.all(folder).get(4).log();
    Files.writeString(log, Files.readString(log).replaceFirst("\"said\":\".", "\"said\":\"#"));
  }

  private static String run(int status, String... words) {
    StringWriter out = new StringWriter();
    CommandLine line = App.commandLine();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(out));
    List<String> all = new ArrayList<>(Arrays.asList(words));
    all.addAll(List.of("--sessions", folder.toString()));
    assertEquals(status, line.execute(all.toArray(String[]::new)), out.toString());
    return out.toString();
  }

  @Test
  @DisplayName("list every session, the damaged one with its code, in 80 columns")
  void list() {
    String text = run(0, "sessions");
    assertTrue(text.contains("Sessions: 30, read anew: 30."), text);
    assertTrue(text.contains("LOG-004 log.jsonl line 1"), text);
    assertTrue(text.lines().allMatch(l -> l.length() <= 80), text);
    assertEquals(31, run(0, "sessions", "--csv").lines().count());
    assertEquals(2, run(0, "sessions", "--csv", "--state", "damaged").lines().count());
    assertEquals(1, run(0, "sessions", "--csv", "--to", "2024-12-31").lines().count());
  }

  @Test
  @DisplayName("compare the last session with earlier ones and say what makes them the same")
  void compare() {
    String text = run(0, "compare", "last");
    assertTrue(text.contains("earlier, same SHA-256."), text);
    assertTrue(text.lines().allMatch(l -> l.length() <= 80), text);
    assertTrue(run(0, "compare", "last", "--json").contains("\"median_ms\""));
    String title = "Lateral link, short demonstration";
    assertTrue(run(0, "compare", "--procedure", title, "--csv", "refusals").contains("closing"));
    assertTrue(run(1, "compare", "no-such").contains("FLT-005 session no-such"));
  }

  @Test
  @DisplayName("draw the comparison, and say so if the file cannot be written")
  void plot(@TempDir Path pictures) throws Exception {
    Path file = pictures.resolve("steps.svg");
    String csv = run(0, "compare", "last", "--csv", "--plot", file.toString());
    String svg = Files.readString(file);
    List<String> rows = csv.lines().skip(1).toList();
    assertTrue(rows.size() > 5, csv);
    for (String row : rows) {
      String step = row.substring(0, row.indexOf(',')).replace("/", ", ");
      assertTrue(svg.contains(">" + step + "<") || svg.contains(">" + step + " ("), step);
    }
    long slow = rows.stream().filter(row -> row.endsWith(",slow")).count();
    assertEquals(slow, svg.split(">slow<", -1).length - 1);
    assertTrue(svg.contains("earlier, same SHA-256"), svg);
    Path nowhere = pictures.resolve("no").resolve("steps.svg");
    String refused = run(1, "compare", "last", "--plot", nowhere.toString());
    assertTrue(refused.contains("FLT-006 --plot"), refused);
  }

  @Test
  @DisplayName("keep every word of long lines")
  void lines() {
    Lines lines = new Lines();
    String words = "one two three four five six seven eight nine ten ".repeat(5).strip();
    lines.add(words, "    ");
    lines.add("x".repeat(200), "  ");
    List<String> all = lines.toString().lines().toList();
    assertTrue(all.stream().allMatch(l -> l.length() <= 80), all.toString());
    assertEquals(
        words + " " + "x".repeat(200),
        String.join(" ", all).replaceAll(" +", " ").replaceAll("(?<=x) (?=x)", ""));
  }
}
