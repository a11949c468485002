package org.undercall.core.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.SoundLevels;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Reuse;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.term.Finding;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.JobField;
import org.undercall.core.term.OrderReason;
import org.undercall.core.term.OverdueReason;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.TimerName;
import org.undercall.core.term.TorqueUnit;
import org.undercall.core.term.Trouble;

/** Says sensible things most of the time, and anything at all the rest of the time. */
public final class RandomTechnician {
  private static final List<String> NUMBERS =
      List.of("52", "60", "117", "50", "90", "65", "15", "350", "355", "390", "5", "111", "7.5");
  private static final List<String> MARKINGS = List.of("8.8", "10.9", "12.9");
  private static final IntentKind[] DENIABLE =
      Stream.of(IntentKind.values()).filter(IntentKind::closes).toArray(IntentKind[]::new);
  private static final IntentKind[] KINDS = IntentKind.values();

  private final SplittableRandom random;

  /** One whose choices follow from the source of chance. */
  public RandomTechnician(SplittableRandom random) {
    this.random = random;
  }

  /** Anything, and something sensible about half the time. */
  public Intent next(Session session) {
    int luck = random.nextInt(100);
    if (!session.timers().running().isEmpty() && random.nextInt(15) == 0) {
      return of(IntentKind.TIMER_ENDED);
    }
    if (random.nextInt(40) == 0) {
      return of(pick(IntentKind.TIMER_SET, IntentKind.NOTHING_HEARD));
    }
    boolean turned =
        session
            .progress()
            .lastClosed()
            .flatMap(ref -> FinalTorqueRules.angle(session, ref))
            .isPresent();
    if (turned && random.nextInt(10) == 0) {
      return of(IntentKind.FINAL_TORQUE);
    }
    if (session.talk().hinted().isPresent() && random.nextInt(2) == 0) {
      return of(IntentKind.TROUBLE);
    }
    if (luck < (session.phase() == Phase.BRIEFING ? 10 : 55)) {
      return sensible(session);
    }
    if (luck < 90) {
      Set<IntentKind> heard = Decider.heard(session);
      if (!heard.isEmpty()) {
        return of(List.copyOf(heard).get(random.nextInt(heard.size())));
      }
    }
    return of(KINDS[random.nextInt(KINDS.length)]);
  }

  /** What fits the phase the session is in. */
  public Intent sensible(Session session) {
    if (random.nextInt(15) == 0) {
      return number(IntentKind.ARCH_HEIGHT, pick("350", "350", "390"));
    }
    boolean half = session.phase() == Phase.ANGLE || session.phase() == Phase.CHECK;
    if (half && random.nextInt(8) == 0) {
      return new Intent.OfStep(IntentKind.REOPEN, random.nextInt(12));
    }
    boolean early = StepRules.tooEarly(session).isPresent();
    if (early && Decider.heard(session).contains(IntentKind.OUT_OF_ORDER) && random.nextBoolean()) {
      return of(IntentKind.OUT_OF_ORDER);
    }
    return switch (session.phase()) {
      case BRIEFING ->
          WitnessRules.lacksTechnician(session) && random.nextInt(3) > 0
              ? new Intent.OfJob(JobField.TECHNICIAN, pick("JD", "AB"))
              : of(IntentKind.CAUTIONS_UNDERSTOOD);
      case WITNESS ->
          switch (random.nextInt(12)) {
            case 0 -> of(pick(IntentKind.LOOSENED, IntentKind.PUT_OFF, IntentKind.SHIFT_CHANGE));
            case 1 -> of(IntentKind.WITNESSED);
            default -> of(IntentKind.WITNESS_NAMED);
          };
      case WITNESS_READ_BACK ->
          random.nextInt(6) == 0
              ? of(pick(IntentKind.WITNESSED, IntentKind.WITNESS_NAMED))
              : new Intent.OfWitness(
                  IntentKind.WITNESSED,
                  spelled(((Pending.Seen) session.talk().pending().orElseThrow()).witness()));
      case DO, HAND_OVER -> of(IntentKind.STEP_COMPLETED);
      case WAITING ->
          of(pick(IntentKind.STEP_COMPLETED, IntentKind.TIMER_START, IntentKind.TIMER_ENDED));
      case CHECK -> of(IntentKind.CHECK_PASSED);
      case MEASURE -> measured(session);
      case HARDWARE ->
          switch (random.nextInt(reuse(session).isPresent() ? 10 : 6)) {
            case 0 -> tooEarly(session);
            case 1, 2 -> several(newHardware(session), byHand(session));
            case 6, 7, 8, 9 -> of(ReuseRules.kind(reuse(session).get().by()));
            default -> newHardware(session);
          };
      case MARKING -> of(IntentKind.HEAD_MARKING);
      case GATE, LOAD -> load(session);
      case TROUBLE -> remedy(session);
      case BY_HAND ->
          random.nextInt(4) == 0 ? stage(session, IntentKind.TORQUE_COMPLETED) : byHand(session);
      case RUN_DOWN ->
          inUnit(session, number(IntentKind.VALUE_CALLED, pick("5", "5", "7.5", "60")));
      case BEGUN ->
          random.nextInt(3) == 0
              ? of(IntentKind.LOOSENED)
              : number(IntentKind.TURNED_SO_FAR, pick("0", "30", "60", "90", "200"));
      case TORQUE ->
          session.stages().size() > 1 && random.nextInt(30) == 0
              ? angleFirst(session)
              : stage(session, IntentKind.TORQUE_COMPLETED);
      case ANGLE ->
          session.tightening().turned().isPresent() && random.nextInt(3) == 0
              ? number(IntentKind.ANGLE_COMPLETED, session.specified().amount().toPlainString())
              : stage(session, IntentKind.ANGLE_COMPLETED);
      case JOB_READ_BACK, READ_BACK -> of(IntentKind.READ_BACK_RIGHT);
      case LOAD_READ_BACK -> loadReadBack(session);
      case NOTING -> new Intent.NoteText(pick("cancel that", "dust boot is torn"));
      case ON_HOLD -> of(IntentKind.RESUME);
      case SHIFT_CHANGE ->
          random.nextInt(4) == 0
              ? of(IntentKind.RESUME)
              : new Intent.OfJob(
                  random.nextInt(6) == 0 ? JobField.REGISTRATION : JobField.TECHNICIAN,
                  random.nextInt(6) == 0 ? "AVERYLONGNAMEWITHMORETHANTWENTY" : "JD");
      case ALL_CLOSED ->
          of(
              pick(
                  IntentKind.REOPEN,
                  IntentKind.WHAT_IS_LEFT,
                  IntentKind.TIMER_SET,
                  IntentKind.TIMER_ENDED,
                  IntentKind.END_OF_WORK));
      case CLOSED_STEP ->
          of(pick(IntentKind.GO_TO_STEP, IntentKind.REOPEN, IntentKind.SIDE_CHANGE));
      case ENDED -> of(IntentKind.REPEAT);
    };
  }

