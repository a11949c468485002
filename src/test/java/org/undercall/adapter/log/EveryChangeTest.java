package org.undercall.adapter.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.session.KeptProcedures;
import org.undercall.session.Proof;

@DisplayName("Every change to a log")
class EveryChangeTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final int LINES = 60;

  /** Reads what is kept of the procedure once for all changes, as verify does for many sessions. */
  private final KeptProcedures procedures = new KeptProcedures();

  @TempDir private Path sessions;
  private SessionFolder folder;
  private byte[] good;
  private List<byte[]> lines;

  @BeforeEach
  void written() throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(PROCEDURE);
    List<Recorded> log = LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256());
    folder = SessionFolder.create(sessions, "demo", Files.readAllBytes(PROCEDURE), LogMaker.START);
    try (SessionLogFile open = SessionLogFile.open(folder.log())) {
      for (Recorded decision : log.subList(0, LINES)) {
        open.append(decision);
      }
    }
    good = Files.readAllBytes(folder.log());
    lines = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < good.length; i++) {
      if (good[i] == '\n') {
        lines.add(Arrays.copyOfRange(good, start, i + 1));
        start = i + 1;
      }
    }
    assertEquals(LINES, lines.size());
    assertEquals(List.of(), findings(good));
  }

  private List<LogFinding> findings(byte[] bytes) throws Exception {
    Files.write(folder.log(), bytes);
    return Proof.see(folder, Optional.empty(), procedures).proof().findings();
  }

  private List<LogFinding> findings(List<byte[]> changed) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    changed.forEach(out::writeBytes);
    return findings(out.toByteArray());
  }

  /** Whether the first finding names the line. */
  private static boolean at(int line, List<LogFinding> findings) {
    return !findings.isEmpty() && findings.get(0).line().orElse(0) == line;
  }

  @Test
  @DisplayName("of one byte is found, with its line")
  void bytes() throws Exception {
    int found = 0;
    int placed = 0;
    int line = 1;
    for (int i = 0; i < good.length; i++) {
      byte[] bad = good.clone();
      bad[i] = (byte) (good[i] ^ (1 << (i % 8)));
      List<LogFinding> findings = findings(bad);
      found += findings.isEmpty() ? 0 : 1;
      placed += at(line, findings) ? 1 : 0;
      line += good[i] == '\n' ? 1 : 0;
    }
    System.out.printf("bytes changed %d, found %d, in their line %d%n", good.length, found, placed);
    assertEquals(good.length, found);
    assertEquals(good.length, placed);
  }

  @Test
  @DisplayName("of whole lines is found, with the place")
  void wholeLines() throws Exception {
    int made = 0;
    int placed = 0;
    for (int i = 0; i < LINES; i++) {
      List<byte[]> removed = new ArrayList<>(lines);
      removed.remove(i);
      List<byte[]> doubled = new ArrayList<>(lines);
      doubled.add(i + 1, lines.get(i));
      placed += at(i + 1, findings(removed)) ? 1 : 0;
      placed += at(i + 2, findings(doubled)) ? 1 : 0;
      made += 2;
      if (i + 1 < LINES) {
        List<byte[]> swapped = new ArrayList<>(lines);
        Collections.swap(swapped, i, i + 1);
        placed += at(i + 1, findings(swapped)) ? 1 : 0;
        made++;
      }
    }
    System.out.printf("lines removed, doubled or swapped %d, found in place %d%n", made, placed);
    assertEquals(made, placed);
  }

  @Test
  @DisplayName("that puts a line in from any other place is found, with the place")
  void inserted() throws Exception {
    int made = 0;
    int placed = 0;
    for (int from = 0; from < LINES; from++) {
      for (int to = 0; to <= LINES; to++) {
        if (to != from + 1 && to != from) {
          List<byte[]> bad = new ArrayList<>(lines);
          bad.add(to, lines.get(from));
          placed += at(to + 1, findings(bad)) ? 1 : 0;
          made++;
        }
      }
    }
    System.out.printf("lines put in elsewhere %d, found in place %d%n", made, placed);
    assertEquals(made, placed);
  }

  @Test
  @DisplayName("that cuts it is found for every count of lines, and at every byte")
  void cut() throws Exception {
    int placed = 0;
    int line = 1;
    for (int size = 0; size < good.length; size++) {
      placed += at(line, findings(Arrays.copyOf(good, size))) ? 1 : 0;
      line += good[size] == '\n' ? 1 : 0;
    }
    System.out.printf("cut %d times, found in place %d%n", good.length, placed);
    assertEquals(good.length, placed);
  }

  @Test
  @DisplayName("that writes its end anew with right sums is found by the sum file")
  void forgedEnd() throws Exception {
    List<byte[]> forged = new ArrayList<>(lines.subList(0, LINES - 1));
    LogLine.Sealed before =
        LogLine.whole(Arrays.copyOf(forged.get(LINES - 2), forged.get(LINES - 2).length - 1))
            .orElseThrow();
    forged.add(LogLine.write(Samples.decision(LINES), before.sum()).bytes());
    List<LogFinding> findings = findings(forged);
    assertTrue(
        findings.stream()
            .anyMatch(f -> f.code() == LogCode.OTHER_SUM || f.code() == LogCode.LINES_GONE),
        findings::toString);
  }
}
