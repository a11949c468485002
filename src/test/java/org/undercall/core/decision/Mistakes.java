package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Reuse;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Tool;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.TorqueUnit;

/** How the programs of {@link SeededBugs} go wrong. */
final class Mistakes {
  private Mistakes() {}

  static SessionEvent closedOpposite(SessionEvent.StepClosed e) {
    return new SessionEvent.StepClosed(new StepRef(e.step().id(), opposite(e.step().side())));
  }

  static SessionEvent confirmedOpposite(SessionEvent.LoadConfirmed e) {
    return new SessionEvent.LoadConfirmed(opposite(e.side()), e.condition(), e.proof(), e.height());
  }

  static Side opposite(Side side) {
    return side == Side.CAR ? side : side == Side.LEFT ? Side.RIGHT : Side.LEFT;
  }

  static Intent rightSide(Session session, Intent intent) {
    return intent instanceof Intent.OfSide of
            && session.talk().pending().orElse(null) instanceof Pending.Load load
        ? new Intent.OfSide(of.kind(), load.side())
        : intent;
  }

  static Intent denied(Session session, Intent intent) {
    return intent.equals(new Intent.Denied(IntentKind.STEP_COMPLETED))
        ? new Intent.Plain(IntentKind.STEP_COMPLETED)
        : intent;
  }

  static Session anyLoad(Session session, SessionEvent event) {
    Session after = session.after(event);
    boolean needed = Session.needs(after.place()) != LoadCondition.ANY;
    return event instanceof SessionEvent.LoadConfirmed e && needed && !isSet(after)
        ? after.with(after.loads().withConfirmed(e.side(), Session.needs(after.place()), e.proof()))
        : after;
  }

  static List<SessionEvent> confirmAtOnce(List<SessionEvent> events) {
    return events.stream()
        .flatMap(
            e ->
                e instanceof SessionEvent.LoadCalled c
                    ? Stream.of(
                        e,
                        new SessionEvent.LoadConfirmed(
                            c.side(), c.condition(), c.proof(), c.height()))
                    : Stream.of(e))
        .toList();
  }

  static Session nobodyWorked(Session session, String technician) {
    Phase phase = session.phase();
    if (phase != Phase.WITNESS && phase != Phase.WITNESS_READ_BACK) {
      return session;
    }
    Watch watch = new Watch(Set.of(), session.state().watch().asked(), Optional.empty());
    return watched(session, watch).with(session.account().by(technician));
  }

  static Session stillSeen(Session session, SessionEvent event) {
    Session after = session.after(event);
    Watch before = session.state().watch();
    boolean opened =
        before.by().isPresent() && session.ref().equals(after.ref()) && !after.state().closed();
    return opened ? watched(after, new Watch(before.hands(), before.asked(), before.by())) : after;
  }

  static Session seenElsewhere(Session session) {
    Watch mine = session.state().watch();
    return session.progress().states().stream()
        .flatMap(state -> state.watch().by().stream())
        .findFirst()
        .map(by -> watched(session, new Watch(mine.hands(), mine.asked(), Optional.of(by))))
        .orElse(session);
  }

  static Session nobodyAsked(Session session) {
    boolean off = session.state().status() == StepState.Status.PUT_OFF;
    Watch mine = session.state().watch();
    return off && !mine.waits()
        ? watched(session, new Watch(mine.hands(), false, Optional.of("NN")))
        : session;
  }

  static List<SessionEvent> seenAtOnce(List<SessionEvent> events) {
    return events.stream()
        .flatMap(
            e ->
                e instanceof SessionEvent.WitnessCalled c
                    ? Stream.of(e, new SessionEvent.Witnessed(c.step(), c.witness(), "all"))
                    : Stream.of(e))
        .toList();
  }

  static Intent signed(Session session, Intent.OfNumber said) {
    return session.phase() == Phase.MEASURE && said.kind() == IntentKind.VALUE_CALLED
        ? new Intent.OfReading(IntentKind.READING_CALLED, said.number().value(), said.unit(), true)
        : said;
  }

  static Intent rightName(Session session, Intent intent) {
    return intent.kind() == IntentKind.WITNESSED
            && session.talk().pending().orElse(null) instanceof Pending.Seen seen
        ? new Intent.OfWitness(IntentKind.WITNESSED, seen.witness())
        : intent;
  }

