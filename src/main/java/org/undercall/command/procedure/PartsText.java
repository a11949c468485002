package org.undercall.command.procedure;

import java.util.List;
import org.undercall.adapter.procedure.Part;

/** The files that a procedure was put together from, as text. */
final class PartsText {
  private PartsText() {}

  /** A paragraph; nothing for a procedure that is one file. */
  static String of(List<Part> parts) {
    if (parts.isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder("\nPut together from:\n");
    for (Part part : parts) {
      text.append("  ").append(part.file()).append('\n');
      part.block()
          .ifPresent(
              about ->
                  text.append("    values: ")
                      .append(about.values())
                      .append("\n    revision ")
                      .append(about.revision())
                      .append(", ")
                      .append(about.author())
                      .append('\n'));
      text.append("    SHA-256 ").append(part.sha256()).append('\n');
    }
    return text.toString();
  }
}
