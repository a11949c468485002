package org.undercall.command.doctor;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.undercall.port.Fault;
import org.undercall.port.UncheckedFault;

/** Runs checks one after the other; one that hangs is left behind on its thread. */
final class Doctor {

  private final List<Check> checks;
  private final long limitMillis;

  /**
   * A doctor.
   *
   * @param limitMillis how long one check may take
   */
  Doctor(List<Check> checks, long limitMillis) {
    this.checks = List.copyOf(checks);
    this.limitMillis = limitMillis;
  }

  /**
   * What one check found.
   *
   * @param name of the check
   */
  record Result(String name, Found found) {}

  /**
   * Runs every check.
   *
   * @param each gets a result as soon as it is known
   */
  List<Result> run(Consumer<Result> each) throws InterruptedException {
    List<Result> results = new ArrayList<>();
    for (Check check : checks) {
      Result result = new Result(check.name(), limited(check));
      results.add(result);
      each.accept(result);
    }
    return results;
  }

  /** Whether the work can be done. */
  static boolean ready(List<Result> results) {
    return results.stream().noneMatch(r -> r.found().state() == Found.State.FAULT);
  }

  private Found limited(Check check) throws InterruptedException {
    FutureTask<Found> task = new FutureTask<>(check::look);
    Thread thread = new Thread(task, "check " + check.name());
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(limitMillis, TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      String found = "no answer in " + limitMillis + " ms";
      return Found.fault(
          DoctorCode.NO_ANSWER.line(found, "one at once"),
          "restart the system's sound service for a sound device; for a disk, see that it is"
              + " there");
    } catch (ExecutionException e) {
      boolean coded = e.getCause() instanceof Fault || e.getCause() instanceof UncheckedFault;
      return Found.fault(
          coded
              ? e.getCause().getMessage()
              : DoctorCode.UNEXPECTED.line(String.valueOf(e.getCause()), "a check that ends"),
          "report this line to those who maintain the program");
    }
  }
}
