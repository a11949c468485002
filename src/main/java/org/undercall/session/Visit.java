package org.undercall.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.RetorqueFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Again;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.review.FollowUp;
import org.undercall.core.review.Review;
import org.undercall.core.review.StepReview;
import org.undercall.core.term.Job;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Occasion;
import org.undercall.core.term.Vin;
import org.undercall.port.Fault;

/**
 * A visit to re-torque what another session tightened: the same car, and a short procedure of what
 * its hand-over items name.
 *
 * @param procedure what is to be tightened again
 * @param job the car of the other session, and what was given for the visit
 * @param begun the link to the other session
 * @param notes what is to be known before it begins, a line each
 */
public record Visit(
    LoadedProcedure procedure, Job job, SessionEvent.VisitBegun begun, List<String> notes) {
  public Visit {
    notes = List.copyOf(notes);
  }

  /**
   * A visit that goes on from a session.
   *
   * @param sessions the folder of all sessions
   * @param named a session folder, its name, {@code last}, or the registration or vehicle number of
   *     a car with just one session that can be gone on from
   * @param given which car, which job and who, as far as it was given for the visit
   * @param occasion what the visit itself is for: work never goes on from a rehearsal
   * @throws Fault LOG-010 if there is no such session, VIS if it cannot be gone on from
   */
  public static Visit of(Path sessions, String named, Job given, Occasion occasion) throws Fault {
    List<String> notes = new ArrayList<>();
    StoredSession first = origin(sessions, find(sessions, named), notes);
    String name = first.folder().name();
    Review review = first.review();
    requireReal(first, occasion);
    if (!review.complete()) {
      int open = review.open().size();
      String found = "a session that is not complete, steps open: " + open;
      throw fault(VisitCode.NOT_COMPLETE, name, found, "one that is; take it up with --resume");
    }
    Job car = review.head().job();
    requireSameCar(name, car, given);
    List<Again.Place> places = places(first.procedure(), notes);
    if (places.isEmpty()) {
      String why = notes.isEmpty() ? "no hand-over item that tells it" : String.join("; ", notes);
      throw fault(
          VisitCode.NOTHING_AGAIN, name, why, "an item such as \"Re-torque the wheel bolts\"");
    }
    SessionEvent.VisitBegun begun =
        new SessionEvent.VisitBegun(
            name, first.log().last(), car.registration(), car.vin().map(Vin::text), car.odometer());
    earlier(first).ifPresent(notes::add);
    Job job =
        new Job(
            given.registration().or(car::registration),
            given.vin().or(car::vin),
            given.odometer(),
            given.number(),
            given.technician());
    return new Visit(RetorqueFile.of(first.kept(), places, markings(review)), job, begun, notes);
  }

  /** Whether a log is that of a visit to the same session. */
  boolean isOf(List<Recorded> log) {
    return link(log).filter(other -> other.session().equals(begun.session())).isPresent();
  }

  private static Optional<SessionEvent.VisitBegun> link(List<Recorded> log) {
    return log.stream()
        .limit(1)
        .flatMap(decision -> decision.events().stream())
        .filter(SessionEvent.VisitBegun.class::isInstance)
        .map(SessionEvent.VisitBegun.class::cast)
        .findFirst();
  }

  /** A visit goes on from the session whose work it checks, never from another visit. */
  private static StoredSession origin(Path sessions, SessionFolder folder, List<String> notes)
      throws Fault {
    StoredSession found = StoredSession.read(folder);
    Optional<SessionEvent.VisitBegun> link = link(found.log().decisions());
    if (link.isEmpty()) {
      return found;
    }
    notes.add(folder.name() + " is a visit itself; this one goes on from " + link.get().session());
    return StoredSession.read(SessionFolder.find(sessions, link.get().session()));
  }

  private static SessionFolder find(Path sessions, String named) throws Fault {
    try {
      return SessionFolder.find(sessions, named);
    } catch (Fault none) {
      List<SessionFolder> ofCar = new ArrayList<>();
      for (SessionFolder folder : SessionFolder.all(sessions)) {
        if (isOfCar(folder, named)) {
          ofCar.add(folder);
        }
      }
      if (none.code() != LogCode.NO_SUCH_SESSION || ofCar.isEmpty()) {
        throw none;
      }
      if (ofCar.size() > 1) {
        String all = String.join(", ", ofCar.stream().map(SessionFolder::name).toList());
        throw fault(
            VisitCode.SEVERAL, named, ofCar.size() + " sessions: " + all, "one by its name");
      }
      return ofCar.get(0);
    }
  }

  /** Whether it is a session of that car that a visit can go on from; a damaged one is not. */
  private static boolean isOfCar(SessionFolder folder, String named) {
    try {
      StoredSession stored = StoredSession.read(folder);
      Review review = stored.review();
      Job job = review.head().job();
      boolean car =
          job.registration().filter(plate -> Job.samePlate(plate, named)).isPresent()
              || job.vin().filter(vin -> vin.text().equalsIgnoreCase(named)).isPresent();
      return car
          && review.complete()
          && review.head().visit().isEmpty()
          && !Again.items(stored.procedure()).isEmpty();
    } catch (Fault e) {
      return false;
    }
  }

  private static void requireReal(StoredSession first, Occasion occasion) throws Fault {
    Occasion was = first.review().origin().occasion();
    if (was != Occasion.WORK && occasion == Occasion.WORK) {
      throw fault(
          VisitCode.REHEARSED,
          first.folder().name(),
          "a " + Kebab.of(was),
          "a session that was worked; \"undercall rehearse --retorque\" tries one out");
    }
  }

  private static void requireSameCar(String name, Job car, Job given) throws Fault {
    Optional<String> plate =
        given
            .registration()
            .filter(r -> car.registration().filter(c -> !Job.samePlate(c, r)).isPresent());
    Optional<String> vin =
        given
            .vin()
            .map(Vin::text)
            .filter(v -> car.vin().filter(c -> !c.text().equals(v)).isPresent());
    if (plate.isPresent() || vin.isPresent()) {
      String expected =
          Stream.of(car.registration(), car.vin().map(Vin::text))
              .flatMap(Optional::stream)
              .reduce((a, b) -> a + ", " + b)
              .orElse("");
      throw fault(VisitCode.OTHER_CAR, name, plate.or(() -> vin).orElseThrow(), expected);
    }
  }

  /** The fasteners to tighten again; what cannot be by a torque alone is noted and left out. */
  private static List<Again.Place> places(Procedure procedure, List<String> notes) {
    List<Again.Place> places = new ArrayList<>();
    for (Step.HandOver item : Again.items(procedure)) {
      for (Again.Place place : Again.of(procedure, item)) {
        Optional<String> why = leftOut(place.step().fastener());
        if (why.isPresent()) {
          notes.add("left out: " + place.step().fastener().name() + ", " + why.get());
        } else if (!places.contains(place)) {
          places.add(place);
        }
      }
    }
    return places;
  }

  private static Optional<String> leftOut(Fastener fastener) {
    boolean angle =
        fastener.variants().stream()
            .map(Variant::stages)
            .anyMatch(stages -> !(stages.get(stages.size() - 1) instanceof Stage.TorqueStage));
    if (angle) {
      return Optional.of("tightened by an angle last, which no torque checks");
    }
    if (fastener.part().oneTimeUse()) {
      return Optional.of("hardware for one use");
    }
    boolean added =
        fastener.manner().runDown().filter(r -> r == Fastener.Manner.RunDown.ADDED).isPresent();
    return added ? Optional.of("its torque depends on how it ran down") : Optional.empty();
  }

  private static Map<String, Set<String>> markings(Review review) {
    Map<String, Set<String>> markings = new HashMap<>();
    for (StepReview step : review.steps()) {
      step.tightened()
          .marking()
          .ifPresent(
              m ->
                  markings
                      .computeIfAbsent(step.place().ref().id(), id -> new LinkedHashSet<>())
                      .add(m.text()));
    }
    return markings;
  }

  private static Optional<String> earlier(StoredSession first) {
    List<String> done = new ArrayList<>();
    for (FollowUp visit : FollowUps.of(first.folder(), first.log().last())) {
      done.add(visit.session() + (visit.done() ? "" : ", which does not count"));
    }
    return done.isEmpty()
        ? Optional.empty()
        : Optional.of("visited before: " + String.join("; ", done));
  }

  private static Fault fault(VisitCode code, String session, String found, String expected) {
    return new Fault(code, "session " + session, found, expected);
  }
}
