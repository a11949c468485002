package org.undercall.core.review;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent.Asked;
import org.undercall.core.event.SessionEvent.CautionsUnderstood;
import org.undercall.core.event.SessionEvent.CheckAnswered;
import org.undercall.core.event.SessionEvent.CloseRefused;
import org.undercall.core.event.SessionEvent.HandedOver;
import org.undercall.core.event.SessionEvent.LoadChanged;
import org.undercall.core.event.SessionEvent.LoadConfirmed;
import org.undercall.core.event.SessionEvent.MarkingNoted;
import org.undercall.core.event.SessionEvent.MeasureCalled;
import org.undercall.core.event.SessionEvent.Measured;
import org.undercall.core.event.SessionEvent.NewHardwareFitted;
import org.undercall.core.event.SessionEvent.NotUnderstood;
import org.undercall.core.event.SessionEvent.NoteKept;
import org.undercall.core.event.SessionEvent.RideHeightNoted;
import org.undercall.core.event.SessionEvent.SessionEnded;
import org.undercall.core.event.SessionEvent.SessionResumed;
import org.undercall.core.event.SessionEvent.SessionStarted;
import org.undercall.core.event.SessionEvent.StageClosed;
import org.undercall.core.event.SessionEvent.StepClosed;
import org.undercall.core.event.SessionEvent.StepEntered;
import org.undercall.core.event.SessionEvent.StepPutOff;
import org.undercall.core.event.SessionEvent.TimerEnded;
import org.undercall.core.event.SessionEvent.TimerStarted;
import org.undercall.core.event.SessionEvent.ValueCalled;
import org.undercall.core.event.SessionEvent.ValueRefused;
import org.undercall.core.event.SessionEvent.WorkDone;
import org.undercall.core.event.SessionEvent.WorkHeld;
import org.undercall.core.event.SessionEvent.WorkResumed;
import org.undercall.core.procedure.Caution;
import org.undercall.core.procedure.Each;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Variant;
import org.undercall.core.procedure.Walk;
import org.undercall.core.procedure.WorkPhase;
import org.undercall.core.term.Angle;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadChange;
import org.undercall.core.term.LoadCondition;
import org.undercall.core.term.LoadProof;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.core.term.PutOffReason;
import org.undercall.core.term.Side;
import org.undercall.core.term.StepRef;
import org.undercall.core.term.Torque;

/** A small invented job on both sides, and a session of it written by hand. */
public final class TwoSides {
  public static final StepRef HEIGHT_L = new StepRef("height", Side.LEFT);
  public static final StepRef HEIGHT_R = new StepRef("height", Side.RIGHT);
  public static final StepRef BOOT_L = new StepRef("boot", Side.LEFT);
  public static final StepRef BOOT_R = new StepRef("boot", Side.RIGHT);
  public static final StepRef BOLT_L = new StepRef("bolt", Side.LEFT);
  public static final StepRef BOLT_R = new StepRef("bolt", Side.RIGHT);
  public static final StepRef SETTLE = new StepRef("settle", Side.CAR);
  public static final StepRef RECHECK = new StepRef("recheck", Side.CAR);

  private TwoSides() {}

  /** The job. */
  public static Walk walk() {
    Step.Limits limits =
        new Step.Limits(Optional.of(amount("300")), Optional.of(amount("480")), false);
    WorkPhase sides =
        new WorkPhase(
            "renew the bush bolt",
            Each.SIDE,
            List.of(
                new Step.Measure(
                    head("height", "Measure the arch height"),
                    MeasureUnit.MILLIMETRE,
                    limits,
                    true),
                new Step.Do(head("boot", "Look at the boot"), Optional.of("Is it whole?")),
                new Step.Fasten(head("bolt", "Tighten the bush bolt"), bolt())));
    WorkPhase finish =
        new WorkPhase(
            "finish",
            Each.CAR,
            List.of(
                new Step.Wait(head("settle", "Let it settle"), Duration.ofMinutes(1)),
                new Step.HandOver(head("recheck", "Check the bolts again"), "after 50 km")));
    return Walk.of(
        new Procedure(
            new Procedure.About(
                "Bush bolts", "Invented van", "Test", "2", "invented for demonstration"),
            List.of(Caution.of("Stands carry the van.")),
            List.of(),
            Optional.of(new RideHeight(amount("10"), Optional.empty())),
            List.of(sides, finish)));
  }

  private static Step.Head head(String id, String title) {
    return new Step.Head(id, title, List.of(), false);
  }

  private static Fastener bolt() {
    return new Fastener(
        "bush bolt",
        "M12x1.5",
        amount("18"),
        new Fastener.Part(Hardware.BOLT, true, Lubrication.AS_DELIVERED),
        LoadCondition.RIDE_HEIGHT,
        Fastener.FastenerSet.SINGLE,
        List.of(variant("8.8", "45", "60"), variant("10.9", "50", "90")));
  }

