package org.undercall.core.difference;

import org.undercall.core.procedure.Bearing;
import org.undercall.core.procedure.Step;

/** The fields of a step. */
final class StepFacts {
  private StepFacts() {}

  /**
   * All fields of a step.
   *
   * @param single whether its stages are compared without regard to the class of their variant
   */
  static Facts of(Step step, boolean single) {
    Facts facts = new Facts();
    if (step instanceof Step.Fasten fasten) {
      FastenerFacts.add(facts, fasten.fastener(), single);
    } else {
      other(facts, step);
    }
    head(facts, step.head());
    return facts;
  }

  static String kind(Step step) {
    if (step instanceof Step.Fasten) {
      return "fasten";
    }
    if (step instanceof Step.Do) {
      return "do";
    }
    if (step instanceof Step.Measure) {
      return "measure";
    }
    if (step instanceof Step.Wait) {
      return "wait";
    }
    return step instanceof Step.Load ? "load" : "hand-over";
  }

  private static void head(Facts facts, Step.Head head) {
    Bearing bearing = head.bearing();
    facts
        .put(Weight.TIGHTENS, "changes the load", head.changesLoad())
        .put(Weight.TIGHTENS, "after", bearing.after())
        .put(Weight.TIGHTENS, "undoes", bearing.undoes())
        .put(Weight.WORK, "car", bearing.car())
        .put(Weight.WORK, "corner", bearing.corner().map(side -> side.words()))
        .put(Weight.WORK, "road test", bearing.roadTest())
        .put(Weight.WORK, "witness", head.witness())
        .put(Weight.WORK, "cautions", head.cautions())
        .put(Weight.TEXT, "title", head.title())
        .put(Weight.TEXT, "brief title", head.brief())
        .put(Weight.TEXT, "why", head.why())
        .put(Weight.TEXT, "id", head.id());
  }

  private static void other(Facts facts, Step step) {
    if (step instanceof Step.Do work) {
      facts.put(Weight.WORK, "check", work.check()).put(Weight.WORK, "wheels", work.wheels());
    } else if (step instanceof Step.Measure measure) {
      facts
          .put(Weight.WORK, "unit", measure.unit().symbol())
          .amount(Weight.WORK, "least", measure.limits().least(), "")
          .amount(Weight.WORK, "most", measure.limits().most(), "")
          .put(Weight.WORK, "may be outside", measure.limits().mayBeOutside())
          .put(Weight.WORK, "notes the ride height", measure.notesRideHeight());
    } else if (step instanceof Step.Wait wait) {
      facts.put(Weight.WORK, "time", Facts.time(wait.time()));
    } else if (step instanceof Step.Load load) {
      facts
          .put(Weight.TIGHTENS, "load condition", load.condition())
          .put(Weight.TIGHTENS, "by wheels", load.byWheels());
    } else if (step instanceof Step.HandOver later) {
      facts.put(Weight.WORK, "due", later.due());
    }
  }
}
