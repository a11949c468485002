package org.undercall.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.undercall.adapter.log.SessionFolder;

/**
 * Prints how long {@code sessions} takes to read a folder for the first time, and {@code verify} to
 * look through all of it, beside {@code sha256sum} over the same logs in the same run. Each is a
 * whole command with a machine of its own, so that its start counts. It asserts nothing.
 */
public final class FleetSpeed {
  private static final int ROUNDS = 3;

  private FleetSpeed() {}

  /**
   * Measures. Arguments: how many sessions are made, a folder for them, then options of the Java
   * machine of the commands.
   */
  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[1]).toAbsolutePath();
    if (Files.notExists(folder)) {
      MakeSessions.make(Integer.parseInt(args[0]), folder, 7);
    }
    List<String> names = SessionFolder.all(folder).stream().map(SessionFolder::name).toList();
    double megabytes = 0;
    List<String> logs = new ArrayList<>();
    for (String name : names) {
      Path log = folder.resolve(name).resolve("log.jsonl");
      megabytes += Files.size(log) / 1e6;
      logs.add(log.toString());
    }
    List<String> options = List.of(args).subList(2, args.length);
    List<String> list = program(options, "sessions", "--csv", "--no-index");
    List<String> verify = program(options, "verify");
    for (List<String> command : List.of(list, verify)) {
      command.addAll(List.of("--sessions", folder.toString()));
    }
    verify.addAll(names);
    List<String> sum = new ArrayList<>(List.of("sha256sum"));
    sum.addAll(logs);
    System.out.printf(Locale.ROOT, "%d sessions, logs of %.0f MB%n", names.size(), megabytes);
    for (int i = 0; i < ROUNDS; i++) {
      Taken sums = taken(sum);
      print("sha256sum", sums, sums);
      print("sessions, read first", taken(list), sums);
      print("verify", taken(verify), sums);
    }
  }

  private static List<String> program(List<String> options, String... words) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add("org.undercall.command.App");
    command.addAll(List.of(words));
    return command;
  }

  /** Seconds on the wall and of the processors, and the peak of the memory in megabytes. */
  private record Taken(double wall, double cpu, double memory) {}

  private static Taken taken(List<String> command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    long start = System.nanoTime();
    Process process = builder.start();
    double memory = 0;
    double cpu = 0;
    do {
      memory = Math.max(memory, peak(process.pid()));
      cpu = process.info().totalCpuDuration().map(d -> d.toMillis() / 1e3).orElse(cpu);
    } while (!process.waitFor(1, TimeUnit.MILLISECONDS));
    double wall = (System.nanoTime() - start) / 1e9;
    if (process.exitValue() != 0) {
      throw new IllegalStateException("status " + process.exitValue() + " of " + command.get(0));
    }
    return new Taken(wall, cpu, memory);
  }

  private static double peak(long pid) {
    try (Stream<String> lines = Files.lines(Path.of("/proc", String.valueOf(pid), "status"))) {
      return lines
          .filter(l -> l.startsWith("VmHWM"))
          .mapToDouble(l -> Double.parseDouble(l.replaceAll("[^0-9]", "")) / 1e3)
          .findFirst()
          .orElse(0);
    } catch (IOException | java.io.UncheckedIOException e) {
      return 0; // The process is gone, or the system does not tell.
    }
  }

  private static void print(String what, Taken taken, Taken sums) {
    System.out.printf(
        Locale.ROOT,
        "%-22s %6.2f s, %5.1f times sha256sum; processors %6.2f s; memory %4.0f MB%n",
        what,
        taken.wall(),
        taken.wall() / sums.wall(),
        taken.cpu(),
        taken.memory());
  }
}
