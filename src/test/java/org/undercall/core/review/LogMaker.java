package org.undercall.core.review;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Measure;
import org.undercall.core.term.StepRef;

/** Makes logs by hand: each decision at a second since the start. */
public final class LogMaker {
  /** When second 0 is. */
  public static final OffsetDateTime START = OffsetDateTime.parse("2026-11-25T09:00:00+01:00");

  private static final int PACE = 10;

  private final List<Recorded> log = new ArrayList<>();
  private long runOffset;
  private Duration wallShift = Duration.ZERO;

  /** From here on the program runs anew: its steady clock shows 5 s at this second. */
  public LogMaker newRunAt(long second) {
    runOffset = second - 5;
    return this;
  }

  /** From here on the wall clock is set differently. */
  public LogMaker wallClockSet(Duration shift) {
    wallShift = shift;
    return this;
  }

  /** A decision of the program itself, or of a phrase that does not matter. */
  public LogMaker at(long second, SessionEvent... events) {
    return heard(second, Optional.empty(), events);
  }

  /** A decision on a phrase. */
  public LogMaker heard(long second, String text, SessionEvent... events) {
    return heard(second, Optional.of(new Recorded.Heard(text, "x", 1, "spoken")), events);
  }

  /** A decision on a phrase whose sound was kept. */
  public LogMaker clipped(long second, SessionEvent... events) {
    String file = String.format(java.util.Locale.ROOT, "%06d.flac", log.size() + 1);
    Recorded.Heard heard =
        new Recorded.Heard("x", "x", 1, "spoken").with(Optional.of(new Clip(file, "0".repeat(64))));
    return heard(second, Optional.of(heard), events);
  }

  private LogMaker heard(long second, Optional<Recorded.Heard> heard, SessionEvent... events) {
    Moment moment =
        new Moment(START.plusSeconds(second).plus(wallShift), 1000 * (second - runOffset));
    log.add(new Recorded(log.size() + 1L, moment, heard, List.of(events), ""));
    return this;
  }

  /** The decisions made so far. */
  public List<Recorded> log() {
    return List.copyOf(log);
  }

  /** A session in which every step of any walk is done as it should be. */
  public static List<Recorded> allDone(Walk walk, String sha256) {
    LogMaker maker = new LogMaker();
    var about = walk.procedure().about();
    maker.at(0, new SessionEvent.SessionStarted(about.title(), about.revision(), sha256, "0.1.0"));
    maker.at(PACE, new SessionEvent.CautionsUnderstood());
    long second = 2 * PACE;
    for (Walk.Place place : walk.places()) {
      List<SessionEvent> events = new ArrayList<>();
      events.add(new SessionEvent.StepEntered(place.ref()));
      addWork(events, place.ref(), place.step());
      events.add(new SessionEvent.StepClosed(place.ref()));
      for (SessionEvent event : events) {
        maker.at(second, event);
        second += PACE;
      }
    }
    return maker.at(second, new SessionEvent.SessionEnded(true, 0)).log();
  }

  private static void addWork(List<SessionEvent> events, StepRef ref, Step step) {
    if (step instanceof Step.Do work && work.check().isPresent()) {
      events.add(new SessionEvent.WorkDone(ref));
      events.add(new SessionEvent.CheckAnswered(ref, true));
    } else if (step instanceof Step.Measure measure) {
      var amount = measure.limits().least().or(() -> measure.limits().most()).orElseThrow();
      events.add(new SessionEvent.Measured(ref, new Measure(amount, measure.unit()), true));
    } else if (step instanceof Step.Load load) {
      events.add(confirmed(ref, load.condition()));
    } else if (step instanceof Step.HandOver handOver) {
      events.add(new SessionEvent.HandedOver(ref, handOver.due()));
    } else if (step instanceof Step.Fasten fasten) {
      addFastening(events, ref, fasten.fastener());
    }
  }

  private static void addFastening(List<SessionEvent> events, StepRef ref, Fastener fastener) {
    events.add(new SessionEvent.NewHardwareFitted(ref));
    var variant = fastener.variants().get(0);
    variant.marking().ifPresent(m -> events.add(new SessionEvent.MarkingNoted(ref, m)));
    events.add(confirmed(ref, fastener.needs()));
    int number = 1;
    for (Stage stage : variant.stages()) {
      events.add(new SessionEvent.ValueCalled(ref, number, stage.amount()));
      events.add(new SessionEvent.StageClosed(ref, number, stage.amount().toPlainString()));
      number++;
    }
  }

  private static SessionEvent confirmed(StepRef ref, LoadCondition condition) {
    LoadProof proof =
        condition == LoadCondition.FULL_DROOP
            ? LoadProof.SUSPENSION_HANGS_FREE
            : LoadProof.WHEELS_CARRY_THE_CAR;
    return new SessionEvent.LoadConfirmed(ref.side(), condition, proof, Optional.empty());
  }

  /** The log with a decision for which a clip was kept. */
  public static List<Recorded> withClip(List<Recorded> log, long seq, Clip clip) {
    return log.stream().map(one -> one.seq() == seq ? withClip(one, clip) : one).toList();
  }

  private static Recorded withClip(Recorded one, Clip clip) {
    Recorded.Heard heard =
        new Recorded.Heard("one seven five", "value-called", 0.9, "spoken", Optional.of(clip));
    return new Recorded(one.seq(), one.at(), Optional.of(heard), one.events(), one.said());
  }
}
