package org.undercall.core.decision;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.Missing;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.ConfusableNumbers;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.Positions;
import org.undercall.core.term.Remedy;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;

/**
 * Watches what must never happen. It reads intents, events and replies only, keeps its own books,
 * and knows nothing of the session's state or of the rules.
 */
final class Promises {
  /** What is called out when the car or the jack was moved, whatever the program makes of it. */
  private static final Set<IntentKind> CAN_CHANGE_LOAD =
      EnumSet.of(
          IntentKind.CAR_RAISED, IntentKind.CAR_LOWERED, IntentKind.JACK_MOVED, IntentKind.DANGER);

  /** What is denied or doubted, calls of danger, and answers too short to count. */
  private static final Set<IntentKind> SAFER_ONLY =
      EnumSet.of(IntentKind.DENIED, IntentKind.DANGER, IntentKind.NO, IntentKind.SHORT_ANSWER);

  /** What a no, or a no and another value, must never come to: nothing is closed or confirmed. */
  private static final Set<Class<?>> CONFIRMS =
      Set.of(
          SessionEvent.StepClosed.class,
          SessionEvent.StageClosed.class,
          SessionEvent.PositionsClosed.class,
          SessionEvent.LoadConfirmed.class,
          SessionEvent.Measured.class,
          SessionEvent.MarkingNoted.class,
          SessionEvent.TurnNoted.class,
          SessionEvent.RunDownNoted.class,
          SessionEvent.FinalTorqueNoted.class,
          SessionEvent.ReuseNoted.class,
          SessionEvent.WitnessAsked.class,
          SessionEvent.Witnessed.class,
          SessionEvent.SessionEnded.class);

  /** What a no without more must never come to either: nothing is opened. */
  private static final Set<Class<?>> OPENS =
      Set.of(
          SessionEvent.StageTakenBack.class,
          SessionEvent.PositionsTakenBack.class,
          SessionEvent.ClosingTakenBack.class,
          SessionEvent.ClosingLapsed.class,
          SessionEvent.SayingTakenBack.class,
          SessionEvent.StepEntered.class,
          SessionEvent.WorkHeld.class);

  /** What closes or confirms. */
  private static final Set<Class<?>> CLOSES =
      Set.of(
          SessionEvent.StageClosed.class,
          SessionEvent.PositionsClosed.class,
          SessionEvent.StepClosed.class,
          SessionEvent.ValueCalled.class,
          SessionEvent.WorkDone.class,
          SessionEvent.CheckAnswered.class,
          SessionEvent.Measured.class,
          SessionEvent.MarkingNoted.class,
          SessionEvent.NewHardwareFitted.class,
          SessionEvent.ReuseNoted.class,
          SessionEvent.TurnNoted.class,
          SessionEvent.Loosened.class,
          SessionEvent.LoadConfirmed.class,
          SessionEvent.Witnessed.class,
          SessionEvent.SessionEnded.class);

  /** What opens, cancels, refuses or answers. */
  private static final Set<Class<?>> SAFER =
      Set.of(
          SessionEvent.CloseRefused.class,
          SessionEvent.ValueDropped.class,
          SessionEvent.ReadBackDropped.class,
          SessionEvent.NoteDropped.class,
          SessionEvent.LoadChanged.class,
          SessionEvent.TighteningInterrupted.class,
          SessionEvent.StageTakenBack.class,
          SessionEvent.PositionsTakenBack.class,
          SessionEvent.ClosingTakenBack.class,
          SessionEvent.ClosingLapsed.class,
          SessionEvent.WitnessAsked.class,
          SessionEvent.StepEntered.class,
          SessionEvent.WorkHeld.class,
          SessionEvent.Asked.class,
          SessionEvent.NotNow.class);

  /** What is kept apart from the steps: the loads, the place, and what was heard last. */
  record Kept(
      Map<Side, LoadCondition> loads,
      StepRef at,
      Side worked,
      Optional<Measure> heardMeasure,
      Optional<HeadMarking> heardMarking,
      Optional<SessionEvent.LoadCalled> heardLoad,
      Optional<BigDecimal> heardTurn,
      Optional<Positions> heardSet,
      Optional<SessionEvent.ReadingCalled> heardReading,
      Optional<SessionEvent.TroubleCalled> heardTrouble,
      CarPromises car,
      BenchPromises bench,
      ReusePromises reuse,
      WitnessPromises witness,
      boolean handed) {

    /** The same where nothing needs a second person, so that it tells nothing who worked on it. */
    Kept withoutHands() {
      return new Kept(
          loads,
          at,
          worked,
          heardMeasure,
          heardMarking,
          heardLoad,
          heardTurn,
          heardSet,
          heardReading,
          heardTrouble,
          car,
          bench,
          reuse,
          witness.withoutHands(),
          handed);
    }
  }

