package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

@DisplayName("What a table does not say")
class TableInterviewTest {
  private static final String LIST =
      """
      Title;Rear arms
      Vehicle;Invented van
      Author;Test
      Revision;1
      Source;invented for a test
      Caution;Stands carry the van. Never work under a jack alone.
      Tool;wrench 2;40;210;Nm;2026-03-03
      Fastener;Thread;Class;Torque;Tolerance;Socket;Side;New;Load;Lubrication
      Arm bolt;M12x1.5;10.9;70 Nm;4 %;18;both;yes;;dry
      Link bolt;M12x1.5;10.9;75 Nm;4 %;18;both;yes;;dry
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path list;

  @BeforeEach
  void write() throws IOException {
    list = Files.writeString(folder.resolve("list.csv"), LIST);
  }

  private int run(String typed, String... options) {
    Clock clock = Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);
    CommandLine line = new CommandLine(new ImportCommand(clock, new StringReader(typed)));
    line.setExecutionExceptionHandler(
        (e, l, r) -> {
          l.getErr().println(e.getMessage());
          return 1;
        });
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    List<String> all =
        new ArrayList<>(List.of(list.toString(), "--force", "--out=" + folder.resolve("out.json")));
    all.addAll(Arrays.asList(options));
    return line.execute(all.toArray(String[]::new));
  }

  private Path answers() {
    return folder.resolve("list.csv.answers.csv");
  }

  private List<String> needs() throws IOException {
    return Files.readAllLines(folder.resolve("out.json")).stream()
        .filter(line -> line.contains("\"needs\""))
        .map(line -> line.replaceAll(".*: \"|\",?$", ""))
        .toList();
  }

  @Test
  @DisplayName("is asked once for all that are alike, and not again")
  void forAll() throws IOException {
    assertEquals(0, run("ride height\n", "--ask"), err::toString);
    assertTrue(out.toString().contains("load condition, 2 rows: Arm bolt, 10.9 | Link bolt, 10.9"));
    assertEquals(List.of("ride-height", "ride-height"), needs());
    assertEquals(0, run("", "--ask"), err::toString);
  }

  @Test
  @DisplayName("is asked one by one if it is wished, by a number of the list too")
  void oneByOne() throws IOException {
    assertEquals(0, run("each\n3\n1\n", "--ask"), err::toString);
    assertEquals(List.of("ride-height", "any"), needs());
  }

  @Test
  @DisplayName("is asked again after an answer that cannot be taken; nothing is written before")
  void again() throws IOException {
    assertEquals(1, run("somehow\nstop\n", "--ask"));
    assertFalse(Files.exists(folder.resolve("out.json")));
    assertTrue(out.toString().contains("expected one of any, ride-height, full-droop"));
    assertEquals(0, run("full droop\n", "--ask"), err::toString);
    assertEquals(List.of("full-droop", "full-droop"), needs());
  }

  @Test
  @DisplayName("an end of the input, an empty line and a skip answer nothing")
  void nothingAnswered() {
    for (String typed : List.of("", "\n", "skip\n", "stop\n")) {
      assertEquals(1, run(typed, "--ask"), typed);
      assertFalse(Files.exists(folder.resolve("out.json")));
    }
  }

  @Test
  @DisplayName("is written into a file of answers, which is edited and given back")
  void edited() throws IOException {
    assertEquals(1, run("", "--no-ask"));
    String open = Files.readString(answers());
    assertTrue(open.contains("load condition,,\"Arm bolt, 10.9 | Link bolt, 10.9\""), open);
    assertTrue(out.toString().contains("1 question is in list.csv.answers.csv"), out::toString);
    String answered = open.replaceFirst("ride-height,(\r?\n)", "ride-height,any$1");
    Files.writeString(
        answers(),
        answered
            .replace(",", ";")
            .replace("Arm bolt; 10", "Arm bolt, 10")
            .replace("Link bolt; 10", "Link bolt, 10"));
    assertEquals(0, run("", "--no-ask"), err::toString);
    assertEquals(List.of("any", "any"), needs());
  }

  @Test
  @DisplayName("of a later revision is asked only where it is new, even if it reads alike")
  void revised() throws IOException {
    assertEquals(0, run("ride height\n", "--ask"), err::toString);
    Files.writeString(
        list,
        LIST.replace("75 Nm", "80 Nm") + "Damper bolt;M12x1.5;10.9;80 Nm;4 %;18;both;yes;;dry\n");
    assertEquals(1, run("", "--no-ask"));
    assertTrue(
        out.toString().contains("1 question is") && Files.readString(answers()).contains("Damper"),
        out::toString);
    assertEquals(0, run("any\n", "--ask"), err::toString);
    assertEquals(List.of("ride-height", "ride-height", "any"), needs());
  }

  @Test
  @DisplayName("is never filled in for rows that nobody named")
  void everyRow() throws IOException {
    Files.writeString(
        answers(), "asked,read,rows,where,expected,possible,answer\nload condition,,,,,,any\n");
    assertEquals(1, run("", "--no-ask"));
    assertTrue(err.toString().contains("TAB-032"), err::toString);
    assertFalse(Files.exists(folder.resolve("out.json")));
  }

  @Test
  @DisplayName("is not asked, and no file of answers written, by a preview")
  void preview() {
    assertEquals(1, run("", "--preview"));
    assertFalse(Files.exists(answers()));
  }

  @Test
  @DisplayName("a file that holds no answers is refused and left as it is")
  void otherFile() throws IOException {
    Files.writeString(answers(), "a,b\n1,2\n");
    assertEquals(1, run("", "--no-ask"));
    assertTrue(err.toString().contains("TAB-032"), err::toString);
    assertEquals("a,b\n1,2\n", Files.readString(answers()));
  }

  /** A list without tolerances and without states of its threads. */
  private static final String BARE =
      LIST.replace("Torque;Tolerance;", "Torque;")
          .replace("70 Nm;4 %", "70 Nm")
          .replace("75 Nm;4 %", "75 Nm")
          .replace("yes;;dry", "yes;any;")
          .replace("18;both", "by thread;both");

  @Test
  @DisplayName("is offered as it was answered in another list, and taken only with a plain yes")
  void offered() throws IOException {
    Files.writeString(list, BARE.replace(";by thread", ";18").replace("yes;any;", "yes;any;dry"));
    assertEquals(0, run("4 %\n", "--ask"), err::toString);
    assertTrue(out.toString().contains("Offered for other lists beside it: lists.answers.csv."));
    list = Files.writeString(folder.resolve("next.csv"), Files.readString(list));
    out.getBuffer().setLength(0);
    assertEquals(1, run("", "--no-ask"));
    assertFalse(out.toString().contains("As in lists before"), out::toString);
    assertEquals(1, run("perhaps\nstop\n", "--ask"));
    assertTrue(
        out.toString().contains("  tolerance: 4 %, for Arm bolt, 10.9 | Link bolt, 10.9"),
        out::toString);
    assertEquals(0, run("yes\n", "--ask"), err::toString);
    String written = Files.readString(folder.resolve("out.json"));
    assertEquals(2, written.split("\"plusMinus\"", -1).length - 1);
  }

  @Test
  @DisplayName("of findings, told once for rows alike, is whether it is written all the same")
  void despiteFindings() throws IOException {
    Files.writeString(list, BARE);
    assertEquals(3, run("4 %\nnot yet\n", "--ask"), err::toString);
    assertFalse(Files.exists(folder.resolve("out.json")));
    assertTrue(out.toString().contains("CHK-017 list.csv row 9 to 10: "), out::toString);
    assertEquals(3, run("yes\n", "--ask"), err::toString);
    String written = Files.readString(folder.resolve("out.json"));
    assertTrue(written.contains("\"drive\" : 18"), written);
    assertEquals(3, run("", "--no-ask"));
  }

  @Test
  @DisplayName("is taken from no other list unasked: a word that another one explained is offered")
  void wordOfAnother() throws IOException {
    Files.writeString(list, LIST.replace("yes;;dry", "yes;settled;dry"));
    assertEquals(0, run("ride height\n", "--ask"), err::toString);
    list = Files.writeString(folder.resolve("next.csv"), Files.readString(list));
    Files.delete(folder.resolve("out.json"));
    assertEquals(1, run("", "--no-ask"));
    assertFalse(Files.exists(folder.resolve("out.json")), "no answer of another list is believed");
    assertEquals(0, run("no\nany\n", "--ask"), err::toString);
    assertTrue(out.toString().contains("  load condition \"settled\": ride height"), out::toString);
    assertEquals(List.of("any", "any"), needs());
    list = Files.writeString(folder.resolve("third.csv"), Files.readString(list));
    assertEquals(0, run("yes\n", "--ask"), err::toString);
    assertEquals(List.of("any", "any"), needs(), "what was answered last is offered");
  }
}