  private static Variant variant(String marking, String torque, String angle) {
    return new Variant(
        Optional.of(new HeadMarking(marking)),
        List.of(
            new Stage.TorqueStage(Torque.newtonMetres(torque), amount("3")),
            new Stage.AngleStage(Angle.degrees(angle), amount("5"))));
  }

  static BigDecimal amount(String text) {
    return new BigDecimal(text);
  }

  /** The session: left put off at 140 s, a hold on the right, a restart, then left and the end. */
  public static List<Recorded> log() {
    LogMaker maker = new LogMaker();
    leftUntilPutOff(maker);
    right(maker);
    restartAndFinish(maker);
    return maker.log();
  }

  static void leftUntilPutOff(LogMaker maker) {
    Measure height = Measure.millimetres("382");
    maker
        .at(0, new SessionStarted("Bush bolts", "2", "", "0.1.0"), new StepEntered(HEIGHT_L))
        .at(30, new CautionsUnderstood())
        .at(50, new MeasureCalled(HEIGHT_L, height))
        .at(
            55,
            new Measured(HEIGHT_L, height, true),
            new RideHeightNoted(Side.LEFT, height),
            new StepClosed(HEIGHT_L),
            new StepEntered(BOOT_L))
        .at(75, new WorkDone(BOOT_L))
        .at(85, new CheckAnswered(BOOT_L, false))
        .at(100, new CheckAnswered(BOOT_L, true), new StepClosed(BOOT_L), new StepEntered(BOLT_L))
        .at(110, new NewHardwareFitted(BOLT_L))
        .at(120, new MarkingNoted(BOLT_L, new HeadMarking("10.9")))
        .heard(130, "torque completed", new CloseRefused(BOLT_L, Missing.RIDE_HEIGHT))
        .at(
            140,
            new StepPutOff(BOLT_L, PutOffReason.RIDE_HEIGHT),
            new LoadChanged(LoadChange.OTHER_SIDE_STARTED),
            new StepEntered(HEIGHT_R));
  }

  static void right(LogMaker maker) {
    Measure height = Measure.millimetres("380");
    maker
        .at(
            170,
            new Measured(HEIGHT_R, height, true),
            new RideHeightNoted(Side.RIGHT, height),
            new StepClosed(HEIGHT_R),
            new StepEntered(BOOT_R))
        .at(190, new WorkHeld())
        .at(250, new WorkResumed())
        .at(260, new CheckAnswered(BOOT_R, true), new StepClosed(BOOT_R), new StepEntered(BOLT_R))
        .at(270, new NewHardwareFitted(BOLT_R))
        .at(280, new MarkingNoted(BOLT_R, new HeadMarking("8.8")))
        .at(
            300,
            new LoadConfirmed(
                Side.RIGHT,
                LoadCondition.RIDE_HEIGHT,
                LoadProof.ARCH_HEIGHT_WITHIN_TOLERANCE,
                Optional.of(Measure.millimetres("379"))))
        .at(310, new ValueCalled(BOLT_R, 1, amount("45")))
        .at(312, new StageClosed(BOLT_R, 1, "45"))
        .heard(320, "nine zero", new ValueRefused(BOLT_R, 2, amount("90"), amount("60")))
        .at(325, new ValueCalled(BOLT_R, 2, amount("60")))
        .at(330, new StageClosed(BOLT_R, 2, "60"), new StepClosed(BOLT_R), new StepEntered(BOLT_L))
        .at(335, new Asked("what-is-left"));
  }

  static void restartAndFinish(LogMaker maker) {
    maker
        .newRunAt(900)
        .at(900, new SessionResumed("0.1.0"))
        .at(
            910,
            new LoadConfirmed(
                Side.LEFT,
                LoadCondition.RIDE_HEIGHT,
                LoadProof.WHEELS_CARRY_THE_CAR,
                Optional.empty()))
        .at(920, new ValueCalled(BOLT_L, 1, amount("51")), new StageClosed(BOLT_L, 1, "51"))
        .at(
            930,
            new ValueCalled(BOLT_L, 2, amount("90")),
            new StageClosed(BOLT_L, 2, "90"),
            new StepClosed(BOLT_L),
            new StepEntered(SETTLE))
        .at(940, new TimerStarted(SETTLE, 60, LogMaker.START.plusSeconds(1000).toInstant()))
        .at(970, new NotUnderstood("unknown words"))
        .at(1000, new TimerEnded(SETTLE))
        .at(1005, new StepClosed(SETTLE), new StepEntered(RECHECK))
        .at(1010, new NoteKept(RECHECK, "left boot looks dry"))
        .at(1020, new HandedOver(RECHECK, "after 50 km"), new StepClosed(RECHECK))
        .at(1030, new SessionEnded(true, 0));
  }
}