  private final Walk walk;
  private final Map<StepRef, StepBook> books = new HashMap<>();
  private final Map<Side, LoadCondition> loads = new HashMap<>();
  private StepRef at;
  private Side worked = Side.CAR;
  private Optional<Measure> heardMeasure = Optional.empty();
  private Optional<HeadMarking> heardMarking = Optional.empty();
  private Optional<SessionEvent.LoadCalled> heardLoad = Optional.empty();
  private Optional<BigDecimal> heardTurn = Optional.empty();
  private Optional<Positions> heardSet = Optional.empty();
  private Optional<SessionEvent.ReadingCalled> heardReading = Optional.empty();
  private Optional<SessionEvent.TroubleCalled> heardTrouble = Optional.empty();
  private boolean closesByReading;
  private CarPromises car = CarPromises.START;
  private BenchPromises bench = BenchPromises.START;
  private ReusePromises reuse = ReusePromises.START;
  private WitnessPromises witness = WitnessPromises.START;
  private boolean handed;

  Promises(Walk walk) {
    this.walk = walk;
    this.at = walk.places().get(0).ref();
  }

  /** Promises that keep this: what {@link #books} and {@link #kept} gave before. */
  Promises(Walk walk, List<StepBook> books, Kept kept) {
    this.walk = walk;
    for (int i = 0; i < books.size(); i++) {
      this.books.put(walk.places().get(i).ref(), books.get(i));
    }
    loads.putAll(kept.loads());
    at = kept.at();
    worked = kept.worked();
    heardMeasure = kept.heardMeasure();
    heardMarking = kept.heardMarking();
    heardLoad = kept.heardLoad();
    heardTurn = kept.heardTurn();
    heardSet = kept.heardSet();
    heardReading = kept.heardReading();
    heardTrouble = kept.heardTrouble();
    car = kept.car();
    bench = kept.bench();
    reuse = kept.reuse();
    witness = kept.witness();
    handed = kept.handed();
  }

  private Promises(Promises other) {
    this(other.walk);
    books.putAll(other.books);
    loads.putAll(other.loads);
    at = other.at;
    worked = other.worked;
    heardMeasure = other.heardMeasure;
    heardMarking = other.heardMarking;
    heardLoad = other.heardLoad;
    heardTurn = other.heardTurn;
    heardSet = other.heardSet;
    heardReading = other.heardReading;
    heardTrouble = other.heardTrouble;
    car = other.car;
    bench = other.bench;
    reuse = other.reuse;
    witness = other.witness;
    handed = other.handed;
  }

  Promises copy() {
    return new Promises(this);
  }

  /** What is kept of each step, in the order of the walk. */
  List<StepBook> books() {
    return walk.places().stream().map(place -> book(place.ref())).toList();
  }

  /** All else that is kept. */
  Kept kept() {
    return new Kept(
        Map.copyOf(loads),
        at,
        worked,
        heardMeasure,
        heardMarking,
        heardLoad,
        heardTurn,
        heardSet,
        heardReading,
        heardTrouble,
        car,
        bench,
        reuse,
        witness,
        handed);
  }

  /** Nothing that was said of a loose fastener closes anything when it is taken back. */
  private static boolean isSafelyTakenBack(SessionEvent event) {
    return !(event instanceof SessionEvent.SayingTakenBack e)
        || Set.of(
                "NEW_HARDWARE_FITTED",
                "REUSE_NOTED",
                "MARKING_NOTED",
                "RUN_IN_BY_HAND",
                "WITNESS_ASKED")
            .contains(e.what());
  }

  /** Checks one decision, or throws. */
  void watch(Intent intent, Decision decision) {
    Set<Class<?>> types = new HashSet<>();
    boolean notNow = decision.events().stream().anyMatch(SessionEvent.NotNow.class::isInstance);
    if (CAN_CHANGE_LOAD.contains(intent.kind()) && !notNow) {
      loadMayChange(true);
      heardLoad = Optional.empty();
      if (intent.kind() == IntentKind.DANGER) {
        breakOff();
      }
    }
    if (!notNow) {
      contradict(intent);
    }
    Optional<Integer> denied = denied(intent, decision);
    closesByReading = false;
    for (SessionEvent event : decision.events()) {
      types.add(event.getClass());
      car.check(this, event);
      bench.check(walk, part(intent, event), event);
      reuse.check(walk, part(intent, event), event);
      witness.check(walk, intent, event);
      check(part(intent, event), event);
      bench = bench.after(event);
      reuse = reuse.after(walk, event);
      witness = witness.after(event);
      car = car.after(walk, event);
      keep(event);
    }
    car.checkAll(this);
    car = car.settled();
    if (denied.isPresent()) {
      boolean open = !book(at).set().called().contains(denied.get());
      require(open, "a position that is denied is open", decision);
    }
    if (intent instanceof Intent.Several several) {
      requireInTurn(several, decision);
    }
    if (intent.kind() == IntentKind.NO || intent.kind() == IntentKind.CORRECTED) {
      require(CONFIRMS.stream().noneMatch(types::contains), "a no is never a yes", decision);
      require(OPENS.stream().noneMatch(types::contains), "a no opens nothing", decision);
    }
    if (SAFER_ONLY.contains(intent.kind())) {
      types.removeAll(SAFER);
      if (decision.events().stream().allMatch(Promises::isSafelyTakenBack)) {
        types.remove(SessionEvent.SayingTakenBack.class);
      }
      require(types.isEmpty(), "a denial or doubt only makes safer", decision);
    }
    if (intent.kind() == IntentKind.UNCLEAR) {
      types.removeAll(
          Set.of(
              SessionEvent.NotUnderstood.class,
              SessionEvent.HearingRemarked.class,
              SessionEvent.NotNow.class));
      require(types.isEmpty(), "an unclear phrase changes nothing", decision);
    }
    checkReply(decision.reply().text(), types, decision);
  }

