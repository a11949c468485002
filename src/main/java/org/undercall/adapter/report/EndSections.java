package org.undercall.adapter.report;

import java.util.List;
import org.undercall.text.Markup;

/** Cautions, what the report does not prove, and what names the log. */
final class EndSections {
  /** Stand wherever torque is shown. */
  static final List<String> CAUTIONS =
      List.of(
          "Stands carry the car. Never work under a jack alone.",
          "The maker's repair data rules.",
          "Local codes and licensed practice come first.");

  private static final List<String> NOT_PROVED =
      List.of(
          ReviewWords.CALLED_NOT_MEASURED,
          "That a wrench was set to a value, or that a fastener was turned, was said and not seen.",
          "Load condition, head marking and new hardware are as the technician stated them.",
          "A wrench stands here only where it was named aloud; that it was used was not seen. Its"
              + " calibration is as the procedure states.",
          "Speech can be misheard; notes are as heard, unchecked. Closed values were compared with"
              + " the procedure only.",
          "Times are those of the machine's clock, which can be set.",
          "Who spoke is not known. Names on these pages were given by whoever made the report.",
          "The sum of the log shows a line that was changed or taken out before the last one. It"
              + " does not show lines cut off the end, nor a log written anew as a whole.",
          "That the procedure is right for the vehicle is not known to the program.");

  private EndSections() {}

  static void add(Markup m, Dossier dossier) {
    m.leaf("h2", "Cautions", "id", "cautions").open("ul");
    CAUTIONS.forEach(caution -> m.leaf("li", caution));
    m.closeLine();
    m.leaf("p", "The procedure adds:").open("ul");
    dossier.procedure().cautions().forEach(caution -> m.leaf("li", caution.text()));
    m.closeLine();
    m.leaf("h2", "What this report does not prove", "id", "not-proved").open("ul");
    NOT_PROVED.forEach(point -> m.leaf("li", point));
    m.closeLine();
    seal(m, dossier);
  }

  private static void seal(Markup m, Dossier dossier) {
    Dossier.Seal seal = dossier.seal();
    m.leaf("h2", "The log", "id", "log");
    m.open("p").text("Lines: " + seal.lines() + ". SHA-256, sum of the chain at the last line: ");
    m.leaf("code", seal.sum()).text(".");
    if (seal.torn()) {
      m.text(" A torn last line was left out.");
    }
    m.text(" Written by Undercall " + dossier.review().head().version() + ".").closeLine();
  }
}
