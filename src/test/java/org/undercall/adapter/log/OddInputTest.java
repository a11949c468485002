package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.adapter.procedure.ProcedureCode;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

@DisplayName("Input that fuzzing or its limits are about")
class OddInputTest {
  @TempDir private Path folder;

  @Test
  @DisplayName("a field name of a million characters is refused before it fills the memory")
  void longName() throws Exception {
    Path file = folder.resolve("long.json");
    String values = "0,".repeat(40_000) + "0";
    Files.writeString(file, "{\"" + "n".repeat(1_000_000) + "\":[" + values + "]}");
    Fault faults = assertThrows(Fault.class, () -> ProcedureFile.load(file));
    assertEquals(ProcedureCode.TEXT_TOO_LONG, faults.findings().get(0).code());
    assertTrue(faults.getMessage().length() < 400, faults.getMessage());
  }

  @Test
  @DisplayName("a line break or a long text in a damaged log gives one short line")
  void oneLine() {
    String at = "2026\\n" + "x".repeat(5_000);
    String open = "{\"seq\":1,\"at\":\"" + at + "\",\"mono\":1,\"prev\":\"" + LogLine.FIRST + "\"";
    String log = open + ",\"sum\":\"" + Sha256.hex(open.getBytes(UTF_8)) + "\"}\n";
    Fault fault = assertThrows(Fault.class, () -> LogContent.of(log.getBytes(UTF_8), "log.jsonl"));
    assertEquals(LogCode.BAD_MEMBER, fault.code());
    Coded.requireCode("LOG", fault.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "at, +99999-01-05T08:00:00Z, 1, 2026-01-05T08:00:00Z",
    "at, -0001-01-05T08:00:00Z, 1, 2026-01-05T08:00:00Z",
    "mono, 2026-01-05T08:00:00Z, 9223372036854775807, 2026-01-05T08:00:00Z",
    "due, 2026-01-05T08:00:00Z, 1, +1000000000-12-31T23:59:59Z"
  })
  @DisplayName("a time that milliseconds cannot count is no time")
  void farTimes(String member, String at, long mono, String due) {
    String open =
        "{\"seq\":1,\"at\":\"%s\",\"mono\":%d,\"events\":[{\"id\":\"EV35\",\"step\":\"s/left\",\"seconds\":1,\"due\":\"%s\"}],\"said\":\"\",\"prev\":\"%s\""
            .formatted(at, mono, due, LogLine.FIRST);
    String log = open + ",\"sum\":\"" + Sha256.hex(open.getBytes(UTF_8)) + "\"}\n";
    Fault fault = assertThrows(Fault.class, () -> LogContent.of(log.getBytes(UTF_8), "log.jsonl"));
    assertEquals(LogCode.BAD_MEMBER, fault.code());
    assertTrue(fault.getMessage().contains("member " + member), fault.getMessage());
    Coded.requireCode("LOG", fault.getMessage());
  }
}