  /** The part of an answer that an event is about. */
  private static Intent part(Intent intent, SessionEvent event) {
    if (!(intent instanceof Intent.Several several)) {
      return intent;
    }
    return several.parts().get(event instanceof SessionEvent.NewHardwareFitted ? 0 : 1);
  }

  /** The parts of an answer stand in their order, and nothing after one that was refused. */
  private static void requireInTurn(Intent.Several several, Decision decision) {
    boolean fitted = false;
    boolean refused = false;
    for (SessionEvent event : decision.events()) {
      require(!CONFIRMS.contains(event.getClass()), "one answer closes nothing", decision);
      require(!refused, "nothing counts after a part that was refused", decision);
      boolean second =
          event instanceof SessionEvent.MarkingCalled
              || event instanceof SessionEvent.MarkingRefused
              || event instanceof SessionEvent.RunInByHand
              || event instanceof SessionEvent.FastenerSnug;
      require(fitted || !second, "the first part before the second", decision);
      fitted |= event instanceof SessionEvent.NewHardwareFitted;
      refused |=
          event instanceof SessionEvent.CloseRefused
              || event instanceof SessionEvent.MarkingRefused;
      if (event instanceof SessionEvent.MarkingCalled e) {
        require(several.parts().contains(new Intent.Marking(e.marking())), "as said", decision);
      }
    }
  }

  /** The position at hand that is denied, unless something that was read back is. */
  private Optional<Integer> denied(Intent intent, Decision decision) {
    boolean other =
        decision.events().stream()
            .anyMatch(
                e ->
                    e instanceof SessionEvent.ReadBackDropped
                        || e instanceof SessionEvent.NotNow
                        || e instanceof SessionEvent.StepEntered);
    boolean angle = atAngle(at);
    return intent instanceof Intent.Denied d
            && !other
            && d.denied() == (angle ? IntentKind.ANGLE_COMPLETED : IntentKind.TORQUE_COMPLETED)
            && place(at).step() instanceof Step.Fasten
        ? d.position()
        : Optional.empty();
  }

  /** Whatever else is said to be so, or a break of the work, ends a confirmation. */
  private void contradict(Intent intent) {
    LoadCondition said =
        switch (intent.kind()) {
          case HANGS_FREE -> LoadCondition.FULL_DROOP;
          case WHEELS_CARRY, KNUCKLE_JACKED -> LoadCondition.RIDE_HEIGHT;
          default -> LoadCondition.ANY;
        };
    LoadCondition known = loads.get(intent instanceof Intent.OfSide of ? of.side() : at.side());
    boolean refuted = known != null && said != LoadCondition.ANY && known != said;
    boolean believed = intent.kind() == IntentKind.HANGS_FREE;
    loadMayChange(intent.kind() == IntentKind.RESUME || (refuted && believed));
    if (intent.kind() == IntentKind.RESUME) {
      breakOff();
    }
  }

  /** The program was off and takes the work up: whatever was known about the load is void. */
  void restarted(Decision decision) {
    loadMayChange(true);
    breakOff();
    heardLoad = Optional.empty();
    for (SessionEvent event : decision.events()) {
      boolean closes =
          event instanceof SessionEvent.StepClosed || event instanceof SessionEvent.StageClosed;
      require(!closes, "a restart closes nothing", event);
      car = car.after(walk, event);
      bench = bench.after(event);
      reuse = reuse.after(walk, event);
      witness = witness.after(event);
      keep(event);
    }
  }

  /** What was given before the first word was said. */
  void given(List<SessionEvent> events) {
    for (SessionEvent event : events) {
      witness = witness.after(event);
    }
  }

  private void checkReply(String said, Set<Class<?>> types, Decision decision) {
    require(ReplyPromise.saysNoMoreThan(types, said), "a reply says too much", decision);
    Walk.Place place = place(at);
    if (place.step() instanceof Step.Fasten fasten && fasten.fastener().dependsOnMarking()) {
      boolean known = book(at).marking().isPresent();
      require(
          known || !ReplyPromise.releasesAValue(said),
          "an unread head marking holds back",
          decision);
    }
  }

  /** Between a hand-over and the cautions understood again nothing closes and no load is kept. */
  private void checkHanded(Intent intent, SessionEvent event) {
    if (event instanceof SessionEvent.WorkHandedOver) {
      require(loads.isEmpty(), "no load outlasts a hand-over", event);
      handed = true;
    } else if (event instanceof SessionEvent.CautionsUnderstood) {
      require(
          intent.kind() == IntentKind.CAUTIONS_UNDERSTOOD, "cautions that were understood", event);
      handed = false;
    } else if (event instanceof SessionEvent.WorkResumed) {
      require(intent.kind() == IntentKind.RESUME, "work that goes on when that is said", event);
      handed = false;
    }
    require(!handed || !CLOSES.contains(event.getClass()), "nothing closes handed over", event);
  }

