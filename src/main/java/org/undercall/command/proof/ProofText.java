package org.undercall.command.proof;

import java.util.List;
import org.undercall.adapter.log.SessionProof;
import org.undercall.adapter.log.SignedStatement;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Occasion;
import org.undercall.text.Shown;

/** Proofs of sessions as text: a block for each, its findings one a line. */
final class ProofText {
  private ProofText() {}

  static String of(List<SessionProof> proofs) {
    StringBuilder text = new StringBuilder();
    proofs.forEach(proof -> add(text, proof));
    return text.toString();
  }

  private static void add(StringBuilder text, SessionProof proof) {
    text.append(proof.session()).append(proof.whole() ? ": whole" : ": NOT WHOLE").append('\n');
    if (proof.occasion() != Occasion.WORK) {
      text.append("  ").append(Kebab.of(proof.occasion())).append(": no record of work\n");
    }
    text.append("  lines: ").append(proof.lines()).append('\n');
    if (proof.torn()) {
      text.append("  torn last line: one after them, never confirmed as recorded\n");
    }
    text.append("  sum file: ").append(covered(proof)).append('\n');
    text.append("  SHA-256 of log.jsonl: ").append(proof.sha256()).append('\n');
    text.append("  signature: ").append(words(proof.signature())).append('\n');
    proof.statement().ifPresent(stated -> add(text, stated, proof.signature()));
    proof.findings().forEach(f -> text.append("  ").append(f.message()).append('\n'));
  }

  private static void add(
      StringBuilder text, SessionProof.Stated stated, SessionProof.Signed signed) {
    stated(stated.said()).forEach(line -> text.append(line).append('\n'));
    if (!stated.sameLog()) {
      text.append("  that was another state of the log: it must be signed again\n");
    } else if (signed == SessionProof.Signed.NOT_CHECKED) {
      text.append("  that is what the signer states, not checked (give --key)\n");
    }
  }

  /** Who signs, when and with which key, as the signer states it. */
  static List<String> stated(SignedStatement said) {
    return List.of(
        "  signed by: " + said.name().map(Shown::line).orElse("nobody named"),
        "  signed at: " + said.at() + ", by the clock of the signer's machine",
        "  signed with the key: SHA-256 " + said.key());
  }

  private static String covered(SessionProof proof) {
    if (proof.covered().isEmpty()) {
      return "no match";
    }
    long behind = proof.lines() - proof.covered().getAsLong();
    return behind == 0 ? "up to the last line" : behind + " behind, the lines before it match";
  }

  static String words(SessionProof.Signed signed) {
    return switch (signed) {
      case NONE -> "none";
      case NOT_CHECKED -> "there, not checked (give --key)";
      case BY_THIS_KEY -> "good, by the holder of this key";
      case NOT_BY_THIS_KEY -> "NOT of this log by this key";
    };
  }
}
