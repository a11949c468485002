package org.undercall.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("While a command works for long")
class StillWorkingTest {
  private static final Duration NEVER = Duration.ofDays(1);

  /** Keeps what is printed, and tells when two lines are there. */
  private static final class Lines extends OutputStream {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final CountDownLatch two = new CountDownLatch(2);

    @Override
    public synchronized void write(int one) {
      bytes.write(one);
      if (one == '\n') {
        two.countDown();
      }
    }

    boolean waitForTwo() {
      try {
        return two.await(1, TimeUnit.MINUTES);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return false;
      }
    }

    synchronized String text() {
      return bytes.toString(StandardCharsets.UTF_8);
    }
  }

  private static PrintStream printer(Lines lines) {
    return new PrintStream(lines, true, StandardCharsets.UTF_8);
  }

  @Test
  @DisplayName("it is said again and again, until it is done")
  void saidAgain() {
    Lines lines = new Lines();
    StillWorking quick =
        new StillWorking(printer(lines), Duration.ofMillis(1), Duration.ofMillis(1));
    int status = quick.during(new String[] {"report", "last"}, () -> lines.waitForTwo() ? 7 : 0);
    assertEquals(7, status);
    assertTrue(lines.text().startsWith("undercall report: working, 0 s"), lines.text());
  }

  @Test
  @DisplayName("nothing is said before its time, or where the command talks itself")
  void silent() {
    Lines lines = new Lines();
    StillWorking slow = new StillWorking(printer(lines), NEVER, NEVER);
    assertEquals(3, slow.during(new String[] {"report"}, () -> 3));
    StillWorking quick =
        new StillWorking(printer(lines), Duration.ofMillis(1), Duration.ofMillis(1));
    assertEquals(0, quick.during(new String[0], () -> 0));
    assertEquals("", lines.text());
  }

  @Test
  @DisplayName("every command either talks itself or is watched")
  void everyCommand() {
    Set<String> talk =
        Set.of(
            "demo",
            "desk",
            "doctor",
            "ear",
            "listen",
            "microphones",
            "new",
            "rehearse",
            "say",
            "work");
    Set<String> all = new TreeSet<>(talk);
    all.addAll(StillWorking.watched());
    assertEquals(new TreeSet<>(App.commandLine().getSubcommands().keySet()), all);
  }
}