  private void check(Intent intent, SessionEvent event) {
    checkHanded(intent, event);
    if (event instanceof SessionEvent.StageClosed e) {
      checkStage(intent, e);
    } else if (event instanceof SessionEvent.PositionsClosed e) {
      checkPositions(intent, e);
    } else if (event instanceof SessionEvent.StepClosed e) {
      checkStep(intent, e);
    } else if (event instanceof SessionEvent.WitnessAsked e) {
      checkDone(intent, e);
    } else if (event instanceof SessionEvent.ValueCalled e) {
      checkValue(intent, e);
    } else if (event instanceof SessionEvent.LoadConfirmed e) {
      Side read = intent instanceof Intent.OfSide of ? of.side() : null;
      boolean same =
          heardLoad
              .filter(h -> h.side() == e.side() && h.condition() == e.condition())
              .filter(h -> h.proof() == e.proof() && h.height().equals(e.height()))
              .isPresent();
      require(same && read == e.side() && at.side() == e.side(), "a load read back", event);
    } else if (event instanceof SessionEvent.MeasureCalled e) {
      checkCalled(intent, e);
    } else if (event instanceof SessionEvent.Measured e) {
      boolean right = intent.kind() == IntentKind.READ_BACK_RIGHT || again(intent, e.value());
      boolean same = heardMeasure.map(m -> inDegrees(m).equals(inDegrees(e.value()))).orElse(false);
      require(right && same, "a value read back", event);
    } else if (event instanceof SessionEvent.MarkingNoted e) {
      boolean right =
          intent.kind() == IntentKind.READ_BACK_RIGHT || intent instanceof Intent.Marking;
      require(right && heardMarking.equals(Optional.of(e.marking())), "a marking read back", event);
      boolean known = fastener(e.step()).stagesFor(Optional.of(e.marking())).isPresent();
      require(known, "a known marking", event);
    } else if (event instanceof SessionEvent.TurnNoted e) {
      boolean right = intent.kind() == IntentKind.READ_BACK_RIGHT;
      require(right && heardTurn.equals(Optional.of(e.degrees())), "a turn read back", event);
      require(book(e.step()).broken(), "a turn of an angle that was broken off", event);
    } else if (event instanceof SessionEvent.TroubleNoted e) {
      boolean same =
          heardTrouble
              .filter(h -> h.trouble() == e.trouble() && h.position().equals(e.position()))
              .isPresent();
      boolean right = intent.kind() == IntentKind.READ_BACK_RIGHT;
      require(right && same, "what went wrong was read back", event);
    } else if (event instanceof SessionEvent.TroubleSettled e) {
      boolean own = intent.kind() == IntentKind.SETTLED || intent.kind() == IntentKind.NEW_HARDWARE;
      require(own, "settled by its own phrase", event);
      requireNewAgain(e);
    } else if (event instanceof SessionEvent.Loosened) {
      require(intent.kind() == IntentKind.LOOSENED, "loosened by its own phrase", event);
    } else if (event instanceof SessionEvent.SessionEnded e && e.complete()) {
      boolean all = walk.places().stream().allMatch(p -> book(p.ref()).closed());
      require(all, "complete with every step closed", event);
    }
  }

  private static boolean again(Intent intent, Measure value) {
    return said(intent)
        .filter(said -> inDegrees(said, value.unit()).equals(inDegrees(value)))
        .isPresent();
  }

  /** The number, unit and sign of what was called. */
  private record Called(BigDecimal value, Optional<SpokenUnit> unit, boolean signed) {}

  private static Optional<Called> said(Intent intent) {
    if (intent instanceof Intent.OfReading of) {
      return Optional.of(new Called(of.value(), of.unit(), of.signed()));
    }
    return intent instanceof Intent.OfNumber of
        ? Optional.of(new Called(of.number().value(), of.unit(), false))
        : Optional.empty();
  }

  private static Measure inDegrees(Called said, MeasureUnit unit) {
    boolean minutes = said.unit().filter(u -> u == SpokenUnit.MINUTES).isPresent();
    return inDegrees(new Measure(said.value(), minutes ? MeasureUnit.MINUTE : unit));
  }

  private static Measure inDegrees(Measure value) {
    return value.unit() == MeasureUnit.MINUTE
        ? new Measure(
            value.amount().divide(BigDecimal.valueOf(60), 4, RoundingMode.HALF_UP),
            MeasureUnit.DEGREE)
        : value;
  }

  /** What is called is what is read back, with its sign where a value may be below zero. */
  private void checkCalled(Intent intent, SessionEvent.MeasureCalled e) {
    Step.Limits limits = ((Step.Measure) place(e.step()).step()).limits();
    boolean below = Stream.of(limits.least(), limits.most()).anyMatch(Promises::isBelowZero);
    Called said = said(intent).orElseThrow();
    require(again(intent, e.value()), "the measured value that was said", e);
    require(!below || said.signed() || said.value().signum() == 0, "a sign that was said", e);
    require(below || e.value().amount().signum() >= 0, "no value below zero", e);
  }

