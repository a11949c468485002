package org.undercall.command.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Step;

@DisplayName("What was answered")
class NewKeptTest extends AskedAtKeyboard {
  @Test
  @DisplayName("is kept when it is broken off, as a table that import reads, and taken up again")
  void brokenOff() throws Exception {
    String begun = "fasten\nSecond bush bolt\nM14x1.5\n";
    assertEquals(1, asked(HEAD + BUSH + begun));
    assertFalse(Files.exists(file()));
    String other = folder.resolve("other.json").toString();
    List<String> imported = List.of("import", kept().toString(), "--out", other);
    assertEquals(0, run(App.commandLine(), imported), out + "\n" + err);
    assertEquals(1, ProcedureFile.load(Path.of(other)).procedure().phases().get(0).steps().size());

    String rest = BUSH.substring(BUSH.indexOf("M12x1.5") + 8).replace("ride height", "ride height");
    assertEquals(0, asked("\n" + rest + "done\nyes\n"), out + "\n" + err);
    assertEquals(2, written().phases().get(0).steps().size());
    Step.Fasten second = (Step.Fasten) written().phases().get(0).steps().get(1);
    assertEquals("M14x1.5", second.fastener().thread());
    assertFalse(Files.exists(kept()));
  }

  @Test
  @DisplayName("is the same as in one go wherever it was broken off and taken up")
  void anywhere() throws Exception {
    String all = HEAD + BUSH + REST + "yes\n";
    asked(all);
    Procedure whole = written();
    List<String> lines = all.lines().toList();
    for (int cut = 1; cut < lines.size(); cut += 7) {
      Files.delete(file());
      String first = String.join("\n", lines.subList(0, cut)) + "\n";
      String rest = "yes\n" + String.join("\n", lines.subList(cut, lines.size())) + "\n";
      assertEquals(1, asked(first), out + "");
      asked(rest);
      assertTrue(Files.exists(file()), "cut after " + lines.get(cut - 1) + "\n" + out);
      assertEquals(whole, written(), "cut after " + lines.get(cut - 1));
    }
  }

  @Test
  @DisplayName("is put aside if it is not wanted any more")
  void aside() throws Exception {
    asked(HEAD + "stop\n");
    String before = Files.readString(kept());
    assertEquals(0, asked("no\n" + HEAD + BUSH + "done\nyes\n"), out + "\n" + err);
    assertEquals(before, Files.readString(folder.resolve("new.json.csv.old")));
  }

  @Test
  @DisplayName("is not taken up from a table that is doubtful, or holds more than is asked for")
  void changed() throws Exception {
    asked(HEAD + BUSH + "stop\n");
    String table = Files.readString(kept());
    Files.writeString(kept(), table.replace("M12x1.5", "M12"));
    assertEquals(1, asked("yes\n"));
    assertTrue(err.toString().contains("TAB-021 new.json.csv "), err.toString());
    Files.writeString(
        kept(),
        table.replace("phase,side", "id,phase,side").replace("\r\ntighten", "\r\nx,tighten"));
    assertEquals(1, asked("yes\n"));
    assertTrue(err.toString().contains("NEW-006 new.json.csv"), err.toString());
  }

  @Test
  @DisplayName("is not written over a file that is there, and is asked nothing then")
  void refused() throws Exception {
    Files.writeString(file(), "mine");
    assertEquals(1, asked(HEAD + BUSH));
    assertEquals("mine", Files.readString(file()));
    assertTrue(err.toString().contains("TAB-029"), err.toString());
    assertFalse(Files.exists(kept()));
    assertEquals(0, asked(HEAD + BUSH + "done\nyes\n", "--force"), out + "\n" + err);
  }

  @Test
  @DisplayName("is written only when that is wanted")
  void notWanted() {
    assertEquals(1, asked(HEAD + BUSH + "done\nperhaps\nno\n"));
    assertTrue(out.toString().contains("NEW-002 found \"perhaps\""), out.toString());
    assertTrue(Files.exists(kept()));
    assertFalse(Files.exists(file()));
  }
}
