package org.undercall.core.decision;

/**
 * Time spent, in milliseconds of the clock that is never set.
 *
 * @param working at work
 * @param held while the work was held
 */
record Spent(long working, long held) {
  static final Spent NONE = new Spent(0, 0);

  Spent plus(Spent more) {
    return new Spent(working + more.working, held + more.held);
  }
}