  private static boolean isBelowZero(Optional<BigDecimal> limit) {
    return limit.filter(l -> l.signum() < 0).isPresent();
  }

  private void checkValue(Intent intent, SessionEvent.ValueCalled e) {
    if (heardReading.isPresent()) {
      boolean right =
          intent.kind() == IntentKind.READ_BACK_RIGHT
              || (intent instanceof Intent.OfNumber again
                  && again.number().value().compareTo(e.value()) == 0);
      boolean same = heardReading.get().value().compareTo(e.value()) == 0;
      closesByReading = heardReading.get().closes();
      require(right && same, "a reading read back", e);
      checkReading(e);
      return;
    }
    Intent.OfNumber said = (Intent.OfNumber) intent;
    require(said.number().value().compareTo(e.value()) == 0, "the value that was said", e);
    Stage stage = stages(e.step()).get(e.stage() - 1);
    BigDecimal before =
        stage instanceof Stage.AngleStage
            ? book(e.step()).turned().orElse(BigDecimal.ZERO)
            : BigDecimal.ZERO;
    require(
        stage.amount().subtract(before).compareTo(e.value()) == 0,
        "the value of the specification",
        e);
    boolean pause = said.number().style() == SpokenNumber.Style.WITH_PAUSE;
    require(!pause, "a value with a pause in it is read back", e);
    boolean words = said.number().style() == SpokenNumber.Style.WORDS;
    require(!words || !ConfusableNumbers.isConfusable(e.value()), "digits where confusable", e);
    String unit = said.unit().map(Enum::name).orElse("none");
    String right =
        stage instanceof Stage.AngleStage
            ? "DEGREES"
            : switch (((Stage.TorqueStage) stage).target().unit()) {
              case POUND_FORCE_FOOT -> "FOOT_POUNDS";
              case POUND_FORCE_INCH -> "INCH_POUNDS";
              default -> "NEWTON_METRES";
            };
    require(unit.equals("none") || unit.equals(right), "the unit of the specification", e);
    if (stage instanceof Stage.TorqueStage torque) {
      require(!unit.equals("none") || !mixed(), "the unit where units are mixed", e);
      bench.checkTorque(walk, fastener(e.step()), torque, e);
    }
  }

  private void checkReading(SessionEvent.ValueCalled e) {
    Stage stage = stages(e.step()).get(e.stage() - 1);
    if (stage instanceof Stage.TorqueStage torque) {
      boolean nominal = e.value().compareTo(torque.amount()) == 0;
      BigDecimal off = e.value().subtract(torque.target().amount()).abs();
      boolean within = nominal || off.compareTo(torque.plusMinus()) <= 0;
      require(within, "a reading within the tolerance", e);
      bench.checkTorque(walk, fastener(e.step()), torque, e);
      if (!nominal && torque.form() != Stage.TorqueStage.Form.RANGE) {
        bench.checkReading(walk, torque, e);
      }
      return;
    }
    Stage.AngleStage angle = (Stage.AngleStage) stage;
    require(!book(e.step()).broken(), "an angle that was not broken off", e);
    BigDecimal all = e.value().add(book(e.step()).turned().orElse(BigDecimal.ZERO));
    BigDecimal off = all.subtract(angle.target().degrees()).abs();
    require(off.compareTo(angle.plusMinus()) <= 0, "a reading within the tolerance", e);
  }

  /** Whether the procedure has torques in more than one unit. */
  private boolean mixed() {
    return walk.places().stream()
            .filter(place -> place.step() instanceof Step.Fasten)
            .flatMap(place -> ((Step.Fasten) place.step()).fastener().variants().stream())
            .flatMap(variant -> variant.stages().stream())
            .filter(Stage.TorqueStage.class::isInstance)
            .map(stage -> ((Stage.TorqueStage) stage).target().unit())
            .distinct()
            .count()
        > 1;
  }

  /** A one-time fastener of a set that went wrong is renewed, not repaired. */
  private void requireNewAgain(SessionEvent.TroubleSettled e) {
    boolean ofSet = book(e.step()).wrong().flatMap(SessionEvent.TroubleNoted::position).isPresent();
    boolean once =
        place(e.step()).step() instanceof Step.Fasten f && f.fastener().part().oneTimeUse();
    require(
        !(ofSet && once) || e.remedy() == Remedy.NEW_HARDWARE, "what is used once is renewed", e);
  }

  private void settle(SessionEvent.TroubleSettled e) {
    StepBook book = book(e.step());
    if (book.wrong().isEmpty()) {
      return;
    }
    boolean fastener = place(e.step()).step() instanceof Step.Fasten;
    books.put(
        e.step(),
        fastener
            ? book.settled(e.remedy() == Remedy.NEW_HARDWARE, fastener(e.step()).set().count())
            : book.wrong(Optional.empty()));
  }

