package org.undercall.command;

import java.io.PrintStream;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;

/**
 * Says on the error output that a command which prints nothing until its end is still at work. The
 * commands that talk, listen or ask show by themselves how they get on.
 */
public final class StillWorking {
  private static final Set<String> SILENT =
      Set.of(
          "assemble",
          "check",
          "clips",
          "compare",
          "completion",
          "diff",
          "export",
          "figure",
          "import",
          "key",
          "prepare",
          "report",
          "review",
          "sessions",
          "show",
          "sign",
          "verify",
          "words");

  private final PrintStream err;
  private final Duration first;
  private final Duration each;

  /** Says it after a second, and then every five. */
  public StillWorking(PrintStream err) {
    this(err, Duration.ofSeconds(1), Duration.ofSeconds(5));
  }

  StillWorking(PrintStream err, Duration first, Duration each) {
    this.err = err;
    this.first = first;
    this.each = each;
  }

  /** Does the work of a command. */
  public int during(String[] args, IntSupplier work) {
    if (args.length == 0 || !SILENT.contains(args[0])) {
      return work.getAsInt();
    }
    CountDownLatch done = new CountDownLatch(1);
    Thread watch = new Thread(() -> tell(args[0], done), "still working");
    watch.setDaemon(true);
    watch.start();
    try {
      return work.getAsInt();
    } finally {
      done.countDown();
    }
  }

  private void tell(String command, CountDownLatch done) {
    Duration taken = first;
    try {
      for (Duration wait = first;
          !done.await(wait.toMillis(), TimeUnit.MILLISECONDS);
          wait = each) {
        err.println("undercall " + command + ": working, " + taken.toSeconds() + " s");
        taken = taken.plus(each);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The commands that print nothing until their end. */
  static Set<String> watched() {
    return SILENT;
  }
}
