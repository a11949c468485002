package org.undercall.core.decision;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.ConfusableNumbers;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.Measure;
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
      EnumSet.of(IntentKind.DENIED, IntentKind.DANGER, IntentKind.SHORT_ANSWER);

  /** What opens, cancels, refuses or answers. */
  private static final Set<Class<?>> SAFER =
      Set.of(
          SessionEvent.CloseRefused.class,
          SessionEvent.ValueDropped.class,
          SessionEvent.ReadBackDropped.class,
          SessionEvent.NoteDropped.class,
          SessionEvent.LoadChanged.class,
          SessionEvent.StagesVoided.class,
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
      Optional<SessionEvent.LoadCalled> heardLoad) {}

  private final Walk walk;
  private final Map<StepRef, StepBook> books = new HashMap<>();
  private final Map<Side, LoadCondition> loads = new HashMap<>();
  private StepRef at;
  private Side worked = Side.CAR;
  private Optional<Measure> heardMeasure = Optional.empty();
  private Optional<HeadMarking> heardMarking = Optional.empty();
  private Optional<SessionEvent.LoadCalled> heardLoad = Optional.empty();

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
    return new Kept(Map.copyOf(loads), at, worked, heardMeasure, heardMarking, heardLoad);
  }

  /** Checks one decision, or throws. */
  void watch(Intent intent, Decision decision) {
    Set<Class<?>> types = new HashSet<>();
    boolean notNow = decision.events().stream().anyMatch(SessionEvent.NotNow.class::isInstance);
    if (CAN_CHANGE_LOAD.contains(intent.kind()) && !notNow) {
      loadMayChange(true);
      heardLoad = Optional.empty();
    }
    for (SessionEvent event : decision.events()) {
      types.add(event.getClass());
      check(intent, event);
      keep(event);
    }
    if (SAFER_ONLY.contains(intent.kind())) {
      types.removeAll(SAFER);
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

  /** The program was off and takes the work up: whatever was known about the load is void. */
  void restarted(Decision decision, long secondsAway) {
    if (secondsAway > 120) {
      loadMayChange(true);
      heardLoad = Optional.empty();
    }
    for (SessionEvent event : decision.events()) {
      boolean closes =
          event instanceof SessionEvent.StepClosed || event instanceof SessionEvent.StageClosed;
      require(!closes, "a restart closes nothing", event);
      keep(event);
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

  private void check(Intent intent, SessionEvent event) {
    if (event instanceof SessionEvent.StageClosed e) {
      checkStage(intent, e);
    } else if (event instanceof SessionEvent.StepClosed e) {
      checkStep(intent, e);
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
    } else if (event instanceof SessionEvent.Measured e) {
      boolean right = intent.kind() == IntentKind.READ_BACK_RIGHT || again(intent, e.value());
      require(right && heardMeasure.equals(Optional.of(e.value())), "a value read back", event);
    } else if (event instanceof SessionEvent.MarkingNoted e) {
      boolean right =
          intent.kind() == IntentKind.READ_BACK_RIGHT || intent instanceof Intent.Marking;
      require(right && heardMarking.equals(Optional.of(e.marking())), "a marking read back", event);
      boolean known = fastener(e.step()).stagesFor(Optional.of(e.marking())).isPresent();
      require(known, "a known marking", event);
    } else if (event instanceof SessionEvent.SessionEnded e && e.complete()) {
      boolean all = walk.places().stream().allMatch(p -> book(p.ref()).closed());
      require(all, "complete with every step closed", event);
    }
  }

  private static boolean again(Intent intent, Measure value) {
    return intent instanceof Intent.OfNumber of
        && of.number().value().compareTo(value.amount()) == 0;
  }

  private void checkValue(Intent intent, SessionEvent.ValueCalled e) {
    Intent.OfNumber said = (Intent.OfNumber) intent;
    require(said.number().value().compareTo(e.value()) == 0, "the value that was said", e);
    Stage stage = stages(e.step()).get(e.stage() - 1);
    require(stage.amount().compareTo(e.value()) == 0, "the value of the specification", e);
    boolean words = said.number().style() == SpokenNumber.Style.WORDS;
    require(!words || !ConfusableNumbers.isConfusable(e.value()), "digits where confusable", e);
    String unit = said.unit().map(Enum::name).orElse("none");
    String right =
        stage instanceof Stage.AngleStage
            ? "DEGREES"
            : ((Stage.TorqueStage) stage).target().unit().name().contains("FOOT")
                ? "FOOT_POUNDS"
                : "NEWTON_METRES";
    require(unit.equals("none") || unit.equals(right), "the unit of the specification", e);
  }

  private void checkStage(Intent intent, SessionEvent.StageClosed e) {
    StepBook book = book(e.step());
    boolean torque = stages(e.step()).get(e.stage() - 1) instanceof Stage.TorqueStage;
    IntentKind wanted = torque ? IntentKind.TORQUE_COMPLETED : IntentKind.ANGLE_COMPLETED;
    require(intent.kind() == wanted, "a stage closed by its own phrase", e);
    require(e.step().equals(at), "a stage closed at the step at hand", e);
    require(e.stage() == book.stages() + 1, "stages in order, in one go", e);
    require(book.called() == e.stage(), "a value called for this stage", e);
    require(ready(e.step()), "hardware, marking and load before a stage", e);
  }

  private void checkStep(Intent intent, SessionEvent.StepClosed e) {
    require(e.step().equals(at), "a step closed at the step at hand", e);
    require(!book(e.step()).closed(), "closed once", e);
    Step step = place(e.step()).step();
    if (step instanceof Step.Fasten) {
      require(book(e.step()).stages() == stages(e.step()).size(), "all stages closed", e);
      require(ready(e.step()), "hardware, marking and load before closing", e);
    } else if (step instanceof Step.Load load) {
      require(loads.get(e.step().side()) == load.condition(), "the load of a load step", e);
    } else if (step instanceof Step.Do todo && todo.check().isPresent()) {
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
    } else if (event instanceof SessionEvent.StageClosed e) {
      books.put(e.step(), book(e.step()).go(e.stage(), 0));
    } else if (event instanceof SessionEvent.ValueCalled e) {
      books.put(e.step(), book(e.step()).go(book(e.step()).stages(), e.stage()));
    } else if (event instanceof SessionEvent.ValueDropped e) {
      books.put(e.step(), book(e.step()).go(book(e.step()).stages(), 0));
    } else if (event instanceof SessionEvent.StagesVoided e) {
      books.put(e.step(), book(e.step()).go(0, 0));
    } else if (event instanceof SessionEvent.StepReopened e) {
      books.put(e.step(), StepBook.EMPTY);
    } else if (event instanceof SessionEvent.ClosingTakenBack e) {
      books.put(e.step(), book(e.step()).closed(false).go(0, 0));
    } else {
      keepHeard(event);
    }
  }

  private void keepHeard(SessionEvent event) {
    if (event instanceof SessionEvent.NewHardwareFitted e) {
      books.put(e.step(), new StepBook(false, true, Optional.empty(), 0, 0));
    } else if (event instanceof SessionEvent.MarkingNoted e) {
      books.put(
          e.step(), new StepBook(false, book(e.step()).hardware(), Optional.of(e.marking()), 0, 0));
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
    } else if (event instanceof SessionEvent.LoadConfirmed e) {
      heardLoad = Optional.empty();
      loads.put(e.side(), e.condition());
    } else if (event instanceof SessionEvent.LoadChanged) {
      loadMayChange(true);
    }
  }

  private void enter(StepRef step) {
    if (!step.equals(at)) {
      books.put(at, book(at).closed() ? book(at) : book(at).go(0, 0));
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
    if (needsLoad && !book(at).closed()) {
      books.put(at, book(at).go(0, 0));
    }
  }

  private boolean changesLoad(StepRef ref) {
    return place(ref).step().head().changesLoad();
  }

  private StepBook book(StepRef ref) {
    return books.getOrDefault(ref, StepBook.EMPTY);
  }

  private Walk.Place place(StepRef ref) {
    return walk.places().get(walk.indexOf(ref));
  }

  private Fastener fastener(StepRef ref) {
    return ((Step.Fasten) place(ref).step()).fastener();
  }

  private List<Stage> stages(StepRef ref) {
    return fastener(ref)
        .stagesFor(book(ref).marking())
        .orElseThrow(() -> new AssertionError("broken: a known marking before a stage, at " + ref));
  }

  private static void require(boolean holds, String promise, Object where) {
    if (!holds) {
      throw new AssertionError("broken: " + promise + ", at " + Objects.toString(where));
    }
  }
}
