package org.undercall.core.decision;

import java.util.Optional;
import org.undercall.core.procedure.Step;
import org.undercall.core.procedure.Walk;
import org.undercall.core.reply.Lesson;

/** What a step is called by whom it is known to. */
final class Titles {
  private Titles() {}

  /**
   * The name of the step at hand if its title is known: from an earlier job of this very procedure,
   * or because a step was closed whose title differs at most by the side.
   */
  static Optional<String> known(Session session) {
    boolean known =
        session.talk().habit().heard().contains(Lesson.TITLES)
            || session.walk().places().stream().anyMatch(other -> isLike(session, other));
    return known ? Optional.of(name(session)) : Optional.empty();
  }

  private static boolean isLike(Session session, Walk.Place other) {
    Walk.Place place = session.place();
    boolean same =
        other.ref().id().equals(place.ref().id()) || sideless(other).equals(sideless(place));
    return same
        && !other.ref().equals(place.ref())
        && session.progress().states().get(session.walk().indexOf(other.ref())).closed();
  }

  /** The title without left and right: what is in front is another part than what is behind. */
  private static String sideless(Walk.Place place) {
    return place.step().head().title().replaceAll("\\b(left|right)\\b ?", "");
  }

  /** Its brief title, else of a fastener the name if no other step has the same, else the title. */
  private static String name(Session session) {
    Step step = session.place().step();
    return step.head()
        .brief()
        .or(() -> step instanceof Step.Fasten f ? fastener(session, f) : Optional.empty())
        .orElse(step.head().title());
  }

  private static Optional<String> fastener(Session session, Step.Fasten fasten) {
    String name = fasten.fastener().name();
    boolean other =
        session.walk().places().stream()
            .map(Walk.Place::step)
            .filter(step -> !step.head().id().equals(fasten.head().id()))
            .anyMatch(s -> s instanceof Step.Fasten f && f.fastener().name().equals(name));
    return other ? Optional.empty() : Optional.of(name);
  }
}
