package org.undercall.core.decision;

import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Missing;
import org.undercall.core.event.Moment;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.intent.Intent;
import org.undercall.core.procedure.Stage;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.JobTalk;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Say;
import org.undercall.core.reply.WitnessTalk;
import org.undercall.core.term.JobField;
import org.undercall.core.term.PersonName;
import org.undercall.core.term.StepRef;

/**
 * A second person, who did not work on a step, names himself, hears what was done, and confirms
 * with his name again that he saw it. Until then the step is open.
 */
final class WitnessRules {
  private static final int LONGEST = 20;

  private WitnessRules() {}

  /** Whether a step asks for a witness: by the procedure, or as an apprentice's fastener. */
  static boolean asks(Session session, Walk.Place place) {
    return place.step().head().witness()
        || (session.account().isApprentice()
            && place.step() instanceof Step.Fasten
            && !Car.isMovedBy(place));
  }

  private static boolean any(Session session) {
    return session.walk().places().stream().anyMatch(place -> asks(session, place));
  }

  /** Whether the step at hand cannot close before a witness confirmed it. */
  static boolean lacks(Session session) {
    Watch watch = session.state().watch();
    return watch.waits() || (watch.by().isEmpty() && asks(session, session.place()));
  }

  /** The steps whose work is done, and which wait for their witness. */
  static List<Walk.Place> missing(Session session) {
    return session.walk().places().stream()
        .filter(place -> watch(session, place.ref()).waits())
        .toList();
  }

  /** Who saw it is named, and read back with what there was to see. */
  static Decision named(Session session, Intent intent, Moment now) {
    String said = ((Intent.OfWitness) intent).name();
    Turn turn = new Turn(session).drop();
    Session dropped = turn.session();
    if (dropped.phase() != Phase.WITNESS) {
      return turn.then(StepRules.missing(dropped, intent, now));
    }
    if (said.length() > LONGEST) {
      return turn.then(
          StepRules.refuse(dropped, Missing.JOB_TEXT, JobTalk.refused(JobField.TECHNICIAN)));
    }
    List<String> meant = meant(session, said);
    if (meant.size() != 1) {
      return turn.then(
          StepRules.refuse(
              dropped, Missing.KNOWN_NAME, WitnessTalk.unknown(said, !meant.isEmpty())));
    }
    if (!isAnother(dropped, meant.get(0))) {
      return turn.then(StepRules.refuse(dropped, Missing.OTHER_PERSON, WitnessTalk.another()));
    }
    return turn.record(new SessionEvent.WitnessCalled(session.ref(), meant.get(0)))
        .prompt()
        .end(Outcome.ASKED);
  }

  /** He confirms with his name, which must be the one that was read back. */
  static Decision seen(Session session, Intent intent, Moment now) {
    Pending.Seen pending = (Pending.Seen) session.talk().pending().orElseThrow();
    List<String> meant = meant(session, ((Intent.OfWitness) intent).name());
    if (!meant.equals(List.of(pending.witness()))) {
      return StepRules.refuse(session, Missing.WITNESS, WitnessTalk.otherName(pending.witness()));
    }
    Turn dropped = new Turn(session).drop();
    Session after = dropped.session();
    Optional<Decision> early = StepRules.tooEarly(after);
    if (early.isPresent()) {
      return dropped.then(early.get());
    }
    if (after.phase() != Phase.WITNESS) {
      return dropped.then(StepRules.missing(after, intent, now));
    }
    Turn turn =
        new Turn(session)
            .record(new SessionEvent.Witnessed(session.ref(), pending.witness(), what(session)))
            .say(WitnessTalk.witnessed(pending.witness()));
    return (endsWithBand(session) ? turn.say(Ask.finalTorque()) : turn)
        .close()
        .end(Outcome.ACCEPTED);
  }

  /** A fastener starts anew; there is nothing to loosen at other work. */
  static Decision loosened(Session session, Intent intent, Moment now) {
    return session.place().step() instanceof Step.Fasten
        ? FastenRules.loosened(session, intent, now)
        : TalkRules.notNow(session, intent, now);
  }

  /** Whether it is not known who works where a witness is asked for: he cannot be his own. */
  static boolean lacksTechnician(Session session) {
    Account account = session.account();
    return account.next().orElse(account.technician()).isEmpty() && any(session);
  }

  /** Takes a confirmation back at once: the step waits for its witness again. */
  static Turn unwitnessed(Turn turn, StepRef ref) {
    int index = turn.session().walk().indexOf(ref);
    List<Walk.Place> falling = new Bonds(turn.session()).fallingWith(index);
    return turn.record(new SessionEvent.WitnessAsked(ref))
        .say(Say.takenBack())
        .lapse(falling, ref)
        .moveTo(index);
  }

  static Watch watch(Session session, StepRef ref) {
    return session.progress().states().get(session.walk().indexOf(ref)).watch();
  }

  /** Asks the witness who was named to confirm what is read back to him. */
  static Reply readBack(Session session, Pending.Seen seen) {
    return WitnessTalk.readBack(
        seen.witness(), session.progress().at() + 1, session.place(), what(session));
  }

  /** What there was to see at the step at hand. */
  private static String what(Session session) {
    if (!(session.place().step() instanceof Step.Fasten fasten)) {
      return WitnessTalk.seen();
    }
    List<Stage> stages = session.stages();
    return WitnessTalk.seen(fasten.fastener().set().count(), stages);
  }

  private static boolean endsWithBand(Session session) {
    if (!(session.place().step() instanceof Step.Fasten)) {
      return false;
    }
    List<Stage> stages = session.stages();
    return stages.get(stages.size() - 1) instanceof Stage.AngleStage angle
        && angle.finalTorque().isPresent();
  }

  /** Somebody who neither works now nor worked on the step. */
  static boolean isAnother(Session session, String witness) {
    return !PersonName.same(witness, session.account().technician())
        && session.state().watch().hands().stream()
            .noneMatch(hand -> PersonName.same(hand, witness));
  }

  /** Whom a spelled name means: one of the list, or itself where there is none. */
  private static List<String> meant(Session session, String said) {
    List<String> known = session.account().crew().known();
    return known.isEmpty() ? List.of(said) : PersonName.meant(said, known);
  }
}