  private static String spelled(String name) {
    return name.replace(" ", "").toUpperCase(java.util.Locale.ROOT);
  }

  private static Optional<Reuse> reuse(Session session) {
    return ((Step.Fasten) session.place().step()).fastener().part().reuse();
  }

  private Intent load(Session session) {
    boolean droop = Session.needs(session.place()).name().equals("FULL_DROOP");
    if (random.nextInt(4) == 0) {
      return new Intent.OfSide(
          droop ? IntentKind.HANGS_FREE : IntentKind.WHEELS_CARRY, session.side());
    }
    return droop
        ? of(IntentKind.HANGS_FREE)
        : of(pick(IntentKind.WHEELS_CARRY, IntentKind.KNUCKLE_JACKED, IntentKind.ARCH_HEIGHT));
  }

  /** New hardware and a head marking, or that it is run in by hand. */
  private Intent several(Intent hardware, Intent byHand) {
    return new Intent.Several(
        List.of(hardware, random.nextInt(3) > 0 ? of(IntentKind.HEAD_MARKING) : byHand));
  }

  private Intent byHand(Session session) {
    int count = ((Step.Fasten) session.place().step()).fastener().set().count();
    int said = random.nextInt(6) == 0 ? 1 + random.nextInt(count) : count;
    return said == 1
        ? of(IntentKind.FITTED_SNUG)
        : new Intent.Counted(IntentKind.FITTED_SNUG, said, said);
  }

  /** The stage after the one at hand, as if that were done. */
  private Intent angleFirst(Session session) {
    BigDecimal next = session.stages().get(session.stages().size() - 1).amount();
    return number(IntentKind.ANGLE_COMPLETED, next.toPlainString());
  }

  private Intent measured(Session session) {
    Step.Limits limits = ((Step.Measure) session.place().step()).limits();
    return limits.reachBelowZero() && random.nextInt(4) > 0
        ? reading(IntentKind.READING_CALLED)
        : number(IntentKind.VALUE_CALLED, pick("350", "390", "5"));
  }

  /** With a sign, in degrees and minutes, or both. */
  private Intent reading(IntentKind kind) {
    boolean signed = random.nextInt(4) > 0;
    String amount = signed ? pick("-1", "-90", "-5", "45", "0", "-350") : pick("45", "90", "0");
    Optional<SpokenUnit> unit = Optional.of(SpokenUnit.MINUTES);
    if (signed && random.nextBoolean()) {
      unit = random.nextBoolean() ? Optional.empty() : Optional.of(SpokenUnit.DEGREES);
    }
    return new Intent.OfReading(kind, new BigDecimal(amount), unit, signed);
  }

