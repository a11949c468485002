package org.undercall.core.review;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Again;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.JobField;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Vin;

/** Reads a log once for what was told of the car, and how. */
final class ToldReader {
  private final List<String> again;
  private String registration = "";
  private String vin = "";
  private String odometer = "";
  private Optional<SessionEvent.VisitBegun> visit = Optional.empty();
  private final Set<String> moved = new LinkedHashSet<>();
  private Runnable takeBack = () -> {};

  ToldReader(Optional<Walk> walk) {
    again =
        walk.map(Walk::procedure).map(Again::items).orElse(List.of()).stream()
            .map(item -> new StepRef(item.head().id(), Side.CAR).toString())
            .toList();
  }

  void read(Recorded decision) {
    decision.events().forEach(this::read);
  }

  private void read(SessionEvent event) {
    if (event instanceof SessionEvent.SessionStarted e) {
      registration = e.registration().orElse("");
      vin = e.vin().orElse("");
      odometer = e.odometer().map(km -> km.amount().toPlainString()).orElse("");
    } else if (event instanceof SessionEvent.VisitBegun e) {
      visit = Optional.of(e);
    } else if (event instanceof SessionEvent.JobNoted e) {
      keep();
      registration = e.field() == JobField.REGISTRATION ? e.text() : registration;
      vin = e.field() == JobField.VIN ? Vin.joined(vin, e.text()) : vin;
      odometer = e.field() == JobField.ODOMETER ? e.text() : odometer;
    } else if (event instanceof SessionEvent.SayingTakenBack e
        && e.what().equals(EventKind.JOB_NOTED.name())) {
      takeBack.run();
    } else if (visit.isPresent() && event instanceof SessionEvent.CheckAnswered e && !e.passed()) {
      moved.add(e.step().toString());
    }
  }

  /** What was told last may be taken back. */
  private void keep() {
    String plate = registration;
    String number = vin;
    String km = odometer;
    takeBack =
        () -> {
          registration = plate;
          vin = number;
          odometer = km;
        };
  }

  Facts.Told told() {
    return new Facts.Told(
        registration,
        vin,
        odometer,
        visit.map(SessionEvent.VisitBegun::session).orElse(""),
        visit.map(SessionEvent.VisitBegun::log).orElse(""),
        List.copyOf(moved),
        again);
  }
}
