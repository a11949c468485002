package org.undercall.adapter.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.undercall.core.procedure.Stage;
import org.undercall.core.review.Earlier;
import org.undercall.core.review.StepReview;

/** One step of a review as a JSON object. */
final class StepJson {
  private StepJson() {}

  static void put(ObjectNode node, StepReview step) {
    node.put("step", step.place().ref().toString());
    node.put("title", step.place().step().head().title());
    node.put("phase", step.place().phase());
    node.put("state", ReviewWords.plain(step.state()));
    StepReview.Times times = step.times();
    times.start().ifPresent(start -> node.put("start", ReviewJson.time(start)));
    times.end().ifPresent(end -> node.put("end", ReviewJson.time(end)));
    ReviewJson.span(node, "whole", times.whole());
    node.put("workingMillis", times.working().toMillis());
    node.put("asideMillis", times.aside().toMillis());
    node.put("timedMillis", times.timed().toMillis());
    work(node, step.work());
    tightened(node, step.tightened());
    ArrayNode doubts = node.putArray("doubts");
    step.doubts().stream().sorted().map(ReviewWords::doubt).forEach(doubts::add);
  }

  private static void work(ObjectNode node, StepReview.Work work) {
    ArrayNode answers = node.putArray("checks");
    work.answers().forEach(a -> ReviewJson.timed(answers, a).put("passed", a.event().passed()));
    ArrayNode measured = node.putArray("measured");
    work.measured()
        .forEach(
            m ->
                ReviewJson.timed(measured, m)
                    .put("value", m.event().value().toString())
                    .put("withinLimits", m.event().withinLimits()));
    ArrayNode refusals = node.putArray("refusals");
    work.refusals().forEach(refusal -> ReviewJson.refusal(refusals.addObject(), refusal));
    work.closedBy().ifPresent(who -> node.put("closedBy", who));
    work.witness()
        .ifPresent(
            seen ->
                node.putObject("witness")
                    .put("at", ReviewJson.time(seen.at()))
                    .put("name", seen.event().witness())
                    .put("seen", seen.event().seen()));
    if (work.witnessMissing()) {
      node.put("witnessMissing", true);
    }
    ArrayNode reopened = node.putArray("reopened");
    work.reopened().forEach(at -> reopened.add(ReviewJson.time(at)));
    ArrayNode earlier = node.putArray("earlier");
    work.earlier().forEach(e -> earlier(earlier.addObject(), e));
    ArrayNode putOff = node.putArray("putOff");
    work.putOff().forEach(reason -> putOff.add(ReviewWords.plain(reason)));
  }

  private static void earlier(ObjectNode node, Earlier earlier) {
    node.put("openedAt", ReviewJson.time(earlier.at())).put("why", RecordWords.why(earlier));
    earlier.closed().ifPresent(at -> node.put("closed", ReviewJson.time(at)));
    earlier.closedBy().ifPresent(who -> node.put("closedBy", who));
    ArrayNode answers = node.putArray("checks");
    earlier.answers().forEach(a -> ReviewJson.timed(answers, a).put("passed", a.event().passed()));
    ArrayNode measured = node.putArray("measured");
    earlier
        .measured()
        .forEach(m -> ReviewJson.timed(measured, m).put("value", m.event().value().toString()));
    tightened(node, earlier.tightened());
  }

  private static void tightened(ObjectNode node, StepReview.Tightened tightened) {
    tightened.marking().ifPresent(marking -> node.put("headMarking", marking.text()));
    tightened.newHardware().ifPresent(at -> node.put("newHardware", ReviewJson.time(at)));
    tightened
        .reused()
        .ifPresent(
            used ->
                node.putObject("usedAgain")
                    .put("at", ReviewJson.time(used.at()))
                    .put("what", ReviewWords.reused(used.event().by(), used.event().value())));
    tightened.byHand().ifPresent(at -> node.put("runInByHand", ReviewJson.time(at)));
    tightened
        .load()
        .ifPresent(
            load ->
                node.putObject("load")
                    .put("at", ReviewJson.time(load.at()))
                    .put("what", EventWords.confirmed(load.event())));
    ArrayNode stages = node.putArray("stages");
    tightened.stages().forEach(stage -> stage(stages.addObject(), stage));
    ReviewWords.runDown(tightened).ifPresent(read -> node.put("runDown", read));
    ReviewWords.finalTorque(tightened).ifPresent(read -> node.put("finalTorque", read));
    tightened
        .judged()
        .ifPresent(
            judged ->
                node.putObject("finalTorqueHint")
                    .put("hint", ReviewWords.plain(judged.hint()))
                    .put("least", judged.least())
                    .put("most", judged.most())
                    .put("band", ReviewWords.plain(judged.band())));
    node.put("voided", tightened.voided());
  }

  private static void stage(ObjectNode node, StepReview.StageReview stage) {
    node.put("kind", StageWords.kind(stage.specification()));
    node.put("specification", ReviewWords.specification(stage));
    if (stage.specification() instanceof Stage.TorqueStage t) {
      node.put("wrenchSetTo", t.setting().toString());
    }
    if (!stage.wrenches().isEmpty()) {
      node.put("tool", String.join(", ", stage.wrenches()));
    }
    stage.called().ifPresent(called -> node.put("called", called));
    stage.clip().ifPresent(clip -> node.put("clip", clip));
    stage.deviation().ifPresent(deviation -> node.put("deviation", deviation));
    node.put("within", stage.within());
    stage.closed().ifPresent(at -> node.put("closed", ReviewJson.time(at)));
    if (!stage.positions().isEmpty()) {
      ArrayNode set = node.putArray("set");
      stage.positions().forEach(position -> position(set.addObject(), position));
    }
  }

  private static void position(ObjectNode node, StepReview.Position position) {
    node.put("number", position.number());
    position.called().ifPresent(called -> node.put("called", called));
    node.put("closed", ReviewJson.time(position.closed()));
    node.put("counted", position.counted());
  }
}
