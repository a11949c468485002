package org.undercall.session;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.LogTrouble;
import org.undercall.core.term.Occasion;
import org.undercall.port.Fault;

@DisplayName("A session whose log is cut at any byte")
class CutLogTest {
  private static final Path DEMO = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-01-05T08:00:00+01:00");
  private static final int LINES = 8;

  @TempDir private Path sessions;
  private SessionFolder folder;
  private List<Recorded> work;
  private byte[] good;
  private String sum;

  @BeforeEach
  void write() throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(DEMO);
    work =
        TypedTechnician.wholeWork(loaded.procedure(), loaded.sha256()).subList(0, LINES).stream()
            .map(CutLogTest::withClip)
            .toList();
    folder = SessionFolder.create(sessions, "demo", Files.readAllBytes(DEMO), START);
    try (SessionLogFile log = SessionLogFile.open(folder.log())) {
      for (Recorded decision : work) {
        log.append(decision);
      }
    }
    good = Files.readAllBytes(folder.log());
    sum = Files.readString(sumFile());
  }

  /** Every phrase names a clip, and the folder of clips is not there. */
  private static Recorded withClip(Recorded decision) {
    String file = "%06d.flac".formatted(decision.seq());
    Recorded.Heard heard =
        new Recorded.Heard("x", "x", 1, "spoken", Optional.of(new Clip(file, "0a".repeat(32))));
    return new Recorded(
        decision.seq(), decision.at(), Optional.of(heard), decision.events(), decision.said());
  }

  private Path sumFile() {
    return folder.path().resolve("log.jsonl.sha256");
  }

  private int wholeLines(int size) {
    return (int) new String(good, 0, size, UTF_8).chars().filter(c -> c == '\n').count();
  }

  private boolean isBorder(int size) {
    return size == 0 || good[size - 1] == '\n';
  }

  @Test
  @DisplayName("has every whole decision and names the torn rest")
  void everyByte() throws Exception {
    for (int size = 0; size <= good.length; size++) {
      Files.write(folder.log(), Arrays.copyOf(good, size));
      LogContent content = SessionLogFile.read(folder.log());
      assertEquals(work.subList(0, wholeLines(size)), content.decisions());
      int start = size;
      while (!isBorder(start)) {
        start--;
      }
      Optional<String> rest =
          start == size
              ? Optional.empty()
              : Optional.of(new String(good, start, size - start, UTF_8).stripTrailing());
      assertEquals(rest, content.dropped(), "cut at " + size);
    }
    System.out.printf("%d lines cut at each of %d bytes%n", LINES, good.length);
  }

  /** What lies beside the log. */
  enum Beside {
    ITS_SUM,
    NO_SUM,
    HALF_A_SUM,
    AN_EMPTY_SUM,
    THE_SUM_OF_ANOTHER_LOG
  }

  private void put(Beside beside) throws IOException {
    switch (beside) {
      case ITS_SUM -> Files.writeString(sumFile(), sum);
      case NO_SUM -> Files.deleteIfExists(sumFile());
      case HALF_A_SUM -> Files.writeString(sumFile(), sum.substring(0, sum.length() / 2));
      case AN_EMPTY_SUM -> Files.writeString(sumFile(), "");
      case THE_SUM_OF_ANOTHER_LOG ->
          Files.writeString(sumFile(), sum.replaceFirst("[0-9a-f]{64}", "0a".repeat(32)));
    }
  }

  /** What must be told of a log of whole lines, at least one, and a torn rest. */
  private Optional<LogTrouble> trouble(Beside beside, int lines) {
    return switch (beside) {
      case ITS_SUM -> lines == LINES ? Optional.empty() : Optional.of(LogTrouble.LINES_GONE);
      case NO_SUM -> lines <= 1 ? Optional.empty() : Optional.of(LogTrouble.SUM_MISSING);
      case HALF_A_SUM, AN_EMPTY_SUM -> Optional.of(LogTrouble.SUM_MISSING);
      case THE_SUM_OF_ANOTHER_LOG ->
          Optional.of(lines == LINES ? LogTrouble.SUM_DIFFERS : LogTrouble.LINES_GONE);
    };
  }

  @ParameterizedTest
  @EnumSource
  @DisplayName("is taken up with what is whole, and tells what it lost, whatever lies beside it")
  void takenUp(Beside beside) throws Exception {
    for (int size = good.length; size > 0; size -= isBorder(size) ? 1 : 331) {
      int lines = wholeLines(size);
      Files.write(folder.log(), Arrays.copyOf(good, size));
      put(beside);
      if (lines == 0) {
        Fault fault = assertThrows(Fault.class, () -> Work.takeUp(folder, Occasion.WORK));
        assertEquals(LogCode.NOT_STARTED, fault.code());
        continue;
      }
      SessionLoop.Ports ports = new Bench().ports();
      try (Work up = Work.takeUp(folder, Occasion.WORK)) {
        assertEquals(isBorder(size), up.dropped().isEmpty(), "cut at " + size);
        up.run(ports.ear(), ports.voice(), ports.time());
      }
      List<Recorded> log = SessionLogFile.read(folder.log()).decisions();
      assertEquals(work.subList(0, lines), log.subList(0, lines));
      Recorded told = log.get(lines);
      assertTrue(told.events().get(0) instanceof SessionEvent.SessionResumed);
      Optional<LogTrouble> found =
          told.events().stream()
              .filter(SessionEvent.LogDoubted.class::isInstance)
              .map(e -> ((SessionEvent.LogDoubted) e).trouble())
              .findFirst();
      assertEquals(trouble(beside, lines), found, beside + ", cut at " + size);
      assertEquals(found.isPresent(), told.said().contains("Careful."), told.said());
    }
  }
}
