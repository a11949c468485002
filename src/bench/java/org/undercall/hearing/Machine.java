package org.undercall.hearing;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What the machine says about itself and about this process. */
final class Machine {
  private static final Path STATUS = Path.of("/proc/self/status");
  private static final Path CPU = Path.of("/proc/cpuinfo");

  private Machine() {}

  /** Memory of the process that is in RAM, in MB; 0 where the system does not tell. */
  static double residentMegabytes() {
    return megabytes("VmRSS");
  }

  /** The most there ever was of it, in MB; 0 where the system does not tell. */
  static double peakMegabytes() {
    return megabytes("VmHWM");
  }

  private static double megabytes(String name) {
    return field(STATUS, name).map(kb -> Long.parseLong(kb.split(" ", -1)[0]) / 1024.0).orElse(0.0);
  }

  /** Processor time of the current thread in nanoseconds. */
  static long computingNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** Processor, cores, Java. */
  static String described() {
    String cpu = field(CPU, "model name").orElse("unknown processor");
    return cpu
        + ", "
        + Runtime.getRuntime().availableProcessors()
        + " cores, Java "
        + Runtime.version().feature()
        + ", heap limit "
        + (Runtime.getRuntime().maxMemory() >> 20)
        + " MB";
  }

  private static Optional<String> field(Path file, String name) {
    try {
      List<String> lines = Files.readAllLines(file);
      return lines.stream()
          .filter(line -> line.startsWith(name))
          .map(line -> line.substring(line.indexOf(':') + 1).strip())
          .findFirst();
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
