package org.undercall.command.proof;

import java.util.List;
import org.undercall.adapter.log.SessionProof;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Occasion;

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
    text.append("  signature: ").append(words(proof.signature())).append('\n');
    proof.findings().forEach(f -> text.append("  ").append(f.message()).append('\n'));
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
