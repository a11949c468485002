package org.undercall.core.decision;

import java.time.Duration;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;

/**
 * A program with one mistake in it, made of the real one.
 *
 * @param mistake what it does wrong, in words
 * @param promise the promise that must be found broken
 * @param program the real program, twisted in one place
 */
record SeededBug(String mistake, String promise, Program program) {

  /** What a program decides and keeps; as it stands, the real one. */
  interface Program {
    default Decision decide(Session session, Intent intent, Moment now) {
      return Decider.decide(session, intent, now);
    }

    default Decision takeUp(Session session, Duration away) {
      return Decider.takeUp(session, "test", away);
    }

    default Session after(Session session, SessionEvent event) {
      return session.after(event);
    }
  }

  /** It takes the session for another one. */
  static Program believing(BiFunction<Session, Intent, Session> belief) {
    return new Program() {
      @Override
      public Decision decide(Session session, Intent intent, Moment now) {
        return Decider.decide(belief.apply(session, intent), intent, now);
      }
    };
  }

  /** It takes what was said for something else. */
  static Program hearing(BiFunction<Session, Intent, Intent> ear) {
    return new Program() {
      @Override
      public Decision decide(Session session, Intent intent, Moment now) {
        return Decider.decide(session, ear.apply(session, intent), now);
      }
    };
  }

  /** It records other events than it should, and replies as it should. */
  static Program recording(UnaryOperator<List<SessionEvent>> pen) {
    return new Program() {
      @Override
      public Decision decide(Session session, Intent intent, Moment now) {
        Decision right = Decider.decide(session, intent, now);
        return new Decision(pen.apply(right.events()), right.reply(), right.outcome());
      }
    };
  }

  /** It never records events of one type. */
  static Program dropping(Class<? extends SessionEvent> type) {
    return recording(events -> events.stream().filter(e -> !type.isInstance(e)).toList());
  }

  /** It puts another event in the place of each one. */
  static Program replacing(UnaryOperator<SessionEvent> pen) {
    return recording(events -> events.stream().map(pen).toList());
  }

  /** It keeps something else of an event than it should. */
  static Program keeping(BiFunction<Session, SessionEvent, Session> memory) {
    return new Program() {
      @Override
      public Session after(Session session, SessionEvent event) {
        return memory.apply(session, event);
      }
    };
  }
}
