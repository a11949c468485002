package org.undercall.adapter.report;

import java.math.BigDecimal;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.BandSource;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TorqueHint;
import org.undercall.text.Markup;
import org.undercall.text.Svg;

/** A small picture of a torque after the last angle, on a line with its band. */
final class TorquePicture {
  private static final String HINT =
      "A hint to look, never a verdict: a torque in its band proves nothing either. A computed band"
          + " rests on the sizes and the friction that the procedure states.";

  private static final double WIDE = 520;
  private static final double LEFT = 20;
  private static final double RIGHT = 500;
  private static final double LINE = 46;
  private static final String[] MIDDLE = {"text-anchor", "middle"};

  private TorquePicture() {}

  /** One for each fastener whose torque was held against a band; nothing if there is none. */
  static void add(Markup m, Dossier dossier) {
    Labels labels = new Labels(dossier);
    boolean any =
        dossier.review().steps().stream().anyMatch(s -> s.tightened().judged().isPresent());
    if (!any) {
      return;
    }
    m.leaf("h2", "Torque after the last angle", "id", "final-torque");
    m.leaf("p", HINT, "class", "strong");
    dossier
        .review()
        .steps()
        .forEach(
            step ->
                step.tightened()
                    .judged()
                    .ifPresent(
                        judged -> {
                          BigDecimal read =
                              step.tightened().finalTorque().orElseThrow().event().value();
                          StepRef ref = step.place().ref();
                          String unit = ReviewWords.unit(step.tightened());
                          m.open("div", "class", "picture")
                              .made(of(labels.step(ref), judged, read, unit))
                              .closeLine();
                        }));
  }

  private static String of(
      String step, SessionEvent.FinalTorqueJudged judged, BigDecimal read, String unit) {
    double least = judged.least().doubleValue();
    double most = judged.most().doubleValue();
    double torque = read.doubleValue();
    double low = Math.min(least, torque);
    double room = Math.max(0.15 * (Math.max(most, torque) - low), 1);
    double from = low - room;
    double scale = (RIGHT - LEFT) / (Math.max(most, torque) + room - from);
    String source = judged.band() == BandSource.COMPUTED ? "computed band " : "band ";
    String band = source + judged.least().toPlainString() + " to " + judged.most().toPlainString();
    String words =
        step + ": " + read.toPlainString() + " " + unit + ", " + band + ", hint: " + hint(judged);
    double left = LEFT + (least - from) * scale;
    double right = LEFT + (most - from) * scale;
    double at = LEFT + (torque - from) * scale;
    return new Svg(WIDE, 74, words)
        .text(LEFT, 14, words)
        .rectangle(left, LINE - 10, right - left, 20, "fill", "#2E7D32", "fill-opacity", "0.3")
        .line(LEFT, LINE, RIGHT, LINE, "stroke", "#666")
        .line(at, LINE - 14, at, LINE + 14, "stroke", "#000", "stroke-width", "3")
        .text(left, LINE + 26, judged.least().toPlainString(), MIDDLE)
        .text(right, LINE + 26, judged.most().toPlainString(), MIDDLE)
        .text(at, LINE - 18, read.toPlainString(), MIDDLE)
        .toString();
  }

  private static String hint(SessionEvent.FinalTorqueJudged judged) {
    return judged.hint() == TorqueHint.AS_EXPECTED
        ? ReviewWords.plain(judged.hint())
        : ReviewWords.plain(judged.hint()).toUpperCase(java.util.Locale.ROOT);
  }
}
