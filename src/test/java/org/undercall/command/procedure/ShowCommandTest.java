package org.undercall.command.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.command.App;

@DisplayName("show")
class ShowCommandTest {
  private static final String PROCEDURE = "shared/procedures/demo-lateral-link.json";
  private static final int WIDTH = 80;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... options) {
    String[] call = new String[options.length + 1];
    call[0] = "show";
    System.arraycopy(options, 0, call, 1, options.length);
    return App.commandLine()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .execute(call);
  }

  @Test
  @DisplayName("prints what to lay out, with new parts for both sides")
  void layOut() {
    assertEquals(0, run(PROCEDURE), err::toString);
    String text = out.toString();
    assertTrue(text.contains("Values: invented for demonstration"));
    assertTrue(text.contains("  socket or key 18 mm: joint nut, bush bolt\n"));
    assertTrue(text.contains("  new: 2 × bush bolt M12x1.5, head marking 8.8 or 10.9\n"));
    assertTrue(text.lines().allMatch(line -> line.length() <= WIDTH));
  }

  @Test
  @DisplayName("prints every step as it is heard and answered, up to the end of the work")
  void walk() {
    assertEquals(0, run(PROCEDURE), err::toString);
    String text = out.toString().replaceAll("\\s+", " ");
    assertTrue(
        text.contains("Read it back: left side at ride height. say left side at ride height"));
    assertTrue(text.contains("Torque six five newton metres, then seven five degrees. say torque"));
    assertTrue(text.contains("Step 15, car (alignment)"));
    assertTrue(text.contains("say end of work hear Every step closed, not yet to be driven."));
  }

  @Test
  @DisplayName("writes a sheet with blank fields, the cautions and the specified values")
  void sheet() throws Exception {
    Path file = folder.resolve("sheet.html");
    assertEquals(0, run(PROCEDURE, "--sheet", file.toString(), "--paper", "letter"));
    String page = Files.readString(file);
    assertTrue(page.contains("size: letter landscape"));
    assertTrue(page.contains("Never work under a jack alone."));
    assertTrue(page.contains("8.8 ☐: "), "a box for each head marking");
    assertTrue(page.contains(">±3 N·m</span>, then 60° ±5°"), page);
    assertFalse(page.contains("<script"));
  }

  @Test
  @DisplayName("writes the sheet as PDF")
  void pdf() throws Exception {
    Path file = folder.resolve("sheet.pdf");
    assertEquals(0, run(PROCEDURE, "--sheet", file.toString()), err::toString);
    byte[] pdf = Files.readAllBytes(file);
    assertEquals("%PDF-", new String(pdf, 0, 5, StandardCharsets.US_ASCII));
  }

  @Test
  @DisplayName("refuses another ending, an absent procedure, and a file that cannot be written")
  void faults() {
    assertEquals(2, run(PROCEDURE, "--sheet", folder.resolve("sheet.doc").toString()));
    assertTrue(err.toString().startsWith("USE-001 "), err::toString);
    err.getBuffer().setLength(0);
    assertEquals(1, run(folder.resolve("absent.json").toString()));
    assertTrue(err.toString().startsWith("PRO-001 "), err::toString);
    err.getBuffer().setLength(0);
    Path nowhere = folder.resolve("absent").resolve("sheet.html");
    assertEquals(1, run(PROCEDURE, "--sheet", nowhere.toString()));
    assertTrue(err.toString().startsWith("RPT-001 "), err::toString);
  }
}