  private void checkPositions(Intent intent, SessionEvent.PositionsClosed e) {
    StepBook book = book(e.step());
    boolean torque = stages(e.step()).get(e.stage() - 1) instanceof Stage.TorqueStage;
    IntentKind wanted = torque ? IntentKind.TORQUE_COMPLETED : IntentKind.ANGLE_COMPLETED;
    require(e.step().equals(at), "a position closed at the step at hand", e);
    require(book.wrong().isEmpty(), "nothing closes before what went wrong is settled", e);
    require(e.stage() == book.stages() + 1, "stages in order, in one go", e);
    require(!book.broken(), "an angle that was not broken off", e);
    require(ready(e.step()), "hardware, marking and load before a stage", e);
    require(book.called() == e.stage(), "a value called for this stage", e);
    boolean turned =
        closesByReading
            || (intent.kind() == IntentKind.READ_BACK_RIGHT
                && !torque
                && book.turned().isPresent());
    Intent said = turned && heardSet.isEmpty() ? new Intent.Plain(wanted) : intent;
    book.set().check(said, e, fastener(e.step()), wanted, heardSet);
  }

  private void checkStage(Intent intent, SessionEvent.StageClosed e) {
    StepBook book = book(e.step());
    boolean torque = stages(e.step()).get(e.stage() - 1) instanceof Stage.TorqueStage;
    IntentKind wanted = torque ? IntentKind.TORQUE_COMPLETED : IntentKind.ANGLE_COMPLETED;
    boolean turnedBefore =
        intent.kind() == IntentKind.READ_BACK_RIGHT && !torque && book.turned().isPresent();
    boolean ofSet =
        fastener(e.step()).set().several() && intent.kind() == IntentKind.READ_BACK_RIGHT;
    require(
        intent.kind() == wanted || turnedBefore || ofSet || closesByReading,
        "a stage closed by its own phrase",
        e);
    require(book.set().complete(fastener(e.step())), "every one of a set called", e);
    require(e.step().equals(at), "a stage closed at the step at hand", e);
    require(book.wrong().isEmpty(), "nothing closes before what went wrong is settled", e);
    require(e.stage() == book.stages() + 1, "stages in order, in one go", e);
    require(!book.broken(), "an angle that was not broken off", e);
    require(book.called() == e.stage(), "a value called for this stage", e);
    require(ready(e.step()), "hardware, marking and load before a stage", e);
  }

  private void checkStep(Intent intent, SessionEvent.StepClosed e) {
    require(e.step().equals(at), "a step closed at the step at hand", e);
    require(!book(e.step()).closed(), "closed once", e);
    require(
        book(e.step()).wrong().isEmpty(), "nothing closes before what went wrong is settled", e);
    boolean seen = witness.done().contains(e.step());
    require(
        !seen || intent.kind() == IntentKind.WITNESSED, "a witness closes what waits for him", e);
    checkWork(intent, e.step(), seen, e);
  }

  /** What waits for its witness is done just as what is closed; or a witness is taken back. */
  private void checkDone(Intent intent, SessionEvent.WitnessAsked e) {
    boolean closed = book(e.step()).closed();
    require(closed || !SAFER_ONLY.contains(intent.kind()), "a denial or doubt only makes safer", e);
    require(closed || e.step().equals(at), "work that is done at the step at hand", e);
    require(
        book(e.step()).wrong().isEmpty(), "nothing closes before what went wrong is settled", e);
    if (!closed) {
      checkWork(intent, e.step(), false, e);
    }
  }

  private void checkWork(Intent intent, StepRef ref, boolean seen, SessionEvent e) {
    Step step = place(ref).step();
    if (step instanceof Step.Fasten) {
      boolean all =
          fastener(ref)
              .stagesFor(book(ref).marking())
              .filter(stages -> stages.size() == book(ref).stages())
              .isPresent();
      require(all, "all stages closed", e);
      require(ready(ref), "hardware, marking and load before closing", e);
    } else if (step instanceof Step.Load load) {
      require(loads.get(ref.side()) == load.condition(), "the load of a load step", e);
    } else if (step instanceof Step.Do todo && todo.check().isPresent() && !seen) {
      require(intent.kind() == IntentKind.CHECK_PASSED, "a check that passed", e);
    }
  }

  private boolean ready(StepRef ref) {
    Fastener fastener = fastener(ref);
    boolean load =
        fastener.needs() == LoadCondition.ANY || loads.get(ref.side()) == fastener.needs();
    boolean hardware = !fastener.part().oneTimeUse() || book(ref).hardware();
    boolean marking = !fastener.dependsOnMarking() || book(ref).marking().isPresent();
    return load && hardware && marking;
  }

