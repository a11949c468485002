package org.undercall.core.decision;

import static org.undercall.core.decision.SeededBug.believing;
import static org.undercall.core.decision.SeededBug.dropping;
import static org.undercall.core.decision.SeededBug.hearing;
import static org.undercall.core.decision.SeededBug.keeping;
import static org.undercall.core.decision.SeededBug.recording;
import static org.undercall.core.decision.SeededBug.replacing;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.Remedy;

/** Mistakes that would cost somebody a wheel, each with the promise it breaks. */
final class SeededBugs {
  private SeededBugs() {}

  static List<SeededBug> all() {
    return Stream.of(
            sides(),
            loads(),
            car(),
            fasteners(),
            sets(),
            troubles(),
            values(),
            closings(),
            witnesses())
        .flatMap(s -> s)
        .toList();
  }

  private static Stream<SeededBug> sides() {
    return Stream.of(
        new SeededBug(
            "the other side's step is closed",
            "a step closed at the step at hand",
            replacing(
                e -> e instanceof SessionEvent.StepClosed c ? Mistakes.closedOpposite(c) : e)),
        new SeededBug(
            "the load is confirmed for the other side",
            "a load read back",
            replacing(
                e ->
                    e instanceof SessionEvent.LoadConfirmed c ? Mistakes.confirmedOpposite(c) : e)),
        new SeededBug(
            "the side that is read back is not compared",
            "a load read back",
            hearing(Mistakes::rightSide)));
  }

  private static Stream<SeededBug> loads() {
    return Stream.of(
        new SeededBug(
            "a step that is said not to be completed is closed",
            "a denial or doubt only makes safer",
            hearing(Mistakes::denied)),
        new SeededBug(
            "a call of danger and the break after it leave a confirmed load as it is",
            "hardware, marking and load before a stage",
            replacing(
                e ->
                    e instanceof SessionEvent.LoadChanged c
                            && (c.change() == LoadChange.DANGER_CALLED
                                || c.change() == LoadChange.WORK_HELD)
                        ? new SessionEvent.Asked(IntentKind.DANGER.name())
                        : e)),
        new SeededBug(
            "nothing cancels a confirmed load",
            "hardware, marking and load before a stage",
            dropping(SessionEvent.LoadChanged.class)),
        new SeededBug(
            "a load that was cancelled is still believed",
            "hardware, marking and load before a stage",
            keeping(
                (s, e) ->
                    e instanceof SessionEvent.LoadChanged c
                        ? s.with(s.car().moved(c.change()))
                        : s.after(e))),
        new SeededBug(
            "a confirmation of another load condition is accepted",
            "hardware, marking and load before a stage",
            keeping(Mistakes::anyLoad)),
        new SeededBug(
            "a load counts as soon as it is called, without being read back",
            "a load read back",
            recording(Mistakes::confirmAtOnce)),
        new SeededBug(
            "what was confirmed is believed after a restart",
            "hardware, marking and load before a stage",
            new SeededBug.Program() {
              @Override
              public Decision takeUp(Session session, Duration away) {
                Decision up = Decider.takeUp(session, "test", away);
                List<SessionEvent> kept =
                    up.events().stream()
                        .filter(e -> !(e instanceof SessionEvent.LoadChanged))
                        .toList();
                return new Decision(kept, up.reply(), up.outcome());
              }
            }),
        new SeededBug(
            "a suspension that hangs free is still believed to be at ride height",
            "hardware, marking and load before a stage",
            replacing(
                e ->
                    e instanceof SessionEvent.LoadChanged c && c.change() == LoadChange.CONTRADICTED
                        ? new SessionEvent.Asked("HANGS_FREE")
                        : e)),
        new SeededBug(
            "a height outside leaves a confirmed ride height as it is",
            "hardware, marking and load before a stage",
            replacing(
                e ->
                    e instanceof SessionEvent.LoadChanged c
                            && c.change() == LoadChange.HEIGHT_OUTSIDE
                        ? new SessionEvent.Asked("ARCH_HEIGHT")
                        : e)),
        new SeededBug(
            "a height noted with the car lifted counts as the reference",
            "a reference height from before the car was lifted",
            believing((s, i) -> Mistakes.neverLifted(s))));
  }

