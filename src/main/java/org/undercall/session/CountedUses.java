package org.undercall.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.ToolUse;
import org.undercall.port.Fault;

/**
 * The uses of torque wrenches, counted from every session in a folder.
 *
 * @param uses by the tool's id
 * @param sessions how many sessions were read
 * @param unreadable how many could not be read and are not counted
 */
public record CountedUses(Map<String, Integer> uses, int sessions, int unreadable) {
  public CountedUses {
    uses = Map.copyOf(uses);
  }

  /**
   * Reads every session of a folder; an absent folder holds none.
   *
   * @param tools the tools to count for, each from the day of its calibration
   */
  public static CountedUses in(Path folder, List<Tool> tools) throws IOException {
    ToolUse counted = new ToolUse(tools);
    int read = 0;
    int unreadable = 0;
    if (Files.isDirectory(folder)) {
      try (Stream<Path> paths = Files.list(folder)) {
        for (Path path : paths.filter(p -> Files.exists(p.resolve("log.jsonl"))).toList()) {
          if (add(counted, new SessionFolder(path))) {
            read++;
          } else {
            unreadable++;
          }
        }
      }
    }
    return new CountedUses(counted.uses(), read, unreadable);
  }

  private static boolean add(ToolUse counted, SessionFolder session) {
    try {
      LogContent log = SessionLogFile.read(session.log());
      Procedure procedure = ProcedureFile.load(session.procedure()).procedure();
      counted.add(Walk.of(procedure), log.decisions());
      return true;
    } catch (Fault e) {
      return false;
    }
  }
}
