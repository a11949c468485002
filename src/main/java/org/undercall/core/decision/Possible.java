package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.JobField;
import org.undercall.core.term.Positions;
import org.undercall.core.term.ReuseBy;
import org.undercall.core.term.StepRef;

/**
 * What can be said of a session before an event, so that the event can follow it. Each answer is
 * empty if it holds, else what was expected in words for the message.
 */
record Possible(Session session) {

  /** The first of two conditions that does not hold. */
  static Optional<String> first(Optional<String> one, Optional<String> two) {
    return one.isPresent() ? one : two;
  }

  static Optional<String> when(boolean holds, String expected) {
    return holds ? Optional.empty() : Optional.of(expected);
  }

  Optional<String> known(StepRef step) {
    return when(session.walk().indexOf(step) >= 0, "a step of the procedure");
  }

  Optional<String> mode(Talk.Mode mode, String expected) {
    return when(session.talk().mode() == mode, expected);
  }

  /** The session has just begun. */
  Optional<String> justBegun() {
    boolean first = session.account().visit().isEmpty() && session.stopwatch().last().isEmpty();
    return when(first, "the first line, once");
  }

  Optional<String> working() {
    return mode(Talk.Mode.WORKING, "work that goes on, after \"cautions understood\"");
  }

  Optional<String> settled() {
    return first(
        working(), when(session.talk().pending().isEmpty(), "no read-back that is not answered"));
  }

  /** Work goes on, and it is about the step at hand, which is open and of this kind. */
  Optional<String> atHand(StepRef step, Class<? extends Step> kind) {
    return first(
        first(working(), when(step.equals(session.ref()), "the step at hand, " + session.ref())),
        first(
            when(!session.state().closed(), "a step that is not closed"),
            when(kind.isInstance(session.place().step()), "another kind of step")));
  }

  /** The same for a step of any kind. */
  Optional<String> atHand(StepRef step) {
    return atHand(step, Step.class);
  }

  /** The next stage of the fastener at hand, counted from 1. */
  Optional<String> nextStage(StepRef step, int stage) {
    return first(
        atHand(step, Step.Fasten.class), when(isNextStage(stage), "the stage that is next"));
  }

  /** A reading within the tolerance of the stage at hand, or just its value. */
  Optional<String> holds(BigDecimal value) {
    return when(
        stagesAtHand().isPresent()
            && session.stage().isReachedBy(value)
            && (FastenRules.isRead(session) || session.stage().amount().compareTo(value) == 0),
        "a reading within the tolerance, of an angle or at a wrench that is read, or the value");
  }

  /** Whether a step is a closed fastener that must cure. */
  boolean cures(StepRef step) {
    int index = session.walk().indexOf(step);
    return index >= 0
        && session.progress().states().get(index).closed()
        && TimerRules.cure(session, step).isPresent();
  }

  /** Nothing to be read back but what went wrong at this step. */
  Optional<String> settledFor(StepRef step) {
    boolean here =
        session.talk().pending().orElse(null) instanceof Pending.Wrong wrong
            && wrong.step().equals(step);
    return here ? working() : settled();
  }

  /** The step at hand, or the fastener whose torque gave a hint just now. */
  Optional<String> goesWrong(StepRef step) {
    boolean hinted = session.talk().hinted().filter(step::equals).isPresent();
    return hinted ? endedWithAngle(step) : atHand(step);
  }

  /** A closed fastener whose last stage is an angle. */
  Optional<String> endedWithAngle(StepRef step) {
    return when(
        FinalTorqueRules.angle(session, step).isPresent(),
        "a closed fastener that ends with an angle");
  }

  /** A fastener at hand that waits for hardware, and may be used again with this value. */
  Optional<String> permits(StepRef step, ReuseBy by, BigDecimal value) {
    boolean permitted =
        step.equals(session.ref())
            && Phase.ofStep(session) == Phase.HARDWARE
            && FastenRules.fastener(session)
                .part()
                .reuse()
                .filter(limit -> limit.by() == by && limit.permits(value))
                .isPresent();
    return when(permitted, "a fastener that may be used again with this value");
  }

  /** A fastener that waits to be run in by hand. */
  Optional<String> runsIn(StepRef step) {
    return when(
        step.equals(session.ref()) && Phase.ofStep(session) == Phase.BY_HAND,
        "a fastener that is to be run in by hand");
  }

  /** A fastener at hand whose run-down torque is to be called. */
  Optional<String> runsDown(StepRef step) {
    return when(
        step.equals(session.ref()) && Phase.ofStep(session) == Phase.RUN_DOWN,
        "a fastener whose run-down torque is to be called");
  }

  /** A wrench that the procedure lists. */
  Optional<String> listed(String wrench) {
    return when(
        session.walk().procedure().wrenches().called(wrench).isPresent(),
        "a wrench that the procedure lists");
  }

  /** Positions of the set at hand that are open. */
  Optional<String> open(Positions positions) {
    boolean ofSet =
        fastener()
            .filter(f -> f.set().several())
            .filter(
                f ->
                    session
                        .tightening()
                        .pass()
                        .left(f.set().sequence())
                        .containsAll(positions.numbers()))
            .isPresent();
    return when(ofSet, "positions of a set that are open");
  }

  /** Positions of the set at hand that were called, even while the work is held. */
  Optional<String> closedOfSet(StepRef step, int stage, Positions positions) {
    return when(
        step.equals(session.ref())
            && isNextStage(stage)
            && session.tightening().pass().closed().containsAll(positions.numbers()),
        "positions that were called before");
  }