  private static Stream<SeededBug> car() {
    return Stream.of(
        new SeededBug(
            "a wheel that is off carries the car",
            "a wheel that is off carries nothing",
            believing((s, i) -> i.kind() == IntentKind.WHEELS_CARRY ? s.with(Car.NOT_KNOWN) : s)),
        new SeededBug(
            "wheel bolts are tightened with the wheel off",
            "a wheel tightened while it is on",
            believing(
                (s, i) -> i.kind() == IntentKind.TORQUE_COMPLETED ? Mistakes.wheelsOn(s) : s)),
        new SeededBug(
            "wheel bolts are tightened with the car in the air",
            "a wheel tightened on the ground",
            believing(
                (s, i) -> i.kind() == IntentKind.TORQUE_COMPLETED ? Mistakes.onGround(s) : s)),
        new SeededBug(
            "what is undone stays closed",
            "what is undone is open",
            dropping(SessionEvent.ClosingLapsed.class)),
        new SeededBug(
            "steps are closed in any order",
            "what comes first is closed first",
            believing(
                (s, i) ->
                    s.place().step().head().bearing().after().isEmpty()
                            || Bonds.isWheel(s.place().step())
                        ? s
                        : Mistakes.excused(s))),
        new SeededBug(
            "a road test is driven with a fastener open",
            "a road test with every fastener closed",
            believing(
                (s, i) ->
                    s.place().step().head().bearing().roadTest()
                            && !(s.place().step() instanceof Step.Fasten)
                        ? Mistakes.excused(s)
                        : s)));
  }

  private static Stream<SeededBug> fasteners() {
    return Stream.of(
        new SeededBug(
            "the angle stage is closed before the torque stage",
            "stages in order, in one go",
            believing(Mistakes::angleFirst)),
        new SeededBug(
            "a tightening that was left goes on where it stopped",
            "an angle that was not broken off",
            replacing(
                e ->
                    e instanceof SessionEvent.TighteningInterrupted i
                        ? new SessionEvent.ValueDropped(i.step())
                        : e)),
        new SeededBug(
            "an angle that was turned in part is turned in full again",
            "the value of the specification",
            believing(Mistakes::turnedInFull)),
        new SeededBug(
            "a tightening that was broken off starts again without being loosened",
            "stages in order, in one go",
            keeping(Mistakes::startedAgain)),
        new SeededBug(
            "a bolt that was turned through an angle is used again after it was loosened",
            "hardware, marking and load before a stage",
            keeping(Mistakes::usedAgain)),
        new SeededBug(
            "one-time hardware is not asked for again after a step was opened again",
            "hardware, marking and load before a stage",
            keeping(Mistakes::oldHardware)),
        new SeededBug(
            "a used part counts without being read back",
            "a used part read back",
            replacing(
                e ->
                    e instanceof SessionEvent.ReuseCalled r
                        ? new SessionEvent.ReuseNoted(r.step(), r.by(), r.value())
                        : e)),
        new SeededBug(
            "a bolt beyond its limit, or a nut used up, is fitted again",
            "a used part within its limit",
            believing(Mistakes::withoutLimit)),
        new SeededBug(
            "a nut that was tightened before counts as new after it was loosened",
            "hardware, marking and load before a stage",
            keeping(Mistakes::lockedAgain)),
        new SeededBug(
            "one-time hardware is never asked for",
            "hardware, marking and load before a stage",
            believing(
                (s, i) ->
                    s.phase() == Phase.HARDWARE ? Mistakes.tightened(s, Mistakes.newPart(s)) : s)),
        new SeededBug(
            "a value is released before the head marking is known",
            "an unread head marking holds back",
            believing(
                (s, i) ->
                    s.phase() == Phase.MARKING
                        ? Mistakes.tightened(s, Mistakes.marked(s, "10.9"))
                        : s)),
        new SeededBug(
            "an unknown head marking is taken as a known one",
            "a marking read back",
            replacing(Mistakes::knownMarking)));
  }

