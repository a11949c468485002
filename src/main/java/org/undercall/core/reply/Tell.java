package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.Side;
import org.undercall.core.term.Torque;

/** What the program says to answer a question, and about notes, pauses and timers. */
public final class Tell {
  private static final int LISTED = 4;

  private Tell() {}

  /** What is done and left of the set at hand. */
  public static Reply ofSet(List<Integer> closed, List<Integer> left) {
    String done = closed.isEmpty() ? "None is done" : "Done: number " + Words.numbers(closed);
    return Reply.of(
        done + ".",
        "Next: number " + Words.count(left.get(0)) + ".",
        "Left: " + Words.numbers(left) + ".");
  }

  /** The microphone went away. */
  public static Reply microphoneGone() {
    return Reply.of("The microphone is gone.", "I cannot hear you. Nothing is lost.");
  }

  /** The microphone gives sound again. */
  public static Reply microphoneBack() {
    return Reply.of("The microphone is back.");
  }

  /** The loudspeaker went away; this can only be shown. */
  public static Reply speakerGone() {
    return Reply.of("The speaker is gone.", "Look at the screen.");
  }

  /** The loudspeaker plays again. */
  public static Reply speakerBack() {
    return Reply.of("The speaker is back.");
  }

  /** Sound was lost on the way to the recogniser. */
  public static Reply someSoundLost() {
    return Reply.of("I missed some sound.", "If you said something, say it again.");
  }

  /** How much sound was lost. */
  public static Reply soundLost(long millis) {
    return Reply.of(
        "The machine was too slow. Sound lost: "
            + (millis + 999) / 1000
            + (millis > 1000 ? " seconds." : " second."));
  }

  /** A note may be spoken now. */
  public static Reply noteStarted() {
    return Reply.of("Speak your note.");
  }

  /** What was found may be spoken now. */
  public static Reply reportStarted(Finding finding, Side side) {
    String what = Words.sentence(Words.finding(finding));
    return Reply.of(what + ", " + Words.side(side) + ". Speak.");
  }

  /** A note was kept; nobody has checked its words. */
  public static Reply noteKept(Optional<Finding> about) {
    return Reply.of(
        Words.sentence(about.map(Words::finding).orElse("note")) + " kept, not checked.");
  }

  /** The work is held. */
  public static Reply held() {
    return Reply.of("On hold. Say: resume the work.");
  }

  /** A timer was started. */
  public static Reply timerStarted(long seconds) {
    return Reply.once(
        Lesson.TIMER, "Timer running, " + Words.time(seconds) + ".", "Timer running.");
  }

  /** A timer was cancelled. */
  public static Reply timerCancelled() {
    return Reply.of("Timer cancelled.");
  }

  /** No timer runs. */
  public static Reply noTimer() {
    return Reply.of("No timer is running.");
  }

  /** The steps that are open. */
  public static Reply left(List<Walk.Place> open) {
    String names =
        open.stream()
            .limit(LISTED)
            .map(p -> Words.step(p.ref(), p.step().head().title()))
            .collect(Collectors.joining("; "));
    String more =
        open.size() > LISTED ? "; and " + Words.count(open.size() - LISTED) + " more" : "";
    return Reply.of(
        Words.sentence(Words.count(open.size(), "step"))
            + " open"
            + (open.isEmpty() ? "." : ": " + names + more + "."));
  }

  /** Where the walk stands. */
  public static Reply where(int number, int of, Walk.Place place) {
    return Reply.of(
        "Step "
            + Words.count(number)
            + " of "
            + Words.count(of)
            + ", "
            + place.phase()
            + ", "
            + Words.of(place.ref().side())
            + ".");
  }

  /** What the wrench is set to, and what that makes at the fastener with an adaptor on. */
  public static Reply setting(Stage stage) {
    String reads = "Set the wrench to " + Words.value(stage) + ".";
    if (stage instanceof Stage.TorqueStage torque && torque.dialled().isPresent()) {
      String at = Words.sentence(Words.torque(torque.target())) + " at the fastener.";
      return Reply.of(reads, at);
    }
    return stage instanceof Stage.TorqueStage
        ? Reply.of(reads)
        : Reply.of("Turn on by " + Words.value(stage) + ".");
  }

  /** The torque of the specification in another unit, only to show. */
  public static Reply inOtherUnit(Torque specified, Torque shown) {
    return Reply.of(
        Words.sentence(Words.torque(specified)) + " is about " + Words.torque(shown) + ".",
        "The specification is in " + Words.unit(specified.unit()) + ".");
  }

  /** What a value belongs to: thread, marking and tolerance. */
  public static Reply belongsTo(Fastener fastener, Optional<HeadMarking> marking, Stage stage) {
    String head = marking.map(m -> ", head marking " + Words.marking(m)).orElse("");
    BigDecimal plusMinus =
        stage instanceof Stage.TorqueStage torque
            ? torque.plusMinus()
            : ((Stage.AngleStage) stage).plusMinus();
    return Reply.of(
        "It is for " + fastener.name() + ", " + Words.thread(fastener.thread()) + head + ".",
        "Plus or minus " + Words.digits(plusMinus) + " " + Words.unit(stage) + ".");
  }

  /** The preload a torque makes, as a range in kilonewtons. */
  public static Reply preload(long least, long most) {
    return Reply.of("It clamps with about " + least + " to " + most + " kilonewtons.");
  }

  /** Why the preload is not known. */
  public static Reply preloadNotKnown() {
    return Reply.of("The clamp force is not known: bolt class or friction is not given.");
  }

  /** Why the preload after an angle stage is not known. */
  public static Reply angleNotKnown() {
    return Reply.of("The angle stretches the bolt. How far, needs data of the joint.");
  }
}