  private Intent loadReadBack(Session session) {
    Pending.Load load = (Pending.Load) session.talk().pending().orElseThrow();
    return new Intent.OfSide(
        load.condition().name().equals("FULL_DROOP")
            ? IntentKind.FULL_DROOP_READ_BACK
            : IntentKind.RIDE_HEIGHT_READ_BACK,
        load.side());
  }

  private Intent stage(Session session, IntentKind completed) {
    if (!session.walk().procedure().tools().isEmpty() && random.nextInt(5) == 0) {
      return of(pick(IntentKind.WRENCH_NAMED, IntentKind.OVERDUE));
    }
    if (count(session) > 1 && random.nextInt(3) == 0) {
      return ofSet(completed, count(session));
    }
    boolean full = random.nextInt(8) == 0;
    BigDecimal exact = (full ? session.specified() : session.stage()).amount();
    boolean read = random.nextInt(completed == IntentKind.ANGLE_COMPLETED ? 3 : 8) == 0;
    String amount =
        (read ? exact.add(BigDecimal.valueOf(random.nextInt(5) - 2)) : exact).toPlainString();
    return switch (random.nextInt(3)) {
      case 0 -> inUnit(session, number(IntentKind.VALUE_CALLED, amount));
      case 1 -> inUnit(session, number(completed, amount));
      default -> new Intent.Plain(completed);
    };
  }

  /** Often with the unit of the specification. */
  private Intent inUnit(Session session, Intent.OfNumber said) {
    if (!(session.specified() instanceof Stage.TorqueStage torque) || random.nextInt(3) == 0) {
      return said;
    }
    boolean foot = torque.target().unit() == TorqueUnit.POUND_FORCE_FOOT;
    SpokenUnit unit = foot ? SpokenUnit.FOOT_POUNDS : SpokenUnit.NEWTON_METRES;
    return new Intent.OfNumber(said.kind(), said.number(), Optional.of(unit));
  }

  private Intent remedy(Session session) {
    boolean set = session.place().step() instanceof Step.Fasten && count(session) > 1;
    boolean all = set && session.state().wrong().orElseThrow().position().isEmpty();
    return switch (random.nextInt(4)) {
      case 0 -> of(IntentKind.SETTLED);
      case 1 -> of(IntentKind.PUT_OFF);
      default ->
          all
              ? new Intent.Counted(IntentKind.NEW_HARDWARE, count(session), count(session))
              : new Intent.Plain(IntentKind.NEW_HARDWARE);
    };
  }

  private static int count(Session session) {
    return ((Step.Fasten) session.place().step()).fastener().set().count();
  }

  /** The torque without the new hardware. */
  private Intent tooEarly(Session session) {
    Fastener fastener = ((Step.Fasten) session.place().step()).fastener();
    Stage first = fastener.variants().get(0).stages().get(0);
    return number(IntentKind.TORQUE_COMPLETED, first.amount().toPlainString());
  }

  private Intent newHardware(Session session) {
    int count = count(session);
    return count > 1 && random.nextInt(5) > 0
        ? new Intent.Counted(IntentKind.NEW_HARDWARE, count, count)
        : of(IntentKind.NEW_HARDWARE);
  }

  /** Something that is said of a set. */
  private Intent ofSet(IntentKind completed, int count) {
    int position = 1 + random.nextInt(count + (random.nextInt(4) == 0 ? 1 : 0));
    return switch (random.nextInt(5)) {
      case 0 -> new Intent.Counted(completed, position, count);
      case 1 -> new Intent.Counted(completed, count, count);
      case 2 -> new Intent.Denied(completed, Optional.of(position));
      case 3 -> new Intent.Denied(completed);
      default -> new Intent.OfPosition(completed, position);
    };
  }

