package org.undercall.core.review;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.HeadMarking;

/** What has been read so far about the tightening of one step. */
final class TighteningTrace {
  private final Step step;
  private final Map<Integer, StepReview.Called> called = new HashMap<>();
  private final Map<Integer, OffsetDateTime> closed = new HashMap<>();
  private Optional<HeadMarking> marking = Optional.empty();
  private Optional<OffsetDateTime> newHardware = Optional.empty();
  private Optional<Review.Timed<SessionEvent.LoadConfirmed>> load = Optional.empty();
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
    newHardware = Optional.of(at);
  }

  void called(int stage, StepReview.Called value) {
    called.put(stage, value);
  }

  /** The called value that no stage was closed with yet no longer counts. */
  void dropped() {
    called.keySet().retainAll(closed.keySet());
  }

  void stageClosed(int stage, OffsetDateTime at) {
    closed.put(stage, at);
  }

  void closed(Optional<Review.Timed<SessionEvent.LoadConfirmed>> confirmation) {
    load = confirmation;
  }

  void voided() {
    voided += closed.isEmpty() ? 0 : 1;
    clearStages();
    load = Optional.empty();
  }

  void loosened() {
    voided();
    marking = Optional.empty();
    newHardware = Optional.empty();
  }

  private void clearStages() {
    called.clear();
    closed.clear();
  }

  StepReview.Tightened tightened() {
    return new StepReview.Tightened(marking, newHardware, load, stages(), voided);
  }

  private List<StepReview.StageReview> stages() {
    List<StepReview.StageReview> reviews = new ArrayList<>();
    if (step instanceof Step.Fasten fasten) {
      List<Stage> stages = fasten.fastener().stagesFor(marking).orElse(List.of());
      for (int i = 1; i <= stages.size(); i++) {
        reviews.add(
            new StepReview.StageReview(
                stages.get(i - 1),
                Optional.ofNullable(called.get(i)).map(StepReview.Called::value),
                Optional.ofNullable(called.get(i)).flatMap(StepReview.Called::clip),
                Optional.ofNullable(closed.get(i))));
      }
    }
    return reviews;
  }
}
