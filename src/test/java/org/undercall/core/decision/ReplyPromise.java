package org.undercall.core.decision;

import java.util.Map;
import java.util.Set;
import org.undercall.core.event.SessionEvent;

/** What a reply may say only if it was recorded in the same decision. */
final class ReplyPromise {
  private static final Map<String, Class<?>> WORDS =
      Map.of(
          "Step closed.", SessionEvent.StepClosed.class,
          " closed at ", SessionEvent.StageClosed.class,
          " confirmed, ", SessionEvent.LoadConfirmed.class,
          "Note kept", SessionEvent.NoteKept.class,
          "Work complete", SessionEvent.SessionEnded.class);

  private ReplyPromise() {}

  /** Whether every claim in the reply has its event. */
  static boolean saysNoMoreThan(Set<Class<?>> events, String said) {
    String claims = said.replace("not confirmed", "");
    return WORDS.entrySet().stream()
        .allMatch(word -> !claims.contains(word.getKey()) || events.contains(word.getValue()));
  }

  /** Whether the reply tells a value of a specification. */
  static boolean releasesAValue(String said) {
    return said.contains("Stage one of") || said.contains("first: ");
  }
}
