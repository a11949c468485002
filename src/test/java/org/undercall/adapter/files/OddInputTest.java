package org.undercall.adapter.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Input that fuzzing or its limits are about")
class OddInputTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("a field name of a million characters is refused before it fills the memory")
  void longName() throws Exception {
    Path file = folder.resolve("long.json");
    String values = "0,".repeat(40_000) + "0";
    Files.writeString(file, "{\"" + "n".repeat(1_000_000) + "\":[" + values + "]}");
    ProcedureFaults faults = assertThrows(ProcedureFaults.class, () -> ProcedureFile.load(file));
    assertEquals(FaultCode.TEXT_TOO_LONG, faults.faults().get(0).code());
    assertTrue(faults.getMessage().length() < 400, faults.getMessage());
  }

  @Test
  @DisplayName("a line break or a long text in a damaged log gives one short line")
  void oneLine() {
    String at = "2026\\n" + "x".repeat(5_000);
    String open = "{\"seq\":1,\"at\":\"" + at + "\",\"mono\":1,\"prev\":\"" + LogLine.FIRST + "\"";
    String log = open + ",\"sum\":\"" + LogLine.sha256(open.getBytes(UTF_8)) + "\"}\n";
    LogFault fault =
        assertThrows(LogFault.class, () -> LogContent.of(log.getBytes(UTF_8), "log.jsonl"));
    assertEquals(LogFault.Code.BAD_MEMBER, fault.code());
    Coded.requireCode("LOG", fault.getMessage());
  }
}
