package org.undercall.core.decision;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.term.PersonName;
import org.undercall.core.term.StepRef;

/**
 * What was told of the job, and who did what.
 *
 * @param vin the identification number as far as it was told by voice
 * @param technician who works; empty if nobody named himself
 * @param before who worked before something of the job was told last, if that is taken back
 * @param next who takes the work over, once the cautions are understood
 * @param closers who closed each step that was closed; empty for one who is not named
 * @param failed the steps whose check failed and was not settled
 * @param visit the session that this one goes on from
 * @param crew who may be there beside the technician
 */
public record Account(
    String vin,
    String technician,
    String before,
    Optional<String> next,
    Map<StepRef, String> closers,
    Set<StepRef> failed,
    Optional<SessionEvent.VisitBegun> visit,
    Crew crew) {
  static final Account NOTHING_TOLD =
      new Account(
          "", "", "", Optional.empty(), Map.of(), Set.of(), Optional.empty(), Crew.NOT_GIVEN);

  public Account {
    closers = Map.copyOf(closers);
    failed = Set.copyOf(failed);
  }

  /** Whether the technician who works now closed everything that was closed. */
  public boolean byOne() {
    return closers.values().stream().allMatch(technician::equals);
  }

  /** Whether who works now is an apprentice. */
  public boolean isApprentice() {
    return crew.apprentice().filter(name -> PersonName.same(name, technician)).isPresent();
  }

  Account with(Crew next) {
    return new Account(vin, technician, before, this.next, closers, failed, visit, next);
  }

  Account visits(SessionEvent.VisitBegun before) {
    return new Account(
        vin, technician, this.before, next, closers, failed, Optional.of(before), crew);
  }

  Account withVin(String told) {
    return new Account(told, technician, technician, next, closers, failed, visit, crew);
  }

  /** Without what was told last; parts of an identification number all are taken back. */
  Account takenBack() {
    return new Account("", before, before, next, closers, failed, visit, crew);
  }

  Account by(String name) {
    return new Account(vin, name, technician, Optional.empty(), closers, failed, visit, crew);
  }

  Account next(Optional<String> name) {
    return new Account(vin, technician, before, name, closers, failed, visit, crew);
  }

  Account closed(StepRef step) {
    Map<StepRef, String> more = new HashMap<>(closers);
    more.put(step, technician);
    return new Account(vin, technician, before, next, more, without(step), visit, crew);
  }

  Account checked(StepRef step, boolean passed) {
    Set<StepRef> more = new HashSet<>(without(step));
    if (!passed) {
      more.add(step);
    }
    return new Account(vin, technician, before, next, closers, more, visit, crew);
  }

  private Set<StepRef> without(StepRef step) {
    Set<StepRef> rest = new HashSet<>(failed);
    rest.remove(step);
    return rest;
  }
}