  private static Session watched(Session session, Watch watch) {
    int at = session.progress().at();
    return session.with(session.progress().change(at, s -> s.watch(watch)));
  }

  static Session angleFirst(Session session, Intent intent) {
    boolean two =
        session.phase() == Phase.TORQUE
            && session.stages().size() == 2
            && intent.kind() == IntentKind.ANGLE_COMPLETED
            && intent instanceof Intent.OfNumber of
            && of.number().value().compareTo(session.stages().get(1).amount()) == 0;
    return two ? tightened(session, session.tightening().withStagesClosed(1)) : session;
  }

  static Session oldHardware(Session session, SessionEvent event) {
    Session after = session.after(event);
    return event instanceof SessionEvent.StepReopened e
            && after.ref().equals(e.step())
            && after.place().step() instanceof Step.Fasten
        ? tightened(after, newPart(after))
        : after;
  }

  static Tightening newPart(Session session) {
    return session.tightening().withNewHardware();
  }

  static Tightening marked(Session session, String marking) {
    return session.tightening().withMarking(new HeadMarking(marking));
  }

  static Session tightened(Session session, Tightening tightening) {
    int at = session.progress().at();
    return session.with(session.progress().change(at, s -> s.with(tightening)));
  }

  static SessionEvent knownMarking(SessionEvent event) {
    return event instanceof SessionEvent.MarkingNoted e
        ? new SessionEvent.MarkingNoted(e.step(), new HeadMarking("12.9"))
        : event;
  }

  static Session otherVariant(Session session, Intent intent) {
    boolean depends =
        session.phase() == Phase.TORQUE
            && !isSet(session)
            && session.tightening().marking().isPresent();
    return depends ? tightened(session, marked(session, "10.9")) : session;
  }

  static Intent rightValue(Session session, Intent intent) {
    boolean stage = session.phase() == Phase.TORQUE || session.phase() == Phase.ANGLE;
    return stage && intent instanceof Intent.OfNumber n && n.kind() != IntentKind.ARCH_HEIGHT
        ? new Intent.OfNumber(
            n.kind(), new SpokenNumber(session.stage().amount(), n.number().style()), n.unit())
        : intent;
  }

  static Intent plain(Intent.OfNumber said, SpokenNumber.Style style) {
    SpokenNumber number = new SpokenNumber(said.number().value(), style);
    return new Intent.OfNumber(said.kind(), number, Optional.empty());
  }

  static Intent withoutPause(Intent.OfNumber said) {
    return said.number().style() == SpokenNumber.Style.WITH_PAUSE ? digits(said) : said;
  }

  static Intent digits(Intent.OfNumber said) {
    SpokenNumber number =
        new SpokenNumber(said.number().value(), SpokenNumber.Style.DIGIT_BY_DIGIT);
    return new Intent.OfNumber(said.kind(), number, said.unit());
  }

  static Session calledAlready(Session session, Intent intent) {
    boolean stage = session.phase() == Phase.TORQUE || session.phase() == Phase.ANGLE;
    return stage
        ? tightened(session, session.tightening().withCalled(Optional.of(session.stage().amount())))
        : session;
  }

  static Intent completed() {
    return new Intent.Plain(IntentKind.STEP_COMPLETED);
  }

  static SessionEvent complete(SessionEvent event) {
    return event instanceof SessionEvent.SessionEnded
        ? new SessionEvent.SessionEnded(true, 0)
        : event;
  }

  static List<SessionEvent> closeSnug(List<SessionEvent> events) {
    return events.stream()
        .flatMap(
            e ->
                e instanceof SessionEvent.FastenerSnug s
                    ? Stream.of(e, new SessionEvent.StepClosed(s.step()))
                    : Stream.of(e))
        .toList();
  }

  static boolean failed(Session session, Intent intent) {
    return session.phase() == Phase.CHECK && intent.kind() == IntentKind.CHECK_FAILED;
  }

  static Session wheelsOn(Session session) {
    Car car = session.car();
    return session.with(new Car(car.stance(), Map.of(), car.lifted()));
  }

  static Session onGround(Session session) {
    Car car = session.car();
    return session.with(new Car(Car.Stance.ON_WHEELS, car.wheels(), car.lifted()));
  }

