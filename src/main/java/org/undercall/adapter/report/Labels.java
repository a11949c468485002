package org.undercall.adapter.report;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/** How steps, sides and times are named on the pages of a report. */
final class Labels {
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss xxx", Locale.ROOT);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter LATER_DAY =
      DateTimeFormatter.ofPattern("MM-dd HH:mm:ss", Locale.ROOT);

  private final Dossier dossier;

  Labels(Dossier dossier) {
    this.dossier = dossier;
  }

  static String dayAndTime(OffsetDateTime at) {
    return DAY_AND_TIME.format(at);
  }

  /** The time of day, with the day if the session goes over midnight. */
  String time(OffsetDateTime at) {
    var head = dossier.review().head();
    boolean oneDay = head.started().toLocalDate().equals(head.last().toLocalDate());
    return (oneDay ? TIME : LATER_DAY).format(at);
  }

  static String side(Side side) {
    return side == Side.CAR ? "car" : ReviewWords.plain(side);
  }

  /** Number, side and title of a step; its name alone if the procedure does not have it. */
  String step(StepRef ref) {
    int number = dossier.number(ref);
    return number == 0
        ? ReviewWords.step(ref)
        : number
            + ", "
            + side(ref.side())
            + ": "
            + dossier.review().steps().get(number - 1).place().step().head().title();
  }
}
