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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

@DisplayName("A list that was changed and is imported again")
class ImportChangedTest {
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
      Arm bolt;M12x1.5;10.9;70 Nm;4 %;18;both;yes;ride height;dry
      Link bolt;M12x1.5;10.9;75 Nm;4 %;18;both;yes;any;dry
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path list;
  private Path target;
  private String first;

  @BeforeEach
  void importOnce() throws IOException {
    list = Files.writeString(folder.resolve("list.csv"), LIST);
    target = folder.resolve("out.json");
    assertEquals(0, run(""), err::toString);
    first = Files.readString(target);
    out.getBuffer().setLength(0);
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
    List<String> all = new ArrayList<>(List.of(list.toString(), "--out=" + target));
    all.addAll(Arrays.asList(options));
    return line.execute(all.toArray(String[]::new));
  }

  private void change(String from, String to) throws IOException {
    Files.writeString(list, LIST.replace(from, to));
  }

  @Test
  @DisplayName("with one value says which, and is taken after a yes; the old file is kept")
  void yes() throws IOException {
    change("70 Nm", "80 Nm");
    assertEquals(0, run("yes\n", "--ask"), err::toString);
    assertTrue(
        out.toString().contains("tightens Arm bolt: stage 1 torque 70 -> 80 N·m"), out::toString);
    assertTrue(Files.readString(target).contains("80"));
    assertEquals(first, Files.readString(folder.resolve("out.json.old")));
    change("70 Nm", "85 Nm");
    assertEquals(0, run("Yes\n", "--ask"), err::toString);
    assertEquals(first, Files.readString(folder.resolve("out.json.old")));
    assertTrue(Files.exists(folder.resolve("out.json.old2")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n", "no\n", "n\n", "yes no\n", "not yes\n", "j\n", "take\n"})
  @DisplayName("is not taken after anything but a yes, nor after nothing")
  void no(String typed) throws IOException {
    change("70 Nm", "80 Nm");
    assertEquals(1, run(typed, "--ask"));
    assertEquals(first, Files.readString(target));
    assertFalse(Files.exists(folder.resolve("out.json.old")));
    assertTrue(out.toString().contains("the changes were not taken"));
  }

  @Test
  @DisplayName("where nobody can be asked is told and refused, or forced and told")
  void forced() throws IOException {
    change("70 Nm", "80 Nm");
    assertEquals(1, run("", "--no-ask"));
    assertTrue(err.toString().contains("TAB-029 out.json"), err::toString);
    assertTrue(out.toString().contains("70 -> 80 N·m"), out::toString);
    assertEquals(first, Files.readString(target));
    assertEquals(0, run("", "--no-ask", "--force"), err::toString);
    assertEquals(first, Files.readString(folder.resolve("out.json.old")));
  }

  @Test
  @DisplayName("without one of its fasteners says so first")
  void gone() throws IOException {
    Files.writeString(list, LIST.replace("70 Nm", "80 Nm").replaceFirst("(?m)^Link bolt.*\\R", ""));
    assertEquals(1, run("no\n", "--ask"));
    String told = out.toString();
    int gone = told.indexOf("Fasteners that out.json has and the table not: 1");
    int removed = told.indexOf("removed  Link bolt: removed");
    int torque = told.indexOf("tightens Arm bolt");
    assertTrue(0 < gone && gone < removed && removed < torque, told);
  }

  @Test
  @DisplayName("is compared by a preview too, which writes nothing")
  void preview() throws IOException {
    change("ride height", "any");
    assertEquals(0, run("", "--preview"), err::toString);
    assertTrue(out.toString().contains("Arm bolt: load condition ride-height -> any"));
    assertEquals(first, Files.readString(target));
  }

  @Test
  @DisplayName("in words alone, as a heading or the order of its columns, changes nothing")
  void same() throws IOException {
    Files.writeString(
        list,
        LIST.replace("Torque;Tolerance", "Tightening torque;Tolerance")
            .replace(";70 Nm", ";70,0 N·m"));
    assertEquals(0, run("", "--no-ask"), err::toString);
    assertTrue(out.toString().contains("says the same already"), out::toString);
    assertFalse(Files.exists(folder.resolve("out.json.old")));
  }

  @Test
  @DisplayName("tells that what was there is no procedure, and keeps it")
  void noProcedure() throws IOException {
    Files.writeString(target, "mine");
    assertEquals(0, run("yes\n", "--ask"), err::toString);
    assertTrue(out.toString().contains("out.json as it is cannot be compared: PRO-"));
    assertEquals("mine", Files.readString(folder.resolve("out.json.old")));
  }
}