  static Session excused(Session session) {
    int at = session.progress().at();
    OrderReason reason = OrderReason.AS_THE_MAKER_SAYS;
    return session.with(session.progress().change(at, s -> s.outOfOrder(reason)));
  }

  static Session turnedInFull(Session session, Intent intent) {
    Tightening t = session.tightening();
    boolean part =
        session.phase() == Phase.ANGLE
            && t.turned().isPresent()
            && intent instanceof Intent.OfNumber n
            && n.number().value().compareTo(session.specified().amount()) == 0;
    return part && t.called().isEmpty()
        ? tightened(session, t.withStagesClosed(t.stagesClosed()))
        : session;
  }

  static Session startedAgain(Session session, SessionEvent event) {
    Session after = session.after(event);
    return event instanceof SessionEvent.TighteningInterrupted && !isSet(after)
        ? tightened(after, after.tightening().withStagesClosed(0))
        : after;
  }

  static Session usedAgain(Session session, SessionEvent event) {
    Tightening before = session.tightening();
    Session after = session.after(event);
    return event instanceof SessionEvent.Loosened && before.marking().isEmpty()
        ? tightened(after, before.loosened(false))
        : after;
  }

  /** Whatever is said of a used part is within its limit. */
  static Session withoutLimit(Session session, Intent intent) {
    boolean used =
        intent.kind() == IntentKind.HARDWARE_LENGTH || intent.kind() == IntentKind.HARDWARE_USES;
    boolean limited =
        used
            && session.phase() == Phase.HARDWARE
            && FastenRules.fastener(session).part().reuse().isPresent();
    if (!limited) {
      return session;
    }
    BigDecimal said = ((Intent.OfNumber) intent).number().value();
    Fastener f = FastenRules.fastener(session);
    Reuse limit = new Reuse(f.part().reuse().get().by(), said.add(BigDecimal.ONE));
    Fastener.Part part =
        new Fastener.Part(
            f.part().hardware(),
            true,
            f.part().lubrication(),
            f.part().renew(),
            Optional.of(limit));
    List<Walk.Place> places = new ArrayList<>(session.walk().places());
    Walk.Place old = session.place();
    Step other =
        new Step.Fasten(
            old.step().head(),
            new Fastener(
                f.name(),
                f.thread(),
                f.drive(),
                part,
                f.needs(),
                f.set(),
                f.variants(),
                f.joint(),
                f.manner()));
    places.set(
        session.progress().at(), new Walk.Place(old.ref(), old.phase(), other, old.wheels()));
    return with(session, new Walk(session.walk().procedure(), places));
  }

  /** What a tightening used up counts as new. */
  static Session lockedAgain(Session session, SessionEvent event) {
    Session after = session.after(event);
    boolean worn =
        event instanceof SessionEvent.Loosened
            && FastenRules.fastener(session).part().wearsByTorque()
            && session.tightening().tight()
            && !session.angleBegun();
    return worn ? tightened(after, session.tightening().loosened(false)) : after;
  }

  static Session neverLifted(Session session) {
    Car car = session.car();
    return session.with(new Car(car.stance(), car.wheels(), false));
  }

  static List<SessionEvent> readMore(List<SessionEvent> events) {
    return events.stream()
        .map(
            e ->
                e instanceof SessionEvent.ReadingCalled r
                    ? new SessionEvent.ReadingCalled(
                        r.step(), r.stage(), r.value().add(BigDecimal.TEN), r.closes())
                    : e)
        .toList();
  }

  static List<SessionEvent> closeWithFirst(List<SessionEvent> events) {
    List<SessionEvent> more = new ArrayList<>(events);
    boolean closed = events.stream().anyMatch(SessionEvent.StageClosed.class::isInstance);
    for (SessionEvent event : events) {
      if (event instanceof SessionEvent.PositionsClosed e && !closed) {
        more.add(new SessionEvent.StageClosed(e.step(), e.stage(), e.value()));
      }
    }
    return more;
  }

  static Intent anyPosition(Session session, Intent intent) {
    return intent instanceof Intent.OfPosition of ? new Intent.Plain(of.kind()) : intent;
  }

  static List<SessionEvent> countedAtOnce(List<SessionEvent> events) {
    return events.stream()
        .map(
            e ->
                e instanceof SessionEvent.PositionsCalled c && c.positions().numbers().size() > 1
                    ? new SessionEvent.PositionsClosed(c.step(), c.stage(), c.positions(), "")
                    : e)
        .toList();
  }

