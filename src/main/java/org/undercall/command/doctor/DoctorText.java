package org.undercall.command.doctor;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Results as text, a line each. */
final class DoctorText {
  private DoctorText() {}

  /** The state in a word, the check, what was found, and what to do. */
  static String line(Doctor.Result result) {
    Found found = result.found();
    String remedy = found.remedy().isEmpty() ? "" : " - to do: " + found.remedy();
    return String.format(
        Locale.ROOT, "%-6s %-11s %s%s", found.state().word(), result.name(), found.found(), remedy);
  }

  /** The last line: whether the work can begin. */
  static String verdict(List<Doctor.Result> results) {
    if (!Doctor.ready(results)) {
      return "Not ready: " + names(results, Found.State.FAULT) + ".";
    }
    String notes = names(results, Found.State.NOTE);
    String ready = notes.isEmpty() ? "Ready." : "Ready; look at: " + notes + ".";
    return ready + " How well it understands you: undercall ear";
  }

  private static String names(List<Doctor.Result> results, Found.State state) {
    return results.stream()
        .filter(r -> r.found().state() == state)
        .map(Doctor.Result::name)
        .collect(Collectors.joining(", "));
  }
}
