package org.undercall.command.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.PartsFirst;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.event.Recorded;
import org.undercall.session.TypedTechnician;

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
  @DisplayName("writes one page of what to fetch, with boxes for what is there and what is missing")
  void fetch() throws Exception {
    Path file = folder.resolve("fetch.html");
    assertEquals(0, run(PROCEDURE, "--fetch", file.toString(), "--sessions", folder.toString()));
    String page = Files.readString(file);
    assertTrue(page.contains("size: A4;"), page);
    assertTrue(
        page.contains(
            "<td>2</td><td>bush bolt <span class=\"whole\">M12x1.5</span>, head marking"));
    assertTrue(page.contains("Missing"));
    assertFalse(page.contains("Time at work"), "nothing is known of the time");
  }

  @Test
  @DisplayName("tells the time that sessions took which were worked, and none of a typed one")
  void learned() throws Exception {
    var loaded = ProcedureFile.load(Path.of(PROCEDURE));
    var work = TypedTechnician.wholeWork(loaded.procedure(), loaded.sha256());
    WrittenLog.write(folder.resolve("2026-01-05-080000-a"), loaded.wholeBytes(), work);
    var typed = new ArrayList<>(work);
    var one = typed.get(1);
    var keys = new Recorded.Heard("cautions understood", "CAUTIONS_UNDERSTOOD", 1, "typed");
    typed.set(1, new Recorded(2, one.at(), Optional.of(keys), one.events(), one.said()));
    WrittenLog.write(folder.resolve("2026-01-06-080000-b"), loaded.wholeBytes(), typed);
    assertEquals(0, run(PROCEDURE, "--sessions", folder.toString()));
    assertTrue(out.toString().contains("min, from one session here\n"), out::toString);
    WrittenLog.write(folder.resolve("2026-01-07-080000-c"), loaded.wholeBytes(), work);
    assertEquals(0, run(PROCEDURE, "--sessions", folder.toString()));
    assertTrue(out.toString().contains("from 2 sessions here\n"), out::toString);
    var parts = PartsFirst.of(loaded);
    var withParts = TypedTechnician.wholeWork(parts.procedure(), parts.sha256());
    WrittenLog.write(folder.resolve("2026-01-08-080000-d"), parts.wholeBytes(), withParts);
    assertEquals(0, run(PROCEDURE, "--sessions", folder.toString()));
    assertTrue(out.toString().contains("from 3 sessions here\n"), out::toString);
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
