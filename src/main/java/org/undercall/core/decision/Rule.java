package org.undercall.core.decision;

import static org.undercall.core.decision.Outcome.ACCEPTED;
import static org.undercall.core.decision.Outcome.ANSWERED;
import static org.undercall.core.decision.Outcome.ASKED;
import static org.undercall.core.decision.Outcome.IGNORED;
import static org.undercall.core.decision.Outcome.REFUSED;

import java.util.List;
import java.util.Set;
import org.undercall.core.event.Moment;
import org.undercall.core.intent.Intent;

/** What can be done with an intent: the words that stand in the cells of {@link Table}. */
final class Rule {
  private static final List<Rule> ALL =
      List.of(
          rule(
              "-",
              "is not listened for; refused if it comes all the same",
              TalkRules::notNow,
              REFUSED),
          rule("miss", "refuses, and names what is missing", StepRules::missing, REFUSED),
          rule("told", "reads back what is told of the job", JobRules::told, ASKED, REFUSED),
          rule("jkep", "keeps what was told of the job", JobRules::keep, ACCEPTED),
          rule(
              "begn",
              "begins with the first step; where a witness is asked for it must be known who works",
              TalkRules::begin,
              ACCEPTED,
              REFUSED),
          rule(
              "done",
              "closes the step, or asks its check question",
              StepRules::done,
              ACCEPTED,
              REFUSED),
          rule(
              "pass", "keeps the answer and closes the step", StepRules::passed, ACCEPTED, REFUSED),
          rule("fail", "keeps the answer; the step stays open", StepRules::failed, ACCEPTED),
          rule("wait", "closes the step if the time is over", StepRules::waited, ACCEPTED, REFUSED),
          rule(
              "lded",
              "closes the step if its load is confirmed",
              StepRules::loaded,
              ACCEPTED,
              REFUSED),
          rule(
              "hand",
              "hands the item over and closes the step",
              StepRules::handedOver,
              ACCEPTED,
              REFUSED),
          rule("off", "puts the step off", StepRules::putOff, ACCEPTED),
          rule("open", "opens a closed step again", StepRules::reopen, ACCEPTED, REFUSED),
          rule(
              "call",
              "compares the value with the stage",
              FastenRules::called,
              ACCEPTED,
              ASKED,
              REFUSED),
          rule("stag", "closes the stage", FastenRules::completed, ACCEPTED, ASKED, REFUSED),
          rule("othr", "refuses: the other stage is at hand", FastenRules::otherStage, REFUSED),
          rule(
              "mark",
              "reads the marking back if it is known",
              FastenRules::marking,
              ASKED,
              REFUSED),
          rule(
              "mlos",
              "the same, if no stage is closed",
              FastenRules::markingIfLoose,
              ASKED,
              REFUSED),
          rule("lsfr", "refuses: it is to be loosened first", FastenRules::loosenFirst, REFUSED),
          rule("hdwr", "notes new hardware", FastenRules::newHardware, ACCEPTED, REFUSED),
          rule(
              "used",
              "reads back what a used part measures, or how often it was used, if that is permitted",
              ReuseRules::called,
              ASKED,
              REFUSED),
          rule(
              "usag",
              "keeps the same value, takes another one as if just called",
              ReuseRules::again,
              ACCEPTED,
              ASKED,
              REFUSED),
          rule("whyn", "says why a new part is needed", ReuseRules::why, ANSWERED),
          rule(
              "each",
              "judges each part of the answer in turn, until one does not count",
              FastenRules::each,
              ACCEPTED,
              ASKED,
              REFUSED),
          rule("snug", "notes: started, not tightened", FastenRules::snug, ACCEPTED),
          rule(
              "slos",
              "the same, if no stage is closed",
              FastenRules::snugIfLoose,
              ACCEPTED,
              REFUSED),
          rule("loos", "starts the tightening anew", FastenRules::loosened, ACCEPTED),
          rule(
              "trnd", "reads back how far it was turned", FastenRules::turnedSoFar, ASKED, REFUSED),
          rule(
              "ordr",
              "reads back why the step comes before others",
              StepRules::outOfOrder,
              ASKED,
              REFUSED),
          rule("meas", "reads the value back", ReadBackRules::measured, ASKED, REFUSED),
          rule("rght", "keeps what was read back", ReadBackRules::right, ACCEPTED, REFUSED),
          rule("drop", "drops what was read back", ReadBackRules::dropped, ACCEPTED),
          rule(
              "nodr",
              "the same; asks first where it would open a step",
              ReadBackRules::no,
              ACCEPTED,
              ANSWERED),
          rule(
              "corr",
              "drops what was read back, and takes the value as any value",
              ReadBackRules::corrected,
              ACCEPTED,
              ASKED,
              ANSWERED,
              REFUSED),
          rule("what", "asks what is meant; changes nothing", Denied::no, ANSWERED),
          rule(
              "agan",
              "keeps the same value, reads another one back",
              ReadBackRules::valueAgain,
              ACCEPTED,
              ASKED,
              REFUSED),
          rule(
              "mkag",
              "keeps the same marking, reads another one back",
              ReadBackRules::markingAgain,
              ACCEPTED,
              ASKED,
              REFUSED),
          rule("end", "asks whether to end with steps open", ReadBackRules::end, ASKED),
          rule("comp", "ends the session as complete", ReadBackRules::complete, ACCEPTED),
          rule("take", "takes what was said last back", ReadBackRules::takeBack, ACCEPTED, REFUSED),
          rule(
              "cary",
              "asks to read ride height back, if no wheel is off",
              LoadRules::wheelsCarry,
              ASKED,
              REFUSED),
          rule("jckd", "the same, for one side only", LoadRules::knuckleJacked, ASKED, REFUSED),
          rule(
              "hght",
              "the same, if the height is within tolerance",
              LoadRules::archHeight,
              ASKED,
              REFUSED),
          rule("hang", "asks to read full droop back", LoadRules::hangsFree, ASKED, REFUSED),
          rule(
              "load",
              "confirms the load for the side read back",
              LoadRules::readBack,
              ACCEPTED,
              REFUSED),
          rule("chgd", "cancels what was confirmed about the load", Moves::loadChanged, ACCEPTED),
          rule("go", "goes to the step", Moves::goTo, ACCEPTED, REFUSED),
          rule("back", "goes to the step before", Moves::back, ACCEPTED, REFUSED),
          rule("side", "goes to the side's first open step", Moves::otherSide, ACCEPTED, REFUSED),
          rule("more", "says more from now on, and the prompt whole", TalkRules::more, ACCEPTED),
          rule("less", "says less from now on", TalkRules::less, ACCEPTED),
          rule("rept", "says again what is waited for", TalkRules::repeat, ANSWERED),
          rule("left", "names the open steps", TalkRules::left, ANSWERED),
          rule("wher", "names the place in the walk", TalkRules::where, ANSWERED),
          rule("sett", "says what the wrench is set to", ValueQuestions::setting, ANSWERED),
          rule("whch", "says which of a set is next and left", SetRules::which, ANSWERED),
          rule("wrch", "names the wrench, if it fits", WrenchRules::named, ACCEPTED, REFUSED),
          rule(
              "over",
              "reads back why a wrench out of calibration is used",
              WrenchRules::overdue,
              ASKED,
              REFUSED),
          rule(
              "finl",
              "reads back the torque after the angle closed last",
              FinalTorqueRules::called,
              ASKED,
              REFUSED),
          rule("byha", "notes a pass by hand", FastenRules::byHand, ACCEPTED, REFUSED),
          rule("rund", "reads back the run-down torque", RunDownRules::called, ASKED, REFUSED),
          rule("trbl", "reads back what went wrong", TroubleRules::called, ASKED, REFUSED),
          rule(
              "trbh",
              "reads back what went wrong at the fastener whose torque just gave a hint",
              TroubleRules::afterHint,
              ASKED,
              REFUSED),
          rule(
              "newh",
              "starts again with new hardware",
              TroubleRules::newHardware,
              ACCEPTED,
              REFUSED),
          rule("fixd", "starts again after a repair", TroubleRules::repaired, ACCEPTED, REFUSED),
          rule("chkr", "keeps that a failed check was settled", TroubleRules::repaired, ACCEPTED),
          rule("unit", "says the torque in the other unit", ValueQuestions::otherUnit, ANSWERED),
          rule("why", "says what the value is for", ValueQuestions::why, ANSWERED),
          rule("note", "lets a note be spoken", TalkRules::note, ACCEPTED),
          rule("find", "lets what was found be spoken", TalkRules::finding, ACCEPTED),
          rule("text", "keeps the note", TalkRules::noteText, ACCEPTED),
          rule("hold", "holds the work", TalkRules::hold, ACCEPTED),
          rule("resu", "goes on with the work", TalkRules::resume, ACCEPTED),
          rule(
              "hovr",
              "hands the work over, and tells how it stands",
              ShiftRules::handOver,
              ACCEPTED),
          rule(
              "witn",
              "reads back who saw it, and what; refuses who worked on it",
              WitnessRules::named,
              ASKED,
              REFUSED),
          rule(
              "seen",
              "keeps the witness and closes the step; refuses another name",
              WitnessRules::seen,
              ACCEPTED,
              REFUSED),
          rule(
              "wlos",
              "starts a fastener's tightening anew; refused at other work",
              WitnessRules::loosened,
              ACCEPTED,
              REFUSED),
          rule("stnd", "tells again how the work stands", ShiftRules::state, ANSWERED),
          rule("tech", "reads back who takes over", ShiftRules::named, ASKED, REFUSED),
          rule("nonm", "refuses: nobody named himself", ShiftRules::noName, REFUSED),
          rule("same", "goes on; nobody took over", ShiftRules::goOn, ACCEPTED),
          rule("timr", "starts the step's timer", TimerRules::start, ACCEPTED),
          rule("tset", "starts the timer with the name", TimerRules::set, ACCEPTED),
          rule("tlft", "says how much time is left", TimerRules::left, ANSWERED),
          rule(
              "tcan",
              "cancels the timer; asks which if several run",
              TimerRules::cancel,
              ACCEPTED,
              REFUSED),
          rule(
              "tend",
              "says which timers ran out or soon will",
              TimerRules::ended,
              ACCEPTED,
              IGNORED),
          rule("stim", "says how long the step took so far", TimeRules::step, ANSWERED),
          rule("wtim", "says how long the work took so far", TimeRules::work, ANSWERED),
          rule("here", "reminds of what is waited for", TimeRules::remind, ACCEPTED),
          rule("cset", "keeps the timers; says the clock was set", TimeRules::jump, ACCEPTED),
          rule("nope", "keeps it open, and what was read back is dropped", Denied::denied, REFUSED),
          rule("dang", "cancels the load and holds the work", Moves::danger, ACCEPTED),
          rule("phrs", "says which phrase counts", Denied::shortAnswer, ANSWERED),
          rule("?", "asks again, or leaves chatter alone", UnclearRules::unclear, ASKED, IGNORED));

  private interface Act {
    Decision of(Session session, Intent intent, Moment now);
  }

  private final String word;
  private final String sentence;
  private final Act act;
  private final Set<Outcome> outcomes;

  private Rule(String word, String sentence, Act act, Set<Outcome> outcomes) {
    this.word = word;
    this.sentence = sentence;
    this.act = act;
    this.outcomes = outcomes;
  }

  private static Rule rule(String word, String sentence, Act act, Outcome... outcomes) {
    return new Rule(word, sentence, act, Set.of(outcomes));
  }

  /** Every rule. */
  static List<Rule> all() {
    return ALL;
  }

  /** The rule with a word. */
  static Rule called(String word) {
    return ALL.stream()
        .filter(rule -> rule.word.equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no rule is called " + word));
  }

  /** Whether intents in this cell are listened for. */
  boolean heard() {
    return !word.equals("-");
  }

  /** The word in the table's cells. */
  String word() {
    return word;
  }

  /** What it does, in a few words. */
  String sentence() {
    return sentence;
  }

  /** Every outcome it can have. */
  Set<Outcome> outcomes() {
    return outcomes;
  }

  Decision decide(Session session, Intent intent, Moment now) {
    return act.of(session, intent, now);
  }
}
