package org.undercall.adapter.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TimerName;

/**
 * What happened in a session, in the order of time: when each step was at hand, and what was
 * refused, loaded, timed and noted.
 *
 * @param bars when steps were at hand
 * @param marks what else happened
 */
record Course(List<Bar> bars, List<Mark> marks) {

  /** A time during which a step was at hand. */
  record Bar(StepRef step, OffsetDateTime from, OffsetDateTime to) {}

  /** What a mark is for; each has a letter and a shape of its own. */
  enum Kind {
    REFUSAL("R", "refused"),
    LOAD("L", "load condition confirmed"),
    UNLOADED("X", "load confirmations cancelled"),
    TIMER("T", "timer or clock"),
    NOTE("N", "note, or height noted"),
    CLOSED("C", "step closed");

    private final String letter;
    private final String meaning;

    Kind(String letter, String meaning) {
      this.letter = letter;
      this.meaning = meaning;
    }

    String letter() {
      return letter;
    }

    String meaning() {
      return meaning;
    }
  }

  /**
   * Something that happened.
   *
   * @param event what was recorded
   * @param at when
   * @param kind of what kind
   * @param step the step it is about, if any
   * @param side the side it is about if it is about no step; the car if about both
   * @param words what it was
   */
  record Mark(
      SessionEvent event,
      OffsetDateTime at,
      Kind kind,
      Optional<StepRef> step,
      Side side,
      String words) {}

  Course {
    bars = List.copyOf(bars);
    marks = List.copyOf(marks);
  }

  static Course of(Dossier dossier) {
    Review review = dossier.review();
    List<Mark> marks = new ArrayList<>();
    for (Review.Refusal refusal : review.remarks().refusals()) {
      String heard = refusal.heard().map(words -> "; heard: " + words).orElse("");
      String words = EventWords.refusal(refusal.event()) + heard;
      marks.add(
          new Mark(refusal.event(), refusal.at(), Kind.REFUSAL, refusal.step(), Side.CAR, words));
    }
    review.remarks().loads().forEach(load -> marks.add(load(load)));
    for (var note : review.remarks().notes()) {
      Optional<StepRef> step = Optional.of(note.event().step());
      marks.add(new Mark(note.event(), note.at(), Kind.NOTE, step, Side.CAR, note.event().text()));
    }
    addTimers(marks, review.remarks().timers());
    addClosings(marks, dossier.decisions());
    IdentityHashMap<SessionEvent, Integer> order = order(dossier.decisions());
    marks.sort(
        Comparator.comparing(Mark::at).thenComparing(mark -> order.getOrDefault(mark.event(), 0)));
    return new Course(bars(dossier.decisions()), marks);
  }

  /** The place of each event in the log: what was recorded together has one time. */
  private static IdentityHashMap<SessionEvent, Integer> order(List<Recorded> decisions) {
    IdentityHashMap<SessionEvent, Integer> order = new IdentityHashMap<>();
    decisions.forEach(d -> d.events().forEach(event -> order.put(event, order.size())));
    return order;
  }

  private static Mark load(Review.Timed<SessionEvent> load) {
    Side side = Side.CAR;
    Kind kind = Kind.UNLOADED;
    if (load.event() instanceof SessionEvent.LoadConfirmed e) {
      side = e.side();
      kind = Kind.LOAD;
    } else if (load.event() instanceof SessionEvent.RideHeightNoted e) {
      side = e.side();
      kind = Kind.NOTE;
    }
    return new Mark(
        load.event(), load.at(), kind, Optional.empty(), side, EventWords.load(load.event()));
  }

  private static void addTimers(List<Mark> marks, List<Review.Timed<SessionEvent>> timers) {
    Map<TimerName, StepRef> named = new EnumMap<>(TimerName.class);
    for (Review.Timed<SessionEvent> timer : timers) {
      Optional<StepRef> step = Optional.empty();
      if (timer.event() instanceof SessionEvent.NamedTimerStarted e) {
        named.put(e.name(), e.step());
        step = Optional.of(e.step());
      } else if (timer.event() instanceof SessionEvent.NamedTimerEnded e) {
        step = Optional.ofNullable(named.get(e.name()));
      } else if (timer.event() instanceof SessionEvent.NamedTimerCancelled e) {
        step = Optional.ofNullable(named.get(e.name()));
      } else if (timer.event() instanceof SessionEvent.TimerStarted e) {
        step = Optional.of(e.step());
      } else if (timer.event() instanceof SessionEvent.TimerEnded e) {
        step = Optional.of(e.step());
      } else if (timer.event() instanceof SessionEvent.TimerCancelled e) {
        step = Optional.of(e.step());
      }
      marks.add(
          new Mark(
              timer.event(), timer.at(), Kind.TIMER, step, Side.CAR, TimerWords.of(timer.event())));
    }
  }

  private static void addClosings(List<Mark> marks, List<Recorded> decisions) {
    for (Recorded decision : decisions) {
      for (SessionEvent event : decision.events()) {
        if (event instanceof SessionEvent.StepClosed e) {
          Optional<StepRef> step = Optional.of(e.step());
          marks.add(new Mark(event, decision.at().wall(), Kind.CLOSED, step, Side.CAR, "closed"));
        }
      }
    }
  }

  private static List<Bar> bars(List<Recorded> decisions) {
    List<Bar> bars = new ArrayList<>();
    Optional<StepRef> atHand = Optional.empty();
    OffsetDateTime since = decisions.get(0).at().wall();
    OffsetDateTime last = since;
    for (Recorded decision : decisions) {
      last = decision.at().wall();
      for (SessionEvent event : decision.events()) {
        boolean entered = event instanceof SessionEvent.StepEntered;
        if (entered || event instanceof SessionEvent.SessionEnded) {
          add(bars, atHand, since, last);
          since = last;
          atHand = Optional.empty();
          if (event instanceof SessionEvent.StepEntered e) {
            atHand = Optional.of(e.step());
          }
        }
      }
    }
    add(bars, atHand, since, last);
    return bars;
  }

  private static void add(
      List<Bar> bars, Optional<StepRef> step, OffsetDateTime from, OffsetDateTime to) {
    step.ifPresent(ref -> bars.add(new Bar(ref, from, to.isBefore(from) ? from : to)));
  }

  /** When it began and ended, by the wall clock: the earliest and the latest time in it. */
  OffsetDateTime[] ends(Review.Head head) {
    OffsetDateTime from = head.started();
    OffsetDateTime to = head.last();
    for (Mark mark : marks) {
      from = mark.at().isBefore(from) ? mark.at() : from;
      to = mark.at().isAfter(to) ? mark.at() : to;
    }
    return new OffsetDateTime[] {from, to};
  }

  /** Whether a step never was at hand. */
  boolean untouched(StepReview step) {
    return bars.stream().noneMatch(bar -> bar.step().equals(step.place().ref()));
  }
}