  private void keep(SessionEvent event) {
    if (event instanceof SessionEvent.StepEntered e) {
      enter(e.step());
    } else if (event instanceof SessionEvent.StepClosed e) {
      books.put(e.step(), book(e.step()).closed(true));
      loadMayChange(!(place(e.step()).step() instanceof Step.Load) && changesLoad(e.step()));
    } else if (event instanceof SessionEvent.WitnessAsked e) {
      books.put(e.step(), book(e.step()).closed(false));
      loadMayChange(changesLoad(e.step()));
    } else if (event instanceof SessionEvent.StageClosed e) {
      books.put(e.step(), book(e.step()).go(e.stage(), 0));
      SetBook set = book(e.step()).set();
      if (set.doubted() && atAngle(e.step())) {
        books.put(e.step(), book(e.step()).with(set, true));
      }
    } else if (event instanceof SessionEvent.PositionsClosed e) {
      SetBook set = book(e.step()).set().with(e.positions().numbers());
      boolean doubt = set.doubted() && atAngle(e.step()) && !set.complete(fastener(e.step()));
      books.put(e.step(), book(e.step()).with(set, doubt));
      heardSet = Optional.empty();
    } else if (event instanceof SessionEvent.PositionsTakenBack e) {
      boolean angle = atAngle(e.step());
      SetBook old = book(e.step()).set();
      SetBook set =
          angle
              ? old.opened(e.positions().numbers(), fastener(e.step()))
              : old.without(e.positions().numbers());
      StepBook next = book(e.step()).with(set, angle);
      books.put(e.step(), angle ? next.go(next.stages(), 0) : next);
    } else if (event instanceof SessionEvent.ValueCalled e) {
      books.put(e.step(), book(e.step()).go(book(e.step()).stages(), e.stage()));
      heardReading = Optional.empty();
    } else if (event instanceof SessionEvent.ValueDropped e) {
      books.put(e.step(), book(e.step()).go(book(e.step()).stages(), 0));
    } else if (event instanceof SessionEvent.StageTakenBack e) {
      StepBook next = book(e.step()).closed(false).go(e.stage() - 1, 0);
      Fastener fastener = fastener(e.step());
      SetBook all = new SetBook(positions(fastener), next.set().last(), false, next.set().far());
      books.put(e.step(), fastener.set().several() ? next.with(all.lastTakenBack(), false) : next);
    } else if (event instanceof SessionEvent.ClosingTakenBack e) {
      books.put(e.step(), book(e.step()).closed(false).go(0, 0));
      withdrawn(e.step());
    } else if (event instanceof SessionEvent.StepReopened e) {
      books.put(e.step(), StepBook.EMPTY);
      withdrawn(e.step());
    } else if (event instanceof SessionEvent.ReopenedTight e) {
      books.put(e.step(), tight(e.step()));
    } else if (event instanceof SessionEvent.ClosingLapsed e) {
      books.put(e.step(), mayBeTight(e.step()) ? tight(e.step()) : StepBook.EMPTY);
      withdrawn(e.step());
    } else if (event instanceof SessionEvent.TighteningInterrupted e) {
      books.put(e.step(), book(e.step()).broken(atAngle(e.step())));
    } else if (event instanceof SessionEvent.TurnNoted e) {
      Stage.AngleStage angle = (Stage.AngleStage) stages(e.step()).get(book(e.step()).stages());
      BigDecimal most = angle.target().degrees().add(angle.plusMinus());
      BigDecimal least = angle.target().degrees().subtract(angle.plusMinus());
      boolean tooFar = e.degrees().compareTo(most) > 0;
      boolean reached = !tooFar && e.degrees().compareTo(least) >= 0;
      books.put(e.step(), book(e.step()).turned(e.degrees(), tooFar, reached));
    } else if (event instanceof SessionEvent.Loosened e) {
      StepBook book = book(e.step());
      boolean none = book.turned().filter(t -> t.signum() == 0).isPresent();
      boolean some = !book.set().called().isEmpty();
      boolean worn = ReusePromises.wears(fastener(e.step()).part()) && (book.stages() > 0 || some);
      boolean used = worn || (atAngle(e.step()) && (book.broken() || some || !none));
      books.put(e.step(), used ? StepBook.EMPTY : StepBook.loose(book.hardware(), book.marking()));
    } else {
      keepHeard(event);
    }
  }

  private void keepHeard(SessionEvent event) {
    if (event instanceof SessionEvent.NewHardwareFitted e) {
      books.put(e.step(), StepBook.loose(true, Optional.empty()));
    } else if (event instanceof SessionEvent.ReuseNoted e) {
      books.put(e.step(), StepBook.loose(true, Optional.empty()));
    } else if (event instanceof SessionEvent.MarkingNoted e) {
      books.put(e.step(), StepBook.loose(book(e.step()).hardware(), Optional.of(e.marking())));
      heardMarking = Optional.empty();
    } else if (event instanceof SessionEvent.MarkingCalled e) {
      heardMarking = Optional.of(e.marking());
    } else if (event instanceof SessionEvent.MeasureCalled e) {
      heardMeasure = Optional.of(e.value());
    } else if (event instanceof SessionEvent.LoadCalled e) {
      heardLoad = Optional.of(e);
    } else if (event instanceof SessionEvent.ReadBackDropped) {
      heardLoad = Optional.empty();
      heardMeasure = Optional.empty();
      heardMarking = Optional.empty();
      heardTurn = Optional.empty();
      heardSet = Optional.empty();
      heardReading = Optional.empty();
      heardTrouble = Optional.empty();
    } else if (event instanceof SessionEvent.TroubleCalled e) {
      heardTrouble = Optional.of(e);
    } else if (event instanceof SessionEvent.TroubleNoted e) {
      books.put(e.step(), book(e.step()).wrong(Optional.of(e)));
      heardTrouble = Optional.empty();
    } else if (event instanceof SessionEvent.TroubleSettled e) {
      settle(e);
    } else if (event instanceof SessionEvent.ReadingCalled e) {
      heardReading = Optional.of(e);
    } else if (event instanceof SessionEvent.PositionsCalled e) {
      heardSet = Optional.of(e.positions());
    } else if (event instanceof SessionEvent.TurnCalled e) {
      heardTurn = Optional.of(e.degrees());
    } else if (event instanceof SessionEvent.SayingTakenBack e) {
      takenBack(e);
    } else if (event instanceof SessionEvent.RideHeightNoted) {
      loadMayChange(true);
    } else if (event instanceof SessionEvent.LoadRefused e
        && e.missing() == Missing.HEIGHT_WITHIN_TOLERANCE) {
      loadMayChange(true);
    } else if (event instanceof SessionEvent.LoadConfirmed e) {
      heardLoad = Optional.empty();
      loads.put(e.side(), e.condition());
    } else if (event instanceof SessionEvent.LoadChanged) {
      loadMayChange(true);
    }
  }

