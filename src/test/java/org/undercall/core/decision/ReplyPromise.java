package org.undercall.core.decision;

import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.undercall.core.event.SessionEvent;

/** What a reply may say only if it was recorded in the same decision. */
final class ReplyPromise {
  private static final Map<String, Class<?>> WORDS =
      Map.of(
          "Step closed.", SessionEvent.StepClosed.class,
          " closed at ", SessionEvent.StageClosed.class,
          " confirmed, ", SessionEvent.LoadConfirmed.class,
          "Closed. ", SessionEvent.StepClosed.class,
          "Note kept", SessionEvent.NoteKept.class,
          "Seen by ", SessionEvent.Witnessed.class,
          "Work complete", SessionEvent.SessionEnded.class,
          "not yet to be driven", SessionEvent.SessionEnded.class);

  /** A value of a specification, whole or in brief; "Torque not reached" is none. */
  private static final Pattern VALUE =
      Pattern.compile("Stage one of|first: |Spec is |(^|[.] )(Torque,? (?!not )|Check pass)");

  private ReplyPromise() {}

  /** Whether every claim in the reply has its event. */
  static boolean saysNoMoreThan(Set<Class<?>> events, String said) {
    String claims = said + " ";
    return WORDS.entrySet().stream()
        .allMatch(word -> !claims.contains(word.getKey()) || events.contains(word.getValue()));
  }

  /** Whether the reply tells a value of a specification. */
  static boolean releasesAValue(String said) {
    return VALUE.matcher(said).find();
  }
}
