package org.undercall.fuzz;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercall.adapter.board.BoardTarget;
import org.undercall.adapter.log.LogTarget;
import org.undercall.adapter.procedure.ProcedureTarget;
import org.undercall.adapter.table.TableTarget;
import org.undercall.adapter.words.OwnWordsTarget;
import org.undercall.core.intent.WordsTarget;
import org.undercall.sound.WavTarget;

/**
 * Every kept input, and each changed a little, through its target. {@code mvn -Pfuzz} goes on from
 * the same inputs for longer; what it finds is kept here.
 */
@DisplayName("Any input gets an answer or a fault with a code")
class KeptInputsTest {
  private static final Path KEPT = Path.of("src", "test", "resources", "fuzz");
  private static final int CHANGED = Integer.getInteger("undercall.mutations", 300);
  private static final long SEED = Long.getLong("undercall.seed", 20_261_125);

  /** Only stops what would never end. */
  private static final Duration HANGS = Duration.ofMinutes(5);

  /** One input may not need more memory than this, all of it together. */
  private static final long MOST_BYTES = 1L << 30;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  /** Takes any bytes. */
  interface Target {
    void take(byte[] data) throws IOException;
  }

  /** A target by the name of its folder of kept inputs. */
  record Kind(String name, Target target) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Kind> kinds() {
    return Stream.of(
        new Kind("procedure", ProcedureTarget::fuzzerTestOneInput),
        new Kind("log", LogTarget::fuzzerTestOneInput),
        new Kind("words", WordsTarget::fuzzerTestOneInput),
        new Kind("wav", WavTarget::fuzzerTestOneInput),
        new Kind("board", BoardTarget::fuzzerTestOneInput),
        new Kind("table", TableTarget::fuzzerTestOneInput),
        new Kind("own-words", OwnWordsTarget::fuzzerTestOneInput));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  @DisplayName("as it was kept, and changed a little")
  void keptAndChanged(Kind kind) throws IOException {
    List<byte[]> kept = new ArrayList<>();
    try (Stream<Path> files = Files.list(KEPT.resolve(kind.name()))) {
      for (Path file : files.sorted().toList()) {
        kept.add(Files.readAllBytes(file));
      }
    }
    assertTrue(kept.size() >= 4, kind + " has " + kept.size() + " kept inputs");
    assertTimeoutPreemptively(HANGS, () -> all(kind, kept));
    System.out.printf(
        "%s: %d kept inputs, %d changed ones, seed %d%n", kind, kept.size(), CHANGED, SEED);
  }

  private static void all(Kind kind, List<byte[]> kept) {
    kept.forEach(input -> take(kind, input));
    Mutator mutator = new Mutator(SEED, kept);
    for (int i = 0; i < CHANGED; i++) {
      take(kind, mutator.next());
    }
  }

  private static void take(Kind kind, byte[] input) {
    long before = THREADS.getCurrentThreadAllocatedBytes();
    try {
      kind.target().take(input);
    } catch (IOException | RuntimeException | AssertionError e) {
      throw new AssertionError(kind + " on " + HexFormat.of().formatHex(input), e);
    }
    long needed = THREADS.getCurrentThreadAllocatedBytes() - before;
    assertTrue(
        needed < MOST_BYTES,
        () -> kind + " needed " + needed + " bytes for " + HexFormat.of().formatHex(input));
  }
}
