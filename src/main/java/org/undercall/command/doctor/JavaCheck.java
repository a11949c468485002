package org.undercall.command.doctor;

import java.util.Locale;

/**
 * The Java that runs the program.
 *
 * @param feature its version, such as 17
 * @param runs its whole version and the system
 * @param memory the most it may use, in bytes
 */
record JavaCheck(int feature, String runs, long memory) implements Check {
  private static final int LEAST = 17;
  private static final long LEAST_MEMORY = 120L << 20;

  static JavaCheck ofMachine() {
    Runtime.Version version = Runtime.version();
    String system = System.getProperty("os.name") + " " + System.getProperty("os.arch");
    return new JavaCheck(
        version.feature(), version + ", " + system, Runtime.getRuntime().maxMemory());
  }

  @Override
  public String name() {
    return "java";
  }

  @Override
  public Found look() {
    if (feature < LEAST) {
      return Found.fault(
          DoctorCode.OLD_JAVA.line("Java " + runs, "17 or newer"),
          "install a JDK 17 or newer and put it first on the path, or name it in JAVA_HOME");
    }
    if (memory < LEAST_MEMORY) {
      String found = String.format(Locale.ROOT, "%d MB for Java", memory >> 20);
      return Found.note(
          DoctorCode.LITTLE_MEMORY.line(found, "120 MB or more"),
          "start it with ./undercall, or give Java -Xmx256m");
    }
    return Found.well(runs);
  }
}
