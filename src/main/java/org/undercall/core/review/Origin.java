package org.undercall.core.review;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.Occasion;

/**
 * What a session was begun for, and how its answers came.
 *
 * @param told as its first line has it; empty in logs of earlier versions
 * @param spoken phrases heard and understood
 * @param typed phrases on a keyboard or in the field of the board
 * @param pressed buttons of the board
 */
public record Origin(Optional<Occasion> told, int spoken, int typed, int pressed) {
  private static final String TYPED = "typed";
  private static final String PRESSED = "pressed";
  private static final int ALL = 100;

  /** The origin of a log. */
  public static Origin of(List<Recorded> log) {
    Optional<Occasion> told = Optional.empty();
    int spoken = 0;
    int typed = 0;
    int pressed = 0;
    for (Recorded decision : log) {
      told = told.or(() -> told(decision));
      if (isAnswer(decision)) {
        String how = decision.heard().orElseThrow().how();
        typed += how.equals(TYPED) ? 1 : 0;
        pressed += how.equals(PRESSED) ? 1 : 0;
        spoken += how.equals(TYPED) || how.equals(PRESSED) ? 0 : 1;
      }
    }
    return new Origin(told, spoken, typed, pressed);
  }

  private static Optional<Occasion> told(Recorded decision) {
    return decision.events().stream()
        .filter(SessionEvent.SessionStarted.class::isInstance)
        .findFirst()
        .flatMap(event -> ((SessionEvent.SessionStarted) event).occasion());
  }

  private static boolean isAnswer(Recorded decision) {
    return decision.heard().isPresent()
        && decision.events().stream().anyMatch(e -> !(e instanceof SessionEvent.NotUnderstood));
  }

  /**
   * What it was for. A log that does not tell it is that of a rehearsal if something was typed and
   * nothing spoken.
   */
  public Occasion occasion() {
    return told.orElse(spoken == 0 && typed > 0 ? Occasion.REHEARSAL : Occasion.WORK);
  }

  /** Whether it is a record of work. */
  public boolean isRecord() {
    return occasion() == Occasion.WORK;
  }

  /** All answers. */
  public int answers() {
    return spoken + typed + pressed;
  }

  /** The share of some answers in all, in whole percent, rounded down unless it is below one. */
  public int percent(int some) {
    return some == 0 ? 0 : Math.max(1, some * ALL / answers());
  }
}
