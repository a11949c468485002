package org.undercall.adapter.report;

import java.util.List;
import org.undercall.text.Markup;

/**
 * What the report does not prove, what names the log and who signed it. It is kept on one page, so
 * that the last page of a report is never near empty.
 */
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
          "Who spoke is not known. Names on these pages were told or given, not checked.",
          "The sums of the log show a line that was changed or taken out before the last one. They"
              + " do not show a log written anew as a whole; a signature does.",
          "That the procedure is right for the vehicle is not known to the program.");

  private static final List<String> CHECK =
      List.of(
          "sha256sum log.jsonl",
          "sha256sum -c log.jsonl.signed",
          "openssl pkeyutl -verify -pubin -inkey shop.pub.pem -rawin -in log.jsonl.signed -sigfile"
              + " log.jsonl.signed.sig",
          "openssl pkey -pubin -in shop.pub.pem -outform DER | sha256sum");

  private EndSections() {}

  static void add(Markup m, Dossier dossier) {
    m.open("div", "class", "keep");
    m.leaf("h2", "What this report does not prove", "id", "not-proved").open("ul");
    NOT_PROVED.forEach(point -> m.leaf("li", point));
    m.closeLine();
    seal(m, dossier);
    m.closeLine();
  }

  private static void seal(Markup m, Dossier dossier) {
    Dossier.Seal seal = dossier.seal();
    m.leaf("h2", "The log, and who signed it", "id", "log");
    m.open("p").text("Lines: " + seal.lines() + ". SHA-256 of the file log.jsonl: ");
    m.leaf("code", seal.sha256()).text("; sum of the chain at the last line: ");
    m.leaf("code", seal.sum()).text(".");
    if (seal.torn()) {
      m.text(" A torn last line was left out.");
    }
    m.text(" Written by Undercall " + dossier.review().head().version() + ".").closeLine();
    m.leaf("p", SignedWords.whole(seal));
    m.leaf(
        "p",
        "Anybody checks it without this program, in the folder of the session and with the signer's"
            + " public key, which must come by a way that the reader trusts:");
    m.open("ul");
    CHECK.forEach(line -> m.open("li").leaf("code", line).closeLine());
    m.closeLine();
  }
}
