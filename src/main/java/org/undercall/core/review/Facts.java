package org.undercall.core.review;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Occasion;

/**
 * What is kept of a session to look at many together: flat rows, worked out as the review does.
 *
 * @param work what was worked on
 * @param times when, and how long
 * @param steps a row for each step that something was done on, in the order in which that began
 * @param refusals what was refused, at which step and how often
 * @param misheard phrases that were no phrase, and calls that were taken back
 * @param values the last value measured, stage closed and head marking read of each step
 * @param due what is still to be done
 * @param told which car, how it was said, and what it goes on from
 * @param found faults, extra work and parts that were named, and what went wrong and is not settled
 */
public record Facts(
    Work work,
    Times times,
    List<StepRow> steps,
    List<Refused> refusals,
    List<Misheard> misheard,
    List<Value> values,
    List<Due> due,
    Told told,
    List<Due> found) {

  /** The state of a step or session. */
  public static final String COMPLETE = "complete";

  /** The state of a step or session. */
  public static final String OPEN = "open";

  /** The state of a session from which nothing is computed. */
  public static final String DAMAGED = "damaged";

  /** The occasion of a record. */
  public static final String WORK = Kebab.of(Occasion.WORK);

  /** The state of a step. */
  public static final String CLOSED = "closed";

  /**
   * What was worked on.
   *
   * @param title of the procedure
   * @param revision of the procedure
   * @param sha256 of the procedure's file
   * @param state complete, open or damaged
   * @param occasion what it was begun for: work, rehearsal or demonstration; blank if damaged
   * @param verdict what may be said of its work as a whole, in one word; blank if damaged
   * @param lines decisions of the log
   * @param events of the log
   */
  public record Work(
      String title,
      String revision,
      String sha256,
      String state,
      String occasion,
      String verdict,
      long lines,
      long events) {
    /** Whether it is a record of work, and no rehearsal or demonstration. */
    public boolean madeInWork() {
      return occasion.equals(WORK);
    }
  }

  /**
   * When, and how long; lengths of time in milliseconds.
   *
   * @param firstAt wall clock of the first decision, in ISO form; blank for a damaged session
   * @param firstMs the same, since 1970
   * @param lastAt wall clock of the last decision
   * @param lastMs the same, since 1970
   * @param elapsedMs from the first decision to the last
   * @param awayMs while the program did not run
   * @param workingMs on a step at hand
   */
  public record Times(
      String firstAt,
      long firstMs,
      String lastAt,
      long lastMs,
      long elapsedMs,
      long awayMs,
      long workingMs) {

    static Times of(OffsetDateTime first, OffsetDateTime last, Review.Totals totals) {
      return new Times(
          java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(first),
          first.toInstant().toEpochMilli(),
          java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(last),
          last.toInstant().toEpochMilli(),
          totals.elapsed().length().toMillis(),
          totals.away().toMillis(),
          totals.working().toMillis());
    }
  }

  /**
   * A step.
   *
   * @param step its id, with /left or /right
   * @param state closed, open, put off or started
   * @param reason it was put off for last; blank if it never was
   * @param workingMs time at work
   * @param wholeMs from its beginning to its closing; 0 unless it is closed
   * @param reopened how often it was opened again
   * @param begun where in the log something was first done on it; 0 if nothing was
   */
  public record StepRow(
      String step,
      String state,
      String reason,
      long workingMs,
      long wholeMs,
      long reopened,
      long begun) {
    /** Whether it is closed. */
    public boolean closed() {
      return state.equals(CLOSED);
    }
  }

  /**
   * What was refused at a step.
   *
   * @param step its id; blank if none was at hand
   * @param id of the event
   * @param what in words
   * @param n how often
   */
  public record Refused(String step, String id, String what, long n) {}

  /**
   * What was heard wrongly.
   *
   * @param heard the words
   * @param what became of them
   * @param n how often
   */
  public record Misheard(String heard, String what, long n) {}

  /**
   * A value of a step.
   *
   * @param step its id
   * @param what measured, marking, or the stage
   * @param value as called
   */
  public record Value(String step, String what, String value) {}

  /**
   * Something still to be done.
   *
   * @param step its id
   * @param what handed over, put off, or started and not tightened
   * @param detail when it is due, or the reason; may be blank
   * @param kind what that comes to, in one word: before-driving, days, distance or other
   */
  public record Due(String step, String what, String detail, String kind) {}

  /**
   * Which car, and what the session goes on from; blank for what is not known.
   *
   * @param odometer in kilometres
   * @param visitOf the session that this one goes on from
   * @param visitLog the sum of that session's log
   * @param moved the steps of a visit at which something had moved
   * @param again the hand-over steps that tell to tighten something again
   */
  public record Told(
      String registration,
      String vin,
      String odometer,
      String visitOf,
      String visitLog,
      List<String> moved,
      List<String> again) {
    static final Told NOTHING = new Told("", "", "", "", "", List.of(), List.of());

    public Told {
      moved = List.copyOf(moved);
      again = List.copyOf(again);
    }
  }

  public Facts {
    found = List.copyOf(found);
    steps = List.copyOf(steps);
    refusals = List.copyOf(refusals);
    misheard = List.copyOf(misheard);
    values = List.copyOf(values);
    due = List.copyOf(due);
  }

  /**
   * The facts of a session.
   *
   * @param walk the procedure; empty if it is not known, so that every step is taken for one of it
   * @param log every decision, at least one
   */
  public static Facts of(Optional<Walk> walk, List<Recorded> log) {
    FactsReader reader = new FactsReader(walk, log.get(0));
    log.forEach(reader::read);
    return reader.facts(Origin.of(log));
  }

  /** What is known of a session from which nothing is computed. */
  public static Facts damaged(String title, String revision, String sha256, long events) {
    return new Facts(
        new Work(title, revision, sha256, DAMAGED, "", "", 0, events),
        new Times("", 0, "", 0, 0, 0, 0),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Told.NOTHING,
        List.of());
  }
}
