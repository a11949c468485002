package org.undercall.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleSupplier;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.IntentKind;
import org.undercall.listen.SoundEar;
import org.undercall.port.Display;
import org.undercall.port.Ear;
import org.undercall.port.Heard;
import org.undercall.port.Voice;
import org.undercall.session.TypedTechnician;

/**
 * An ear that types until the session waits for what it should, then hears noise for a time; and a
 * display that counts what the session made of the noise.
 */
final class NoisyWork implements Ear, Display {
  /** What closes, confirms or releases something, or ends the work. */
  private static final Set<EventKind> CLOSING =
      Set.of(
          EventKind.CAUTIONS_UNDERSTOOD,
          EventKind.STEP_CLOSED,
          EventKind.WORK_DONE,
          EventKind.CHECK_ANSWERED,
          EventKind.STAGE_CLOSED,
          EventKind.MEASURED,
          EventKind.RIDE_HEIGHT_NOTED,
          EventKind.MARKING_NOTED,
          EventKind.NEW_HARDWARE_FITTED,
          EventKind.LOAD_CONFIRMED,
          EventKind.HANDED_OVER,
          EventKind.SESSION_ENDED);

  /** What leaves the record of the work as it was. */
  private static final Set<EventKind> HARMLESS =
      Set.of(
          EventKind.ASKED,
          EventKind.NOT_NOW,
          EventKind.NOT_UNDERSTOOD,
          EventKind.HEARING_REMARKED,
          EventKind.VALUE_REFUSED,
          EventKind.CLOSE_REFUSED,
          EventKind.LOAD_REFUSED,
          EventKind.MARKING_REFUSED);

  /** Says nothing. */
  static final Voice NO_VOICE =
      new Voice() {
        @Override
        public void say(String words) {}

        @Override
        public void close() {}
      };

  private static final String UNCLEAR = "unclear";

  private final Ear ear;
  private final double until;
  private final DoubleSupplier seconds;
  private final Phase phase;
  private final TypedTechnician technician = new TypedTechnician();
  private final List<String> believed = new ArrayList<>();
  private Optional<Session> session = Optional.empty();
  private boolean settled;
  private int heard;
  private int changing;
  private int closing;

  NoisyWork(SoundEar ear, Phase phase, double until) {
    this.ear = ear;
    this.seconds = ear::seconds;
    this.phase = phase;
    this.until = until;
  }

  /** Whether the session came to the phase. */
  boolean settled() {
    return settled;
  }

  /** How many phrases were heard in the noise, believed or not. */
  int heard() {
    return heard;
  }

  /** How many of them changed what is recorded of the work. */
  int changing() {
    return changing;
  }

  /** How many of them closed, confirmed or released something, or ended the work. */
  int closing() {
    return closing;
  }

  /** The phrases that were taken for one of the phase. */
  List<String> believed() {
    return believed;
  }

  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    Session now = session.orElseThrow();
    settled |= now.phase() == phase;
    if (!settled) {
      return Optional.of(Heard.typed(technician.says(now)));
    }
    if (seconds.getAsDouble() >= until) {
      throw new EndOfInput();
    }
    long left = (long) (1000 * (until - seconds.getAsDouble()));
    return ear.next(allowed, Math.max(1, Math.min(patienceMillis, left)));
  }

  @Override
  public void forget() {
    ear.forget();
  }

  @Override
  public void earlier(Session now, List<Recorded> decisions) {
    session = Optional.of(now);
  }

  @Override
  public void recorded(Session now, Recorded decision) {
    session = Optional.of(now);
    if (!settled || decision.heard().isEmpty()) {
      return;
    }
    heard++;
    Recorded.Heard phrase = decision.heard().get();
    if (!phrase.intent().equals(UNCLEAR)) {
      believed.add(phrase.intent() + " \"" + phrase.text() + "\" " + phrase.confidence());
    }
    changing += decision.events().stream().allMatch(e -> isOne(HARMLESS, e)) ? 0 : 1;
    closing += decision.events().stream().anyMatch(e -> isOne(CLOSING, e)) ? 1 : 0;
  }

  private static boolean isOne(Set<EventKind> kinds, SessionEvent event) {
    return kinds.contains(EventKind.of(event));
  }

  @Override
  public void said(String words, Moment at) {}

  @Override
  public void close() {}
}