  private static Stream<SeededBug> sets() {
    return Stream.of(
        new SeededBug(
            "one word closes a whole set",
            "every one of a set called",
            believing(Mistakes::oneForAll)),
        new SeededBug(
            "a stage of a set is closed with its first fastener",
            "every one of a set called",
            recording(Mistakes::closeWithFirst)),
        new SeededBug(
            "any number counts as the next one",
            "the position that was called",
            hearing(Mistakes::anyPosition)),
        new SeededBug(
            "a set is counted at once, without being read back",
            "a count is read back",
            recording(Mistakes::countedAtOnce)),
        new SeededBug(
            "a set in star order is counted",
            "in order means one by one",
            believing(Mistakes::orderForgotten)),
        new SeededBug(
            "a position that is denied stays closed",
            "a position that is denied is open",
            dropping(SessionEvent.PositionsTakenBack.class)));
  }

  private static Stream<SeededBug> troubles() {
    return Stream.of(
        new SeededBug(
            "a stripped thread is forgotten",
            "nothing closes before what went wrong is settled",
            believing(Mistakes::nothingWrong)),
        new SeededBug(
            "what went wrong counts without being read back",
            "what went wrong was read back",
            replacing(
                e ->
                    e instanceof SessionEvent.TroubleCalled c
                        ? new SessionEvent.TroubleNoted(c.step(), c.trouble(), c.position())
                        : e)),
        new SeededBug(
            "a one-time bolt of a set is repaired and used again",
            "what is used once is renewed",
            replacing(
                e ->
                    e instanceof SessionEvent.TroubleSettled t
                        ? new SessionEvent.TroubleSettled(t.step(), Remedy.REPAIRED)
                        : e)),
        new SeededBug(
            "after new hardware it goes on where it stopped",
            "stages in order, in one go",
            keeping(Mistakes::goesOn)));
  }

