package org.undercall.core.review;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Positions;

/** What has been read so far about the tightening of one step. */
final class TighteningTrace {
  private final Step step;
  private final Map<Integer, StepReview.Called> called = new HashMap<>();
  private final Map<Integer, OffsetDateTime> closed = new HashMap<>();
  private final Map<Integer, List<StepReview.Position>> positions = new HashMap<>();
  private final Map<Integer, Set<String>> wrenches = new HashMap<>();
  private List<Integer> last = List.of();
  private Optional<HeadMarking> marking = Optional.empty();
  private Optional<OffsetDateTime> newHardware = Optional.empty();
  private Optional<Review.Timed<SessionEvent.LoadConfirmed>> load = Optional.empty();
  private Optional<BigDecimal> turned = Optional.empty();
  private Optional<Review.Timed<SessionEvent.FinalTorqueNoted>> finalTorque = Optional.empty();
  private Optional<SessionEvent.FinalTorqueJudged> judged = Optional.empty();
  private Optional<Review.Timed<SessionEvent.ReuseNoted>> reused = Optional.empty();
  private Optional<OffsetDateTime> byHand = Optional.empty();
  private Optional<BigDecimal> runDown = Optional.empty();
  private boolean interrupted;
  private int voided;

  TighteningTrace(Step step) {
    this.step = step;
  }

  void marking(HeadMarking read) {
    clearStages();
    marking = Optional.of(read);
  }

  void newHardware(OffsetDateTime at) {
    clearStages();
    loose();
    newHardware = Optional.of(at);
    reused = Optional.empty();
  }

  /** A used part within its limit is fitted again. */
  void reused(Review.Timed<SessionEvent.ReuseNoted> part) {
    clearStages();
    loose();
    marking = Optional.empty();
    noHardware();
    reused = Optional.of(part);
  }

  private void noHardware() {
    newHardware = Optional.empty();
    reused = Optional.empty();
  }

  /** A called value; of an angle that was turned in part, with what was turned before. */
  void called(int stage, StepReview.Called value) {
    BigDecimal before = turned.orElse(BigDecimal.ZERO);
    called.put(stage, new StepReview.Called(value.value().add(before), value.clip()));
  }

  /** Positions of a set were called at a stage. */
  void positions(int stage, Positions more, OffsetDateTime at, WrenchTrace wrench) {
    named(stage, wrench);
    Optional<BigDecimal> value =
        Optional.ofNullable(called.get(stage)).map(StepReview.Called::value);
    boolean counted = more.numbers().size() > 1;
    List<StepReview.Position> all = positions.computeIfAbsent(stage, s -> new ArrayList<>());
    more.numbers().forEach(n -> all.add(new StepReview.Position(n, value, at, counted)));
    last = more.numbers();
    turned = Optional.empty();
    interrupted = false;
  }

  /** Positions of a set are open again. */
  void opened(int stage, Positions back) {
    withdraw(stage, back.numbers());
    if (angleAtHand().isPresent()) {
      interrupted();
    }
  }

  /**
   * It starts again with new hardware or after a repair; of a set only one, the others wait for it.
   *
   * @param newFitted when new hardware was fitted; empty after a repair
   */
  void renewed(Optional<Integer> position, Optional<OffsetDateTime> newFitted) {
    loose();
    if (position.isEmpty()) {
      voided();
      marking = Optional.empty();
      noHardware();
      newHardware = newFitted;
      return;
    }
    voided += closed.isEmpty() ? 0 : 1;
    Map<Integer, List<StepReview.Position>> kept = new HashMap<>(positions);
    clearStages();
    positions.putAll(kept);
    positions.keySet().forEach(stage -> withdraw(stage, List.of(position.get())));
    load = Optional.empty();
  }

  private void withdraw(int stage, List<Integer> numbers) {
    positions
        .computeIfAbsent(stage, s -> new ArrayList<>())
        .removeIf(p -> numbers.contains(p.number()));
  }

  /** Broken off: how far an angle was turned is not known. */
  void interrupted() {
    dropped();
    turned = Optional.empty();
    interrupted = angleAtHand().isPresent();
  }

  /** So far the angle at hand was turned; all of it, if that is within its tolerance. */
  void turned(BigDecimal degrees, Optional<String> clip) {
    Optional<Stage.AngleStage> angle = angleAtHand();
    interrupted = angle.filter(a -> a.isExceededBy(degrees)).isPresent();
    turned = Optional.of(degrees);
    angle
        .filter(a -> a.isReachedBy(degrees))
        .ifPresent(a -> called.put(closed.size() + 1, new StepReview.Called(degrees, clip)));
  }

  private Optional<Stage.AngleStage> angleAtHand() {
    List<Stage> stages = specified();
    boolean open = !closed.isEmpty() && closed.size() < stages.size();
    return open && stages.get(closed.size()) instanceof Stage.AngleStage angle
        ? Optional.of(angle)
        : Optional.empty();
  }

  /** Loosened fully; what was turned through an angle is not new any more. */
  void loosened() {
    loose();
    boolean some = !positions.getOrDefault(closed.size() + 1, List.of()).isEmpty();
    boolean none = turned.filter(t -> t.signum() == 0).isPresent() && !interrupted && !some;
    boolean worn =
        step instanceof Step.Fasten fasten
            && fasten.fastener().part().wearsByTorque()
            && (!closed.isEmpty() || some);
    boolean used = worn || (angleAtHand().isPresent() && !none);
    voided();
    if (used) {
      marking = Optional.empty();
      noHardware();
    }
  }