  private void enter(StepRef step) {
    if (!step.equals(at)) {
      breakOff();
    }
    boolean other = step.side() != Side.CAR && worked != Side.CAR && worked != step.side();
    loadMayChange(other || changesLoad(step));
    worked = step.side() == Side.CAR ? worked : step.side();
    at = step;
  }

  private void loadMayChange(boolean may) {
    if (!may) {
      return;
    }
    loads.clear();
    boolean needsLoad =
        place(at).step() instanceof Step.Fasten f && f.fastener().needs() != LoadCondition.ANY;
    if (needsLoad) {
      breakOff();
    }
  }

  /** The tightening at hand is left or interrupted. */
  private void breakOff() {
    if (!book(at).closed() && place(at).step() instanceof Step.Fasten) {
      boolean same = atAngle(at) && book(at).broken();
      books.put(at, same ? book(at) : book(at).broken(atAngle(at)));
    }
  }

  private void takenBack(SessionEvent.SayingTakenBack e) {
    StepBook book = book(e.step());
    switch (EventKind.valueOf(e.what())) {
      case NEW_HARDWARE_FITTED, REUSE_NOTED -> books.put(e.step(), StepBook.EMPTY);
      case MARKING_NOTED -> books.put(e.step(), StepBook.loose(book.hardware(), Optional.empty()));
      case TROUBLE_NOTED -> books.put(e.step(), book.wrong(Optional.empty()));
      case TURN_NOTED -> books.put(e.step(), book.broken(true));
      default -> {
        // nothing that is kept here
      }
    }
  }

  /** A ride height that was noted is withdrawn with its step. */
  private void withdrawn(StepRef step) {
    loadMayChange(place(step).step() instanceof Step.Measure m && m.notesRideHeight());
  }

  private boolean atAngle(StepRef ref) {
    if (!(place(ref).step() instanceof Step.Fasten) || book(ref).stages() == 0) {
      return false;
    }
    List<Stage> stages = stages(ref);
    return book(ref).stages() < stages.size()
        && stages.get(book(ref).stages()) instanceof Stage.AngleStage;
  }

  private boolean mayBeTight(StepRef ref) {
    return place(ref).step() instanceof Step.Fasten
        && !fastener(ref).part().oneTimeUse()
        && stages(ref).stream().anyMatch(Stage.AngleStage.class::isInstance);
  }

  /** Closed once and perhaps still tight: all before the first angle, and that in part. */
  private StepBook tight(StepRef ref) {
    List<Stage> stages = stages(ref);
    int before = 0;
    while (stages.get(before) instanceof Stage.TorqueStage) {
      before++;
    }
    SetBook set = new SetBook(Set.of(), Set.of(), fastener(ref).set().several());
    return book(ref).closed(false).go(before, 0).with(set, true);
  }

  private static Set<Integer> positions(Fastener fastener) {
    return IntStream.rangeClosed(1, fastener.set().count())
        .boxed()
        .collect(Collectors.toUnmodifiableSet());
  }

  private boolean changesLoad(StepRef ref) {
    return place(ref).step().head().changesLoad();
  }

  StepBook book(StepRef ref) {
    return books.getOrDefault(ref, StepBook.EMPTY);
  }

  Walk.Place place(StepRef ref) {
    return walk.places().get(walk.indexOf(ref));
  }

  private Fastener fastener(StepRef ref) {
    return ((Step.Fasten) place(ref).step()).fastener();
  }

  Walk walk() {
    return walk;
  }

  private List<Stage> stages(StepRef ref) {
    List<Stage> stages =
        fastener(ref)
            .stagesFor(book(ref).marking())
            .orElseThrow(
                () -> new AssertionError("broken: a known marking before a stage, at " + ref));
    return bench.raised(ref, fastener(ref), stages);
  }

  static void require(boolean holds, String promise, Object where) {
    if (!holds) {
      throw new AssertionError("broken: " + promise + ", at " + Objects.toString(where));
    }
  }
}