  private static Stream<SeededBug> values() {
    return Stream.of(
        new SeededBug(
            "the value of the other head marking is accepted",
            "the value of the specification",
            believing(Mistakes::otherVariant)),
        new SeededBug(
            "any value is taken for the specified one",
            "the value that was said",
            hearing(Mistakes::rightValue)),
        new SeededBug(
            "a reading counts without being read back",
            "the value of the specification",
            replacing(
                e ->
                    e instanceof SessionEvent.ReadingCalled r
                        ? new SessionEvent.ValueCalled(r.step(), r.stage(), r.value())
                        : e)),
        new SeededBug(
            "a reading counts at a wrench that clicks",
            "a torque read at a wrench with a scale",
            believing((s, i) -> Mistakes.withScales(s))),
        new SeededBug(
            "nobody minds that a calibration is over",
            "a wrench out of calibration is excused",
            believing((s, i) -> Mistakes.calibrated(s))),
        new SeededBug(
            "an excuse for a calibration that is over counts without being read back",
            "an excuse read back",
            replacing(
                e ->
                    e instanceof SessionEvent.OverdueCalled o
                        ? new SessionEvent.OverdueNoted(o.step(), o.wrench(), o.reason())
                        : e)),
        new SeededBug(
            "a wrench is noted that was not named",
            "the wrench that was named",
            replacing(
                e ->
                    e instanceof SessionEvent.WrenchNamed w
                        ? new SessionEvent.WrenchNamed(w.step(), "wrench 2")
                        : e)),
        new SeededBug(
            "a torque without its unit is taken where units are mixed",
            "the unit where units are mixed",
            hearing(Mistakes::inItsUnit)),
        new SeededBug(
            "a reading outside the tolerance is kept",
            "a reading within the tolerance",
            recording(Mistakes::readMore)),
        new SeededBug(
            "a value is accepted in another unit",
            "the unit of the specification",
            hearing(
                (s, i) ->
                    i instanceof Intent.OfNumber n ? Mistakes.plain(n, n.number().style()) : i)),
        new SeededBug(
            "a value below zero is taken without its sign",
            "the measured value that was said",
            hearing(
                (s, i) ->
                    i instanceof Intent.OfReading r
                        ? new Intent.OfReading(r.kind(), r.value().abs(), r.unit(), r.signed())
                        : i)),
        new SeededBug(
            "a value without a sign counts where it may be below zero",
            "a sign that was said",
            hearing((s, i) -> i instanceof Intent.OfNumber n ? Mistakes.signed(s, n) : i)),
        new SeededBug(
            "a confusable number counts without its digits",
            "digits where confusable",
            hearing((s, i) -> i instanceof Intent.OfNumber n ? Mistakes.digits(n) : i)),
        new SeededBug(
            "a value with a pause in it counts at once",
            "a value with a pause in it is read back",
            hearing((s, i) -> i instanceof Intent.OfNumber n ? Mistakes.withoutPause(n) : i)),
        new SeededBug(
            "a stage is closed without a value",
            "a value called for this stage",
            believing(Mistakes::calledAlready)),
        new SeededBug(
            "an unclear phrase is taken for a closing one",
            "an unclear phrase changes nothing",
            hearing((s, i) -> i instanceof Intent.Unclear ? Mistakes.completed() : i)));
  }

  private static Stream<SeededBug> witnesses() {
    return Stream.of(
        new SeededBug(
            "who works is his own witness",
            "a witness is another person",
            believing((s, i) -> Mistakes.nobodyWorked(s, "NN"))),
        new SeededBug(
            "who tightened it before the shift changed is its witness",
            "a witness is another person",
            believing((s, i) -> Mistakes.nobodyWorked(s, s.account().technician()))),
        new SeededBug(
            "a witness is kept when a step is opened again",
            "a witness saw it before it closes",
            keeping(Mistakes::stillSeen)),
        new SeededBug(
            "the witness of another step counts",
            "a witness saw it before it closes",
            believing((s, i) -> Mistakes.seenElsewhere(s))),
        new SeededBug(
            "a witness counts as soon as he is named",
            "a witness confirms by his own phrase",
            recording(Mistakes::seenAtOnce)),
        new SeededBug(
            "any name confirms",
            "a witness confirms with the name that was read back",
            hearing(Mistakes::rightName)),
        new SeededBug(
            "a step that is put off needs no witness any more",
            "a witness saw it before it closes",
            believing((s, i) -> Mistakes.nobodyAsked(s))));
  }

  private static Stream<SeededBug> closings() {
    return Stream.of(
        new SeededBug(
            "a step that was put off counts as complete",
            "complete with every step closed",
            replacing(Mistakes::complete)),
        new SeededBug(
            "one that is run in by hand counts for all of a set",
            "all run in by hand, by their number",
            hearing(Mistakes::allByHand)),
        new SeededBug(
            "a pass by hand is passed over",
            "a pass by hand before a torque",
            believing(Mistakes::byHand)),
        new SeededBug(
            "a fastener that is only snug is closed",
            "all stages closed",
            recording(Mistakes::closeSnug)),
        new SeededBug(
            "a check that failed counts as passed",
            "a check that passed",
            hearing(
                (s, i) -> Mistakes.failed(s, i) ? new Intent.Plain(IntentKind.CHECK_PASSED) : i)),
        new SeededBug(
            "\"step closed\" is said and not recorded",
            "a reply says too much",
            dropping(SessionEvent.StepClosed.class)));
  }
}
