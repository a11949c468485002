package org.undercall.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.undercall.adapter.log.LogContent;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Caution;
import org.undercall.core.term.Positions;
import org.undercall.port.Fault;

/**
 * What a technician heard of cautions earlier on the day of a session.
 *
 * @param any whether cautions of any procedure were understood
 * @param said what was said to him before he confirmed them, with his name given; else nothing
 */
record CautionsHeard(boolean any, List<String> said) {
  private static final int DATE = "2026-01-31".length();

  CautionsHeard {
    said = List.copyOf(said);
  }

  /**
   * In the other sessions of the same day and technician. One that cannot be read has none. Who is
   * not named may be anybody, so that nothing counts as said to him.
   */
  static CautionsHeard today(SessionFolder session, Optional<String> who) throws Fault {
    String day = session.name().substring(0, DATE);
    boolean any = false;
    List<String> said = new ArrayList<>();
    for (SessionFolder other : SessionFolder.all(session.path().getParent())) {
      boolean sameDay = other.name().startsWith(day) && !other.name().equals(session.name());
      if (sameDay) {
        Optional<List<String>> before = beforeUnderstood(other, who);
        any |= before.isPresent();
        before.filter(b -> who.isPresent()).ifPresent(said::addAll);
      }
    }
    return new CautionsHeard(any, said);
  }

  /** The numbers of the cautions that were said whole; empty if none was. */
  Optional<Positions> of(List<Caution> cautions) {
    List<Integer> numbers =
        IntStream.rangeClosed(1, cautions.size())
            .filter(n -> said.stream().anyMatch(s -> s.contains(cautions.get(n - 1).text())))
            .boxed()
            .toList();
    return numbers.isEmpty() ? Optional.empty() : Optional.of(new Positions(numbers));
  }

  /** What was said up to the answer that the cautions are understood; empty if there was none. */
  private static Optional<List<String>> beforeUnderstood(
      SessionFolder folder, Optional<String> who) {
    try {
      LogContent log = SessionLogFile.read(folder.log());
      return log.started().technician().equals(who)
          ? beforeUnderstood(log.decisions())
          : Optional.empty();
    } catch (Fault e) {
      return Optional.empty();
    }
  }

  private static Optional<List<String>> beforeUnderstood(List<Recorded> decisions) {
    List<String> said = new ArrayList<>();
    for (Recorded decision : decisions) {
      boolean understood =
          decision.events().stream().anyMatch(SessionEvent.CautionsUnderstood.class::isInstance);
      if (understood) {
        return Optional.of(said);
      }
      said.add(decision.said());
    }
    return Optional.empty();
  }
}
