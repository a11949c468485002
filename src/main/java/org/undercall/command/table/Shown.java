package org.undercall.command.table;

import java.io.PrintWriter;
import java.util.List;
import org.undercall.adapter.report.WalkText;
import org.undercall.core.check.Finding;
import org.undercall.core.decision.WalkThrough;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.writing.Draft;

/** Shows what the answers come to: the walk, and what the check finds. */
final class Shown {
  private final PrintWriter out;
  private final TableJudge judge;

  Shown(PrintWriter out, TableJudge judge) {
    this.out = out;
    this.judge = judge;
  }

  /** The walk as it will be heard, and every finding. */
  void whole(Draft draft) {
    Procedure procedure = judge.procedure(draft).orElseThrow();
    Walk walk = Walk.of(procedure);
    out.print(WalkText.of(walk, WalkThrough.of(walk)));
    List<Finding> findings = judge.findings(procedure);
    findings.forEach(finding -> out.println(finding.at(finding.pointer())));
    out.println(findings.isEmpty() ? "The check finds nothing." : "Found: " + findings.size());
    out.flush();
  }

  /** What the check finds of a step that has just become whole. */
  void step(Draft before, Draft now) {
    if (before.rows().size() == now.rows().size()) {
      return;
    }
    judge.procedure(now).ifPresent(this::lastStep);
  }

  private void lastStep(Procedure procedure) {
    int phase = procedure.phases().size() - 1;
    int step = procedure.phases().get(phase).steps().size() - 1;
    String last = "/phases/" + phase + "/steps/" + step + "/";
    judge.findings(procedure).stream()
        .filter(finding -> finding.pointer().startsWith(last))
        .forEach(finding -> out.println("  " + finding.at(finding.pointer())));
    out.flush();
  }
}
