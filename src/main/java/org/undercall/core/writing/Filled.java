package org.undercall.core.writing;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.core.reply.Wanted;

/**
 * Fills a draft up with answers that are right, so that the last true answer can be judged beside
 * them. What is filled in is never kept.
 */
final class Filled {
  private static final Pattern TORQUE = Pattern.compile("([0-9]+(?:[.,][0-9]+)?) ?(.*)");

  private Filled() {}

  static Draft of(Draft draft) {
    Draft whole = draft;
    for (Optional<Wanted> next = whole.next(); next.isPresent(); next = whole.next()) {
      whole = whole.with(next.get(), right(next.get(), whole));
    }
    return whole;
  }

  private static String right(Wanted wanted, Draft draft) {
    return switch (wanted) {
      case TOOL_LEAST -> "1 Nm";
      case TOOL_MOST -> most(draft.last().orElseThrow().text());
      case CALIBRATED -> "2000-01-31";
      case KIND -> draft.rows().isEmpty() ? "wait" : "done";
      case THREAD -> "M12x1.5";
      case HARDWARE -> "bolt";
      case SOCKET -> "18";
      case SEAT_ANGLE -> "60";
      case BY_HAND, ONE_TIME, WHEEL, CHANGES_LOAD, BY_WHEELS -> "no";
      case LUBRICATION -> "unstated";
      case NEEDS -> "any";
      case CONDITION -> "ride height";
      case MARKING, MORE_STAGES -> Given.NONE;
      case STAGE -> torque(draft);
      case UNIT -> "mm";
      case HEIGHT_TOLERANCE -> "10";
      case SECONDS -> "60";
      case STEP -> "The step that is being asked for";
      default -> Otherwise.of(wanted, draft).orElse("not answered yet");
    };
  }

  /** Twice the least torque. */
  private static String most(String least) {
    Matcher parts = TORQUE.matcher(least);
    if (!parts.matches()) {
      return least;
    }
    BigDecimal twice =
        new BigDecimal(parts.group(1).replace(',', '.')).multiply(BigDecimal.valueOf(2));
    return twice.toPlainString() + " " + parts.group(2);
  }

  /** A torque that the first wrench reaches. */
  private static String torque(Draft draft) {
    String least =
        draft.given().stream()
            .filter(one -> one.wanted() == Wanted.TOOL_LEAST)
            .findFirst()
            .orElseThrow()
            .text();
    return least + " ± 1 %";
  }
}