  /**
   * Opened again.
   *
   * @param loose whether it counts as loosened in any case
   */
  void reopened(boolean loose) {
    boolean tight =
        step instanceof Step.Fasten fasten
            && !fasten.fastener().part().oneTimeUse()
            && specified().stream().anyMatch(Stage.AngleStage.class::isInstance);
    if (loose || !tight) {
      voided();
      loose();
      marking = Optional.empty();
      noHardware();
      return;
    }
    voided++;
    List<Stage> stages = specified();
    int first = 1;
    while (stages.get(first - 1) instanceof Stage.TorqueStage) {
      first++;
    }
    int angle = first;
    finalTorque = Optional.empty();
    judged = Optional.empty();
    closed.keySet().removeIf(stage -> stage >= angle);
    wrenches.keySet().removeIf(stage -> stage >= angle);
    positions.keySet().removeIf(stage -> stage >= angle);
    load = Optional.empty();
    interrupted();
  }

  /** The closing of a stage was taken back. */
  void takenBack(int stage) {
    closed.remove(stage);
    finalTorque = Optional.empty();
    judged = Optional.empty();
    called.remove(stage);
    wrenches.remove(stage);
    withdraw(stage, last);
    turned = Optional.empty();
    load = Optional.empty();
  }

  /** What was said last was taken back. */
  void takenBack(String event) {
    switch (EventKind.valueOf(event)) {
      case NEW_HARDWARE_FITTED, REUSE_NOTED -> {
        noHardware();
        marking = Optional.empty();
      }
      case MARKING_NOTED -> marking = Optional.empty();
      case RUN_IN_BY_HAND -> byHand = Optional.empty();
      case RUN_DOWN_NOTED -> runDown = Optional.empty();
      case TURN_NOTED -> interrupted();
      default -> {
        // nothing of the tightening
      }
    }
  }

  /** The called value that no stage was closed with yet no longer counts. */
  void dropped() {
    called.keySet().retainAll(closed.keySet());
  }

  void stageClosed(int stage, OffsetDateTime at, WrenchTrace wrench) {
    named(stage, wrench);
    closed.put(stage, at);
    turned = Optional.empty();
  }

  /** It was run in by hand. */
  void byHand(OffsetDateTime at) {
    byHand = Optional.of(at);
  }

  /** Loose again: it is run in and run down anew. */
  private void loose() {
    byHand = Optional.empty();
    runDown = Optional.empty();
  }

  /** What the nut needed to run down. */
  void runDown(BigDecimal value) {
    runDown = Optional.of(value);
  }

  /** A torque that was read after the last angle. */
  void finalTorque(Review.Timed<SessionEvent.FinalTorqueNoted> read) {
    finalTorque = Optional.of(read);
    judged = Optional.empty();
  }

  /** It was held against a band. */
  void judged(SessionEvent.FinalTorqueJudged hint) {
    judged = Optional.of(hint);
  }

  private void named(int stage, WrenchTrace wrench) {
    List<Stage> stages = specified();
    if (stage >= 1 && stage <= stages.size()) {
      wrench
          .at(stages.get(stage - 1))
          .ifPresent(t -> wrenches.computeIfAbsent(stage, s -> new LinkedHashSet<>()).add(t.id()));
    }
  }

  void closed(Optional<Review.Timed<SessionEvent.LoadConfirmed>> confirmation) {
    load = confirmation;
  }

  void voided() {
    voided += closed.isEmpty() ? 0 : 1;
    clearStages();
    load = Optional.empty();
  }

  private void clearStages() {
    turned = Optional.empty();
    interrupted = false;
    finalTorque = Optional.empty();
    judged = Optional.empty();
    called.clear();
    closed.clear();
    positions.clear();
    wrenches.clear();
  }

  StepReview.Tightened tightened() {
    return new StepReview.Tightened(
        marking, newHardware, reused, byHand, load, stages(), runDown, finalTorque, judged, voided);
  }

  private List<Stage> specified() {
    if (!(step instanceof Step.Fasten fasten)) {
      return List.of();
    }
    List<Stage> stages = fasten.fastener().stagesFor(marking).orElse(List.of());
    boolean added =
        fasten.fastener().manner().runDown().equals(Optional.of(Fastener.Manner.RunDown.ADDED));
    return added && runDown.isPresent()
        ? stages.stream()
            .map(s -> s instanceof Stage.TorqueStage torque ? torque.plus(runDown.get()) : s)
            .toList()
        : stages;
  }

  private List<StepReview.StageReview> stages() {
    List<StepReview.StageReview> reviews = new ArrayList<>();
    if (step instanceof Step.Fasten) {
      List<Stage> stages = specified();
      for (int i = 1; i <= stages.size(); i++) {
        reviews.add(
            new StepReview.StageReview(
                stages.get(i - 1),
                Optional.ofNullable(called.get(i)).map(StepReview.Called::value),
                Optional.ofNullable(called.get(i)).flatMap(StepReview.Called::clip),
                Optional.ofNullable(closed.get(i)),
                positions.getOrDefault(i, List.of()),
                List.copyOf(wrenches.getOrDefault(i, Set.of()))));
      }
    }
    return reviews;
  }
}