  static Session orderForgotten(Session session, Intent intent) {
    return intent instanceof Intent.Counted && isSet(session)
        ? withSet(session, count(session))
        : session;
  }

  static Session oneForAll(Session session, Intent intent) {
    boolean stage = session.phase() == Phase.TORQUE || session.phase() == Phase.ANGLE;
    return stage && isSet(session) ? withSet(session, 1) : session;
  }

  private static boolean isSet(Session session) {
    return session.place().step() instanceof Step.Fasten && count(session) > 1;
  }

  private static int count(Session session) {
    return ((Step.Fasten) session.place().step()).fastener().set().count();
  }

  private static Session with(Session session, UnaryOperator<Tool> change) {
    Procedure old = session.walk().procedure();
    Procedure next =
        new Procedure(
            old.about(),
            old.cautions(),
            old.tools().stream().map(change).toList(),
            old.rideHeight(),
            old.loadHolds(),
            old.phases());
    return with(session, new Walk(next, session.walk().places()));
  }

  static Session withScales(Session session) {
    return with(
        session, t -> new Tool(t.id(), Tool.Kind.INDICATING, t.least(), t.most(), t.calibrated()));
  }

  static Session calibrated(Session session) {
    return with(session, t -> new Tool(t.id(), t.kind(), t.least(), t.most(), Optional.empty()));
  }

  /** A torque that was called without its unit, with that of the specification. */
  static Intent inItsUnit(Session session, Intent intent) {
    boolean torque =
        session.phase() == Phase.TORQUE
            && intent instanceof Intent.OfNumber n
            && n.unit().isEmpty()
            && (n.kind() == IntentKind.VALUE_CALLED || n.kind() == IntentKind.TORQUE_COMPLETED);
    if (!torque) {
      return intent;
    }
    Intent.OfNumber n = (Intent.OfNumber) intent;
    TorqueUnit unit = ((Stage.TorqueStage) session.stage()).target().unit();
    SpokenUnit said =
        unit == TorqueUnit.POUND_FORCE_FOOT ? SpokenUnit.FOOT_POUNDS : SpokenUnit.NEWTON_METRES;
    return new Intent.OfNumber(n.kind(), n.number(), Optional.of(said));
  }

  private static Session withSet(Session session, int count) {
    List<Walk.Place> places = new ArrayList<>(session.walk().places());
    int at = session.progress().at();
    Walk.Place old = places.get(at);
    Step other = SampleProcedures.set(old.step(), count, List.of());
    places.set(at, new Walk.Place(old.ref(), old.phase(), other, old.wheels()));
    return with(session, new Walk(session.walk().procedure(), places));
  }

  private static Session with(Session session, Walk walk) {
    return new Session(
        walk,
        session.progress(),
        session.loads(),
        session.car(),
        session.bench(),
        session.found(),
        session.account(),
        session.talk(),
        session.timers(),
        session.stopwatch());
  }

  static Session nothingWrong(Session session, Intent intent) {
    int at = session.progress().at();
    return session.with(session.progress().change(at, s -> s.wrong(Optional.empty())));
  }

  static Session goesOn(Session session, SessionEvent event) {
    Session after = session.after(event);
    return event instanceof SessionEvent.TroubleSettled e
            && after.ref().equals(e.step())
            && !isSet(after)
            && session.tightening().stagesClosed() > 0
            && !session.tightening().interrupted()
            && after.place().step() instanceof Step.Fasten fasten
            && !fasten.fastener().dependsOnMarking()
            && !fasten.fastener().part().oneTimeUse()
        ? tightened(after, session.tightening())
        : after;
  }

  static Intent allByHand(Session session, Intent intent) {
    boolean one = session.phase() == Phase.BY_HAND && intent.kind() == IntentKind.FITTED_SNUG;
    int count = one ? FastenRules.fastener(session).set().count() : 1;
    return count > 1 && !(intent instanceof Intent.Counted)
        ? new Intent.Counted(IntentKind.FITTED_SNUG, count, count)
        : intent;
  }

  static Session byHand(Session session, Intent intent) {
    return session.phase() == Phase.BY_HAND
        ? session.with(session.progress().change(session.progress().at(), s -> s.byHand(true)))
        : session;
  }
}
