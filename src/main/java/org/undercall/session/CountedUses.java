package org.undercall.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Origin;
import org.undercall.core.review.ToolUse;
import org.undercall.port.Fault;

/**
 * The uses of torque wrenches, counted from every session in a folder.
 *
 * @param uses by the tool's id
 * @param sessions how many sessions were read
 * @param faults why others are not counted, a line with a code each
 */
public record CountedUses(Map<String, Integer> uses, int sessions, List<String> faults) {
  public CountedUses {
    uses = Map.copyOf(uses);
    faults = List.copyOf(faults);
  }

  /**
   * Reads every session of a folder that is a record of work; an absent folder holds none.
   *
   * @param tools the tools to count for, each from the day of its calibration
   * @throws Fault LOG-002 if the folder cannot be read
   */
  public static CountedUses in(Path folder, List<Tool> tools) throws Fault {
    ToolUse counted = new ToolUse(tools);
    List<String> faults = new ArrayList<>();
    int read = 0;
    for (SessionFolder session : SessionFolder.all(folder)) {
      try {
        StoredSession stored = StoredSession.read(session);
        if (Origin.of(stored.log().decisions()).isRecord()) {
          counted.add(Walk.of(stored.procedure()), stored.log().decisions());
          read++;
        }
      } catch (Fault e) {
        faults.add(OpenSessions.named(session, e.first().toString()));
      }
    }
    return new CountedUses(counted.uses(), read, faults);
  }
}
