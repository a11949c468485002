package org.undercall.command.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.command.front.ProcedureShelf;

@DisplayName("The commands on a procedure with blocks")
class BlocksCommandsTest {
  private static final Path SHARED = Path.of("shared", "procedures");
  private static final String PROCEDURE = "shared/procedures/trailing-arm-from-blocks.json";

  @TempDir private Path folder;
  private String out;
  private String err;

  private int run(String... args) {
    StringWriter printed = new StringWriter();
    StringWriter faults = new StringWriter();
    int status =
        App.commandLine()
            .setOut(new PrintWriter(printed))
            .setErr(new PrintWriter(faults))
            .execute(args);
    out = printed.toString();
    err = faults.toString();
    return status;
  }

  @Test
  @DisplayName("show what to lay out, the walk, and the files it is put together from")
  void show() {
    assertEquals(0, run("show", PROCEDURE), () -> err);
    String text = out.replaceAll("\\s+", " ");
    assertTrue(text.contains("socket or key 17 mm: wheel bolts"), out);
    assertTrue(text.contains("socket or key 18 mm: bush bolt"), out);
    assertTrue(text.contains("new: 2 × bush bolt M12x1.5, head marking 8.8 or 10.9"), out);
    assertTrue(text.contains("torque wrench wrench 2"), out);
    assertTrue(text.contains("Torque one one five."), out);
    assertTrue(text.contains("Hand over: after 50 km."), out);
    assertTrue(text.contains("blocks/bonded-bush.yaml values: none of its own"), out);
  }

  @Test
  @DisplayName("write the sheet with the values given to the blocks")
  void sheet() throws Exception {
    Path sheet = folder.resolve("sheet.html");
    assertEquals(0, run("show", PROCEDURE, "--sheet", sheet.toString()), () -> err);
    String page = Files.readString(sheet);
    assertTrue(page.contains("115 N·m"), page);
    assertTrue(page.contains("size: A4 landscape"), page);
  }

  @Test
  @DisplayName("check it at the places of its blocks")
  void check() throws Exception {
    assertEquals(0, run("check", PROCEDURE, "--on", "2026-11-25"), () -> out);
    Path copy = Files.copy(Path.of(PROCEDURE), folder.resolve("p.json"));
    Files.createDirectory(folder.resolve("blocks"));
    try (Stream<Path> blocks = Files.list(SHARED.resolve("blocks"))) {
      for (Path block : blocks.toList()) {
        Files.copy(block, folder.resolve("blocks").resolve(block.getFileName()));
      }
    }
    Path bush = folder.resolve("blocks/bonded-bush.yaml");
    Files.writeString(bush, Files.readString(bush).replace("needs: ride-height", "needs: any"));
    assertEquals(3, run("check", copy.toString(), "--on", "2026-11-25"), () -> out);
    assertTrue(out.contains(" blocks/bonded-bush.yaml:"), out);
    assertEquals(3, run("check", copy.toString(), "--on", "2026-11-25", "--json"), () -> out);
    assertTrue(out.contains("\"blocks/bonded-bush.yaml\""), out);
  }

  @Test
  @DisplayName("export it as the table of the whole procedure")
  void export() {
    run("export", PROCEDURE, "--csv");
    assertTrue(out.contains("wheel-bolts-left"), out);
    String whole = out;
    Path alone = folder.resolve("whole.json");
    assertEquals(0, run("assemble", PROCEDURE, "--out", alone.toString()), () -> err);
    run("export", alone.toString(), "--csv");
    assertEquals(whole, out);
  }

  @Test
  @DisplayName("write it whole, over no other file, and leave a whole one as it is")
  void assemble() throws Exception {
    Path alone = folder.resolve("whole.json");
    assertEquals(0, run("assemble", PROCEDURE, "--out", alone.toString()), () -> err);
    assertEquals(
        ProcedureFile.load(Path.of(PROCEDURE)).procedure(), ProcedureFile.load(alone).procedure());
    assertEquals(1, run("assemble", PROCEDURE, "--out", alone.toString()));
    assertTrue(err.startsWith("TAB-029 "), err);
    assertEquals(0, run("assemble", PROCEDURE, "--out", alone.toString(), "--force"));
    assertEquals(0, run("assemble", alone.toString()));
    assertEquals(Files.readString(alone), out);
    assertEquals(1, run("assemble", "shared/procedures/blocks/wheel-fitting.json"));
    assertTrue(err.startsWith("PRO-054 wheel-fitting.json:7:3 /takes: "), err);
  }

  @Test
  @DisplayName("do not offer a block as a procedure, wherever it lies")
  void shelf() throws Exception {
    Path here = Files.createDirectories(folder.resolve("here/procedures")).getParent();
    for (Path to : List.of(here, here.resolve("procedures"))) {
      Files.copy(SHARED.resolve("blocks/wheel-fitting.json"), to.resolve("wheel-fitting.json"));
    }
    ProcedureShelf shelf = ProcedureShelf.in(here, List.of(SHARED));
    assertEquals(List.of(), shelf.faults());
    assertFalse(shelf.usable().isEmpty());
    assertTrue(
        shelf.usable().stream().anyMatch(p -> PROCEDURE.endsWith("" + p.file().getFileName())));
  }
}
