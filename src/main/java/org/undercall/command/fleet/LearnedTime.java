package org.undercall.command.fleet;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.undercall.adapter.fleet.Fleet;
import org.undercall.core.review.Facts;
import org.undercall.port.Fault;

/**
 * How long the work on a procedure took, learned from the complete sessions of a folder that were
 * worked: the time on its steps, without holds. Of what is no record of work nothing is learned.
 *
 * @param sessions from how many
 * @param median the middle one, half-way between the two middle ones of an even number
 * @param least the shortest
 * @param most the longest
 */
public record LearnedTime(long sessions, Duration median, Duration least, Duration most) {

  /**
   * What a folder of sessions tells; empty if it holds none, or cannot be read.
   *
   * @param sums each SHA-256 of the procedure, with its parts first and without
   */
  public static Optional<LearnedTime> of(Path folder, Set<String> sums) {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    List<Long> took = new ArrayList<>();
    try (Fleet fleet = Fleet.open(folder, true, FleetOptions.now(), new SessionExaminer(folder))) {
      fleet.each(
          row -> {
            Facts facts = row.facts();
            boolean counts =
                sums.contains(facts.work().sha256())
                    && facts.work().state().equals(Facts.COMPLETE)
                    && facts.work().madeInWork();
            if (counts) {
              took.add(facts.times().workingMs());
            }
          });
    } catch (Fault e) {
      return Optional.empty();
    }
    return took.isEmpty() ? Optional.empty() : Optional.of(of(Spread.of(took)));
  }

  private static LearnedTime of(Spread spread) {
    return new LearnedTime(
        spread.count(),
        Duration.ofMillis(Math.round(spread.median())),
        Duration.ofMillis(spread.least()),
        Duration.ofMillis(spread.most()));
  }

  /** In words, such as "42 min, 38 to 55 min, from 5 sessions here". */
  public String words() {
    return sessions == 1
        ? minutes(median) + " min, from one session here"
        : String.format(
            Locale.ROOT,
            "%d min (median), %d to %d min, from %d sessions here",
            minutes(median),
            minutes(least),
            minutes(most),
            sessions);
  }

  private static long minutes(Duration length) {
    return Math.max(1, Math.round(length.toSeconds() / 60.0));
  }
}
