package org.undercall.core.decision;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.Wheels;
import org.undercall.core.term.JobField;
import org.undercall.core.term.StepRef;

/**
 * What {@link Promises} keeps of who works and who saw it.
 *
 * @param technician who works
 * @param before who did before something of the job was told last
 * @param handed whether the work was handed over and nobody has taken it yet
 * @param apprentice whose work is an apprentice's
 * @param heard who waits to be read back
 * @param hands who worked on each step since it was loose
 * @param done the steps whose work is done and was not undone since
 * @param seen who saw each step since it was opened last
 */
record WitnessPromises(
    String technician,
    String before,
    boolean handed,
    Optional<String> apprentice,
    Optional<SessionEvent.WitnessCalled> heard,
    Map<StepRef, Set<String>> hands,
    Set<StepRef> done,
    Map<StepRef, String> seen) {
  static final WitnessPromises START =
      new WitnessPromises(
          "", "", false, Optional.empty(), Optional.empty(), Map.of(), Set.of(), Map.of());

  /** The same with nobody known to have worked on anything. */
  WitnessPromises withoutHands() {
    return new WitnessPromises(technician, before, handed, apprentice, heard, Map.of(), done, seen);
  }

  /** Whether a step must be seen by a second person. */
  boolean asks(Walk.Place place) {
    boolean moves =
        place.step().head().bearing().car() != Bearing.Lift.LEFT_AS_IT_IS
            || (place.step() instanceof Step.Do work && work.wheels() != Wheels.LEFT_AS_THEY_ARE);
    return place.step().head().witness()
        || (place.step() instanceof Step.Fasten
            && !moves
            && apprentice.filter(technician::equals).isPresent());
  }

  void check(Walk walk, Intent intent, SessionEvent event) {
    if (event instanceof SessionEvent.WitnessCalled e) {
      Promises.require(
          intent instanceof Intent.OfWitness of && names(of.name(), e.witness()),
          "a witness as he was named",
          event);
      requireAnother(e.step(), e.witness(), event);
    } else if (event instanceof SessionEvent.Witnessed e) {
      Promises.require(
          intent.kind() == IntentKind.WITNESSED, "a witness confirms by his own phrase", event);
      boolean same =
          heard
              .filter(h -> h.step().equals(e.step()) && h.witness().equals(e.witness()))
              .isPresent();
      Promises.require(
          same && names(((Intent.OfWitness) intent).name(), e.witness()),
          "a witness confirms with the name that was read back",
          event);
      requireAnother(e.step(), e.witness(), event);
    } else if (event instanceof SessionEvent.StepClosed e) {
      Walk.Place place = walk.places().get(walk.indexOf(e.step()));
      boolean lacks = asks(place) && !seen.containsKey(e.step());
      Promises.require(!lacks, "a witness saw it before it closes", event);
    }
  }

  private void requireAnother(StepRef step, String witness, SessionEvent event) {
    boolean worked =
        Stream.concat(Stream.of(technician), hands.getOrDefault(step, Set.of()).stream())
            .anyMatch(hand -> hand.equals(witness) || names(hand, witness));
    Promises.require(!worked && !technician.isEmpty(), "a witness is another person", event);
  }

  /** Whether what was spelled is a name, a word of it, or its initials. */
  private static boolean names(String spelled, String name) {
    String whole = name.replace(" ", "").toUpperCase(java.util.Locale.ROOT);
    String initials =
        List.of(name.split(" ", -1)).stream()
            .map(word -> word.substring(0, Math.min(1, word.length())))
            .collect(Collectors.joining());
    boolean word =
        List.of(name.toUpperCase(java.util.Locale.ROOT).split(" ", -1)).contains(spelled);
    return spelled.equals(whole) || spelled.equals(initials) || word;
  }

  WitnessPromises after(SessionEvent event) {
    WitnessPromises who = who(event);
    Optional<SessionEvent.WitnessCalled> next =
        event instanceof SessionEvent.WitnessCalled e
            ? Optional.of(e)
            : event instanceof SessionEvent.ReadBackDropped
                    || event instanceof SessionEvent.Witnessed
                ? Optional.empty()
                : heard;
    Map<StepRef, Set<String>> worked = new HashMap<>(hands);
    Set<StepRef> finished = new HashSet<>(done);
    Map<StepRef, String> saw = new HashMap<>(seen);
    if (event instanceof SessionEvent.StageClosed e) {
      work(worked, e.step());
    } else if (event instanceof SessionEvent.PositionsClosed e) {
      work(worked, e.step());
    } else if (event instanceof SessionEvent.WitnessAsked e) {
      work(worked, e.step());
      finished.add(e.step());
      saw.remove(e.step());
    } else if (event instanceof SessionEvent.Witnessed e) {
      saw.put(e.step(), e.witness());
    }
    opened(event)
        .ifPresent(
            step -> {
              finished.remove(step);
              saw.remove(step);
            });
    loose(event).ifPresent(worked::remove);
    return new WitnessPromises(
        who.technician,
        who.before,
        who.handed,
        who.apprentice,
        next,
        Map.copyOf(worked),
        Set.copyOf(finished),
        Map.copyOf(saw));
  }

  private void work(Map<StepRef, Set<String>> worked, StepRef step) {
    Set<String> more = new HashSet<>(worked.getOrDefault(step, Set.of()));
    more.add(technician);
    worked.put(step, Set.copyOf(more));
  }

  private WitnessPromises who(SessionEvent event) {
    if (event instanceof SessionEvent.SessionStarted e) {
      return with(e.technician().orElse(technician), technician, false);
    }
    if (event instanceof SessionEvent.JobNoted e && !handed) {
      return with(e.field() == JobField.TECHNICIAN ? e.text() : technician, technician, false);
    }
    if (event instanceof SessionEvent.SayingTakenBack e
        && e.what().equals(EventKind.JOB_NOTED.name())
        && !handed) {
      return with(before, before, false);
    }
    if (event instanceof SessionEvent.WorkTakenOver e) {
      return with(e.technician(), technician, false);
    }
    if (event instanceof SessionEvent.ApprenticeWorks e) {
      return new WitnessPromises(
          technician, before, handed, Optional.of(e.apprentice()), heard, hands, done, seen);
    }
    boolean over = event instanceof SessionEvent.WorkHandedOver;
    boolean on = event instanceof SessionEvent.WorkResumed;
    return over || on ? with(technician, before, over) : this;
  }

  private WitnessPromises with(String who, String earlier, boolean over) {
    return new WitnessPromises(who, earlier, over, apprentice, heard, hands, done, seen);
  }

  /** The step that an event opens again, in whatever way. */
  private static Optional<StepRef> opened(SessionEvent event) {
    if (event instanceof SessionEvent.StageTakenBack e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.PositionsTakenBack e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.ReopenedTight e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.ClosingLapsed e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.TroubleSettled e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.SayingTakenBack e
        && e.what().equals(EventKind.WITNESS_ASKED.name())) {
      return Optional.of(e.step());
    }
    return loose(event);
  }

  /** The step that an event makes loose or undone, so that whoever worked on it did nothing. */
  private static Optional<StepRef> loose(SessionEvent event) {
    if (event instanceof SessionEvent.StepReopened e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.ClosingTakenBack e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.ReuseNoted e) {
      return Optional.of(e.step());
    }
    if (event instanceof SessionEvent.Loosened e) {
      return Optional.of(e.step());
    }
    return event instanceof SessionEvent.NewHardwareFitted e
        ? Optional.of(e.step())
        : Optional.empty();
  }
}