  /** Something of a kind. */
  Intent of(IntentKind kind) {
    return switch (kind) {
      case ARCH_HEIGHT -> number(kind, pick("350", "355", "390", "5"));
      case TROUBLE ->
          new Intent.OfTrouble(
              pick(Trouble.values()),
              random.nextInt(3) == 0 ? Optional.of(1 + random.nextInt(4)) : Optional.empty());
      case NEW_HARDWARE ->
          random.nextBoolean()
              ? new Intent.Plain(kind)
              : new Intent.Counted(kind, 1 + random.nextInt(3), 3);
      case WHEELS_CARRY, KNUCKLE_JACKED, HANGS_FREE ->
          random.nextBoolean()
              ? new Intent.Plain(kind)
              : new Intent.OfSide(kind, pick(Side.LEFT, Side.RIGHT, Side.FRONT_LEFT));
      case SEVERAL ->
          several(of(IntentKind.NEW_HARDWARE), new Intent.Plain(IntentKind.FITTED_SNUG));
      case VALUE_CALLED, CORRECTED, FINAL_TORQUE ->
          number(kind, NUMBERS.get(random.nextInt(NUMBERS.size())));
      case READING_CALLED -> reading(kind);
      case TORQUE_COMPLETED, ANGLE_COMPLETED ->
          random.nextBoolean()
              ? new Intent.Plain(kind)
              : number(kind, NUMBERS.get(random.nextInt(NUMBERS.size())));
      case TURNED_SO_FAR -> number(kind, pick("0", "30", "60", "90", "200"));
      case HARDWARE_LENGTH -> number(kind, pick("52.5", "52.3", "50", "52.6", "5.3", "117"));
      case HARDWARE_USES -> number(kind, pick("1", "1", "2", "3"));
      case WRENCH_NAMED -> new Intent.OfPosition(kind, 1 + random.nextInt(3));
      case JOB_TOLD ->
          new Intent.OfJob(
              pick(JobField.values()), pick("1A2", "WVW", "84210", "1M8GDM9AXKP042788"));
      case WITNESS_NAMED, WITNESSED ->
          new Intent.OfWitness(
              kind,
              random.nextInt(15) == 0
                  ? "AVERYLONGNAMEWITHMORETHANTWENTY"
                  : pick("JD", "AB", "CD", "KL", "ANNABERG"));
      case FINDING ->
          new Intent.OfFinding(
              pick(Finding.values()),
              random.nextBoolean() ? Optional.empty() : Optional.of(pick(Side.values())));
      case OVERDUE -> new Intent.Overdue(pick(OverdueReason.values()));
      case OUT_OF_ORDER -> new Intent.OutOfOrder(pick(OrderReason.values()));
      case GO_TO_STEP -> new Intent.OfStep(kind, random.nextInt(12));
      case REOPEN ->
          random.nextBoolean()
              ? new Intent.Plain(kind)
              : new Intent.OfStep(kind, random.nextInt(12));
      case SIDE_CHANGE, RIDE_HEIGHT_READ_BACK, FULL_DROOP_READ_BACK ->
          new Intent.OfSide(kind, pick(Side.values()));
      case HEAD_MARKING ->
          new Intent.Marking(new HeadMarking(pick(MARKINGS.toArray(String[]::new))));
      case PUT_OFF -> new Intent.PutOff(pick(PutOffReason.values()));
      case TIMER_SET -> new Intent.SetTimer(pick(TimerName.values()), pick(1, 1, 5, 180));
      case TIMER_LEFT, TIMER_CANCEL ->
          pick(
              new Intent.Plain(kind),
              new Intent.OfTimer(kind, pick(TimerName.values())),
              new Intent.OfStep(kind, random.nextInt(12)));
      case NOTHING_HEARD -> new Intent.NothingHeard(600_000);
      case CLOCK_JUMPED ->
          new Intent.ClockJumped(pick(-3_600_000L, 0L, 7_000L, 7_200_000L), pick(0L, 200_000L));
      case NOTE_TEXT -> new Intent.NoteText("some words");
      case DENIED -> new Intent.Denied(pick(DENIABLE));
      case UNCLEAR -> unclear(pick(Intent.Unclear.Reason.values()));
      default -> new Intent.Plain(kind);
    };
  }

  private Intent unclear(Intent.Unclear.Reason reason) {
    Optional<SpokenNumber> number =
        reason == Intent.Unclear.Reason.LONE_NUMBER
            ? Optional.of(new SpokenNumber(BigDecimal.valueOf(50), SpokenNumber.Style.WORDS))
            : Optional.empty();
    SoundLevels levels = new SoundLevels(-20, pick(-60, -25), 0);
    return new Intent.Unclear(reason, number, Optional.of(levels));
  }

  private Intent.OfNumber number(IntentKind kind, String amount) {
    SpokenNumber.Style style =
        random.nextInt(10) == 0
            ? SpokenNumber.Style.WITH_PAUSE
            : random.nextBoolean() ? SpokenNumber.Style.WORDS : SpokenNumber.Style.DIGIT_BY_DIGIT;
    Optional<SpokenUnit> unit =
        random.nextInt(3) > 0 ? Optional.empty() : Optional.of(pick(SpokenUnit.values()));
    return new Intent.OfNumber(kind, new SpokenNumber(new BigDecimal(amount), style), unit);
  }

  @SafeVarargs
  private <T> T pick(T... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