  private boolean isNextStage(int stage) {
    int next = session.tightening().stagesClosed() + 1;
    return stage == next && stagesAtHand().filter(all -> next <= all.size()).isPresent();
  }

  Optional<String> calledBefore() {
    return when(session.tightening().called().isPresent(), "a value that was called before");
  }

  /** A tightening that is interrupted, by whatever moves the car even while the work is held. */
  Optional<String> begunBefore(StepRef step) {
    return when(
        session.tightening().begun() && step.equals(session.ref()) && !session.state().closed(),
        "a tightening at hand that was begun");
  }

  /** The marking is one of the fastener at hand. */
  Optional<String> hasMarking(HeadMarking marking) {
    return when(
        fastener()
            .filter(Fastener::dependsOnMarking)
            .flatMap(f -> f.stagesFor(Optional.of(marking)))
            .isPresent(),
        "a head marking of the fastener");
  }

  /** Everything the step at hand needs to be closed is there. */
  Optional<String> canClose() {
    if (session.state().wrong().isPresent()) {
      return Optional.of("what went wrong settled");
    }
    if (session.place().step() instanceof Step.Fasten) {
      int closed = session.tightening().stagesClosed();
      return when(
          stagesAtHand().filter(all -> all.size() == closed).isPresent(), "all stages closed");
    }
    return when(!session.state().workDone(), "the check question answered");
  }

  /** A step at hand whose work is done, or the one that a witness confirmed last. */
  Optional<String> doneOrSeen(StepRef step) {
    int index = session.walk().indexOf(step);
    boolean seen =
        index >= 0
            && session.progress().states().get(index).closed()
            && WitnessRules.watch(session, step).by().isPresent();
    return seen ? Optional.empty() : first(atHand(step), canClose());
  }

  /** Nobody waited for who should have seen the step at hand. */
  Optional<String> seen() {
    return when(!WitnessRules.lacks(session), "a witness");
  }

  /** A step at hand that waits for its witness. */
  Optional<String> waitsForWitness(StepRef step) {
    return first(
        atHand(step),
        when(Phase.ofStep(session) == Phase.WITNESS, "a step that waits for its witness"));
  }

  /** The witness who was named just now, and did not work on the step. */
  Optional<String> readBackTo(StepRef step, String witness) {
    return when(
        session.talk().pending().equals(Optional.of(new Pending.Seen(step, witness)))
            && WitnessRules.isAnother(session, witness),
        "the witness who was named, and did not work on it");
  }

  private Optional<List<Stage>> stagesAtHand() {
    return fastener().flatMap(f -> f.stagesFor(session.tightening().marking()));
  }

  private Optional<Fastener> fastener() {
    return session.place().step() instanceof Step.Fasten fasten
        ? Optional.of(fasten.fastener())
        : Optional.empty();
  }

  /** A step that was closed before. */
  Optional<String> closedBefore(StepRef step) {
    int index = session.walk().indexOf(step);
    return first(
        known(step),
        when(
            index >= 0 && session.progress().states().get(index).closed(),
            "a step that is closed"));
  }

  /** A stage of the step that was closed last. */
  Optional<String> stageClosed(StepRef step, int stage) {
    int index = session.walk().indexOf(step);
    return first(
        lastClosed(step),
        when(
            index >= 0
                && session.progress().states().get(index).tightening().stagesClosed() == stage,
            "the stage that was closed last"));
  }

  /** A fastener that was turned through an angle and may be used again. */
  Optional<String> mayBeTight(StepRef step) {
    return when(
        session.walk().indexOf(step) >= 0 && Applied.mayBeTight(session, step),
        "a fastener that was turned through an angle");
  }

  /** Closings of which it was asked whether they hold. */
  Optional<String> doubted() {
    return when(
        session.talk().pending().orElse(null) instanceof Pending.Later,
        "closings that were asked about");
  }

  /** An angle stage at hand that was broken off. */
  Optional<String> interrupted(StepRef step) {
    return first(
        atHand(step, Step.Fasten.class),
        when(
            session.tightening().interrupted() && session.atAngle(),
            "an angle stage that was broken off"));
  }

  Optional<String> lastClosed(StepRef step) {
    return first(
        known(step),
        when(
            session.progress().lastClosed().filter(step::equals).isPresent(),
            "what was closed last"));
  }

  Optional<String> runs(TimerKey key) {
    return when(session.timers().running().containsKey(key), "a timer that runs");
  }

  /** The job is told before the work; who takes it over names himself later. */
  Optional<String> tellsJob(JobField field) {
    Talk.Mode mode = session.talk().mode();
    boolean next = mode == Talk.Mode.HANDED && field == JobField.TECHNICIAN;
    return when(mode == Talk.Mode.BRIEFING || next, "a job that is told before the work");
  }

  /** Work that is held or was handed over. */
  Optional<String> rests() {
    return when(
        session.talk().mode() == Talk.Mode.HELD || session.talk().mode() == Talk.Mode.HANDED,
        "work that is held");
  }

  /** Work that can be handed over, with nothing waiting to be read back. */
  Optional<String> handsOver() {
    return first(
        when(
            session.talk().mode() == Talk.Mode.WORKING || session.talk().mode() == Talk.Mode.HELD,
            "work that goes on or is held"),
        when(session.talk().pending().isEmpty(), "no read-back that is not answered"));
  }

  /** Work that was handed over, and this one named himself. */
  Optional<String> takesOver(String technician) {
    return first(
        mode(Talk.Mode.HANDED, "work that was handed over"),
        when(
            session.account().next().filter(technician::equals).isPresent(),
            "a technician who named himself"));
  }
}
