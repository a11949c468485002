package org.undercall.core.review;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Job;
import org.undercall.core.term.JobField;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Vin;

/** Reads a log once, from the first decision to the last. */
final class ReviewReader {
  private final Walk walk;
  private final Recorded first;
  private final Course course;
  private final Map<StepRef, StepTrace> steps = new LinkedHashMap<>();
  private final RemarkReader remarks = new RemarkReader();
  private final LoadTrace loads = new LoadTrace();
  private final WrenchTrace wrench;
  private final ClipTrace clips = new ClipTrace();
  private final HasteTrace haste;
  private String version = "";
  private Job job = Job.NOT_GIVEN;
  private Job before = Job.NOT_GIVEN;
  private String vin = "";

  /** Who works; the job names everybody who did. */
  private Optional<String> technician = Optional.empty();

  private boolean handed;
  private Optional<SessionEvent.VisitBegun> visit = Optional.empty();
  private Optional<String> apprentice = Optional.empty();

  ReviewReader(Walk walk, Recorded first) {
    this.walk = walk;
    this.first = first;
    this.course = new Course(Optional.of(walk), first);
    this.wrench = new WrenchTrace(walk.procedure().wrenches());
    this.haste = new HasteTrace(walk);
    walk.places().forEach(place -> steps.put(place.ref(), new StepTrace(place)));
  }

  void read(Recorded decision) {
    course.pass(decision);
    clips.read(decision);
    for (SessionEvent event : decision.events()) {
      Optional<String> clip = clips.of(event);
      course.read(event);
      haste.read(event, course.now(), course.atHand());
      wrench.read(event);
      if (event instanceof SessionEvent.SessionStarted e) {
        version = e.version();
        job = job(e);
        technician = e.technician();
      } else if (event instanceof SessionEvent.VisitBegun e) {
        visit = Optional.of(e);
      } else if (event instanceof SessionEvent.ApprenticeWorks e) {
        apprentice = Optional.of(e.apprentice());
      } else if (event instanceof SessionEvent.WorkHandedOver) {
        handed = true;
      } else if (event instanceof SessionEvent.WorkResumed) {
        handed = false;
      } else if (event instanceof SessionEvent.WorkTakenOver e) {
        handed = false;
        technician = Optional.of(e.technician());
        job = takenOver(e.technician());
      } else if (handed && tellsJob(event)) {
        continue;
      } else if (event instanceof SessionEvent.JobNoted e) {
        vin = e.field() == JobField.VIN ? Vin.joined(vin, e.text()) : vin;
        before = job;
        job = with(e);
        technician = job.technician();
      } else if (event instanceof SessionEvent.SayingTakenBack e
          && e.what().equals(EventKind.JOB_NOTED.name())) {
        vin = "";
        job = before;
        technician = job.technician();
      }
      loads.read(event, course.now().at());
      StepEvents.stepOf(event)
          .map(steps::get)
          .ifPresent(
              trace -> {
                trace.keepEarlier(event, course.now(), decision);
                readStep(trace, event, clip);
              });
      remarks.read(event, decision, course.atHand()).ifPresent(this::noteRefusal);
    }
    haste.over();
  }

  /** Who takes over is told between the hand-over and the cautions, and counts only then. */
  private static boolean tellsJob(SessionEvent event) {
    return event instanceof SessionEvent.JobNoted
        || (event instanceof SessionEvent.SayingTakenBack e
            && e.what().equals(EventKind.JOB_NOTED.name()));
  }

  private Job takenOver(String name) {
    String all = job.technician().isEmpty() ? name : job.technician().get() + ", then " + name;
    return new Job(job.registration(), job.vin(), job.odometer(), job.number(), Optional.of(all));
  }

  /** A number that is no identification number is left out; the program writes none. */
  private static Job job(SessionEvent.SessionStarted e) {
    Optional<Vin> vin =
        e.vin().flatMap(text -> Vin.isOne(text) ? Optional.of(new Vin(text)) : Optional.empty());
    return new Job(e.registration(), vin, e.odometer(), e.jobNumber(), e.technician());
  }

  /** What was told by voice stands for what was given before; a VIN once it is whole. */
  private Job with(SessionEvent.JobNoted e) {
    Optional<String> text = Optional.of(e.text());
    Optional<Vin> whole = Optional.of(vin).filter(Vin::isOne).map(Vin::new);
    Optional<Measure> odometer =
        e.field() == JobField.ODOMETER
            ? text.map(km -> new Measure(new BigDecimal(km), MeasureUnit.KILOMETRE))
            : job.odometer();
    return new Job(
        e.field() == JobField.REGISTRATION ? text : job.registration(),
        whole.isPresent() ? whole : job.vin(),
        odometer,
        e.field() == JobField.JOB_NUMBER ? text : job.number(),
        e.field() == JobField.TECHNICIAN ? text : job.technician());
  }

  private void noteRefusal(Review.Refusal refusal) {
    refusal.step().map(steps::get).ifPresent(trace -> trace.refusals.add(refusal));
  }

  private void readStep(StepTrace trace, SessionEvent event, Optional<String> clip) {
    if (event instanceof SessionEvent.StepClosed e) {
      trace.closedBy = technician;
      trace.closedAt = Optional.of(course.now().at());
      trace.tightening.closed(
          loads.confirmation(e.step().side(), Doubts.needs(trace.place.step())));
    } else {
      trace.read(event, course.now(), clip, wrench);
    }
  }

  /** The job, with the apprentice named among those who worked. */
  private Job jobOfAll() {
    Optional<String> who =
        apprentice
            .map(name -> job.technician().map(t -> t + "; ").orElse("") + "apprentice " + name)
            .or(job::technician);
    return new Job(job.registration(), job.vin(), job.odometer(), job.number(), who);
  }

  Review review(List<ToolState> tools, Origin origin) {
    Reading last = course.now();
    return new Review(
        new Review.Head(
            walk.procedure().about(),
            version,
            first.at().wall(),
            last.at(),
            jobOfAll(),
            tools,
            visit),
        steps.values().stream()
            .map(trace -> trace.review(course.of(trace.place.ref()), last))
            .toList(),
        remarks.remarks(loads.notes(), haste.found()),
        course.totals(remarks.notUnderstood()),
        course.ending(),
        origin);
  }
}
