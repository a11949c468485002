package org.undercall.session;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.core.event.EventKind;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.review.FollowUp;
import org.undercall.core.review.Review;
import org.undercall.core.term.StepRef;
import org.undercall.port.Fault;

/** The visits that went on from a session, found beside it. */
public final class FollowUps {
  private FollowUps() {}

  /**
   * The visits to a session, in the order in which they began; one that cannot be read is left out,
   * since it shows nothing.
   *
   * @param log the sum of the session's log at its last line
   */
  public static List<FollowUp> of(SessionFolder first, String log) {
    List<FollowUp> found = new ArrayList<>();
    for (SessionFolder folder : beside(first)) {
      if (mayBe(folder, first.name())) {
        read(folder, first.name(), log).ifPresent(found::add);
      }
    }
    found.sort(Comparator.comparing(visit -> visit.began().toInstant()));
    return List.copyOf(found);
  }

  /** The sessions of the same folder; none if it cannot be looked into. */
  private static List<SessionFolder> beside(SessionFolder first) {
    try {
      return SessionFolder.all(first.path().toAbsolutePath().resolveSibling("."));
    } catch (Fault e) {
      return List.of();
    }
  }

  /** Whether the first line of a log has a link that may be the one; the rest is not read. */
  private static boolean mayBe(SessionFolder folder, String name) {
    try (BufferedReader lines = Files.newBufferedReader(folder.log(), StandardCharsets.UTF_8)) {
      String line = lines.readLine();
      return line != null
          && line.contains("\"" + EventKind.VISIT_BEGUN.id() + "\"")
          && line.contains("\"" + name + "\"");
    } catch (IOException e) {
      return false;
    }
  }

  private static Optional<FollowUp> read(SessionFolder folder, String name, String log) {
    try {
      StoredSession stored = StoredSession.read(folder);
      Review review = stored.review();
      Optional<SessionEvent.VisitBegun> link =
          review.head().visit().filter(visit -> visit.session().equals(name));
      boolean rehearsed = !review.origin().isRecord();
      return link.map(
          visit ->
              new FollowUp(
                  folder.name(),
                  review.head().started(),
                  review.complete() && !rehearsed,
                  rehearsed,
                  visit.log().equals(log),
                  review.head().job().odometer(),
                  moved(review)));
    } catch (Fault e) {
      return Optional.empty();
    }
  }

  private static List<StepRef> moved(Review review) {
    return review.steps().stream()
        .filter(step -> step.work().answers().stream().anyMatch(a -> !a.event().passed()))
        .map(step -> step.place().ref())
        .toList();
  }
}
