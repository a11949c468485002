package org.undercall.core.reply;

import org.undercall.core.procedure.Stage;
import org.undercall.core.term.BandSource;
import org.undercall.core.term.TorqueHint;

/** What the program says of a torque that was read after the last angle: a hint, no verdict. */
public final class FinalTorque {
  private FinalTorque() {}

  /** The torque was kept and held against a band. */
  public static Reply judged(Stage.AngleStage.Band band, BandSource source, TorqueHint hint) {
    boolean stated = source == BandSource.STATED;
    if (hint == TorqueHint.AS_EXPECTED) {
      return stated ? Say.kept() : Reply.of("Recorded. About as expected.");
    }
    String ends =
        Words.digits(band.least().amount())
            + (stated ? " and " : " to ")
            + Words.torque(band.most())
            + ".";
    return Reply.of("Recorded. " + (stated ? "Not between " : "Expected about ") + ends)
        .and(hint(hint));
  }

  private static Reply hint(TorqueHint hint) {
    return hint == TorqueHint.TOO_SOFT
        ? Reply.of(
            "Too soft. It may have yielded, or the thread is stripping.",
            "If so, say: bolt is yielding, or: thread is stripped.")
        : Reply.of(
            "Too hard. It may be cross-threaded or dirty.", "If so, say: it is cross threaded.");
  }
}
