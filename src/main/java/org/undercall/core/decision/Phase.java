package org.undercall.core.decision;

import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;

/** What the session waits for. It decides what may be said and what a phrase does. */
public enum Phase {
  /** The cautions were read out and wait to be understood. */
  BRIEFING("BRF"),
  /** Something about the job was read back, before the cautions, and waits for an answer. */
  JOB_READ_BACK("JRB"),
  /** A do step. */
  DO("DO"),
  /** The check question of a do step. */
  CHECK("CHK"),
  /** A measured value is to be called. */
  MEASURE("MEA"),
  /** New hardware is to be fitted. */
  HARDWARE("HDW"),
  /** The head marking is to be read out. */
  MARKING("MRK"),
  /** It is to be run in by hand. */
  BY_HAND("BYH"),
  /** The fastener needs a load condition that is not confirmed. */
  GATE("GAT"),
  /** The torque that a nut needs to run down is to be called. */
  RUN_DOWN("RUN"),
  /** A tightening that was broken off: how far its angle was turned is to be said. */
  BEGUN("BGN"),
  /** Something went wrong and is not settled. */
  TROUBLE("TRB"),
  /** A torque stage. */
  TORQUE("TRQ"),
  /** An angle stage. */
  ANGLE("ANG"),
  /** A wait step. */
  WAITING("WAI"),
  /** A load step. */
  LOAD("LOD"),
  /** A hand-over item. */
  HAND_OVER("HND"),
  /** The work of the step is done, and a second person who saw it is to name himself. */
  WITNESS("WIT"),
  /** A value, a marking or the end was read back and waits for an answer. */
  READ_BACK("RBK"),
  /** A load condition waits for the technician's read-back with the side. */
  LOAD_READ_BACK("LRB"),
  /** What a witness saw was read back to him, and waits for his answer. */
  WITNESS_READ_BACK("WRB"),
  /** The next words are a note. */
  NOTING("NOT"),
  /** The work is held. */
  ON_HOLD("HLD"),
  /** The work was handed over: the next technician names himself. */
  SHIFT_CHANGE("SHF"),
  /** Every step is closed. */
  ALL_CLOSED("ALL"),
  /** The step at hand is closed, others are open. */
  CLOSED_STEP("CLS"),
  /** The session has ended. */
  ENDED("END");

  private final String code;

  Phase(String code) {
    this.code = code;
  }

  /** Its column in the table. */
  public String code() {
    return code;
  }

  /** Whether it waits for an answer to a question, not for work to be done. */
  boolean asks() {
    return switch (this) {
      case BRIEFING, JOB_READ_BACK, CHECK, MARKING, READ_BACK, LOAD_READ_BACK, WITNESS_READ_BACK ->
          true;
      default -> false;
    };
  }

  /** Whether something that was said waits to be answered. */
  boolean isReadBack() {
    return switch (this) {
      case JOB_READ_BACK, READ_BACK, LOAD_READ_BACK, WITNESS_READ_BACK -> true;
      default -> false;
    };
  }

  /** What a session waits for. */
  static Phase of(Session session) {
    return switch (session.talk().mode()) {
      case BRIEFING -> session.talk().pending().isPresent() ? JOB_READ_BACK : BRIEFING;
      case NOTING -> NOTING;
      case HELD -> ON_HOLD;
      case HANDED -> handed(session);
      case ENDED -> ENDED;
      case WORKING ->
          session.talk().pending().map(Phase::readBack).orElseGet(() -> ofStep(session));
    };
  }

  private static Phase handed(Session session) {
    if (session.talk().pending().isPresent()) {
      return JOB_READ_BACK;
    }
    return session.account().next().isPresent() ? BRIEFING : SHIFT_CHANGE;
  }

  private static Phase readBack(Pending pending) {
    if (pending instanceof Pending.Seen) {
      return WITNESS_READ_BACK;
    }
    return pending instanceof Pending.Load ? LOAD_READ_BACK : READ_BACK;
  }

  /** What the step at hand waits for, whatever waits to be read back. */
  static Phase ofStep(Session session) {
    if (session.progress().allClosed()) {
      return ALL_CLOSED;
    }
    if (session.state().closed()) {
      return CLOSED_STEP;
    }
    if (session.state().wrong().isPresent()) {
      return TROUBLE;
    }
    Step step = session.place().step();
    if (step instanceof Step.Fasten fasten) {
      return ofFastener(session, fasten.fastener());
    }
    if (session.state().watch().waits()) {
      return WITNESS;
    }
    if (step instanceof Step.Do) {
      return session.state().workDone() ? CHECK : DO;
    }
    if (step instanceof Step.Measure) {
      return MEASURE;
    }
    if (step instanceof Step.Wait) {
      return WAITING;
    }
    return step instanceof Step.Load ? LOAD : HAND_OVER;
  }

  private static Phase ofFastener(Session session, Fastener fastener) {
    if (fastener.part().oneTimeUse() && !session.tightening().newHardware()) {
      return HARDWARE;
    }
    if (fastener.dependsOnMarking() && session.tightening().marking().isEmpty()) {
      return MARKING;
    }
    boolean byHand = session.state().byHand() || session.tightening().begun();
    if (fastener.manner().byHand() && !byHand) {
      return BY_HAND;
    }
    if (!session.loads().holds(session.side(), fastener.needs())) {
      return GATE;
    }
    if (session.state().watch().waits()) {
      return WITNESS;
    }
    if (session.tightening().interrupted() && session.atAngle()) {
      return BEGUN;
    }
    boolean torque = session.specified() instanceof Stage.TorqueStage;
    if (torque && fastener.manner().runDown().isPresent() && session.state().runDown().isEmpty()) {
      return RUN_DOWN;
    }
    return torque ? TORQUE : ANGLE;
  }
}
