package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.term.Positions;

/**
 * How far a set of fasteners has come at the stage at hand: each of them is called by itself.
 *
 * @param closed the positions that were called, in that order
 * @param before those of them that stay if what was called last is taken back
 * @param doubted whether each of the others may have been turned through an angle
 */
public record Pass(List<Integer> closed, List<Integer> before, boolean doubted) {
  static final Pass NONE = new Pass(List.of(), List.of(), false);

  public Pass {
    closed = List.copyOf(closed);
    before = List.copyOf(before);
  }

  Pass with(Positions more) {
    List<Integer> all = new ArrayList<>(closed);
    all.addAll(more.numbers());
    return new Pass(all, closed, doubted);
  }

  /**
   * With some of them open again.
   *
   * @param doubt whether it is not known which of those that are open now were turned
   */
  Pass without(Positions back, boolean doubt) {
    List<Integer> rest = new ArrayList<>(closed);
    rest.removeAll(back.numbers());
    return new Pass(rest, rest, doubted || doubt);
  }

  /** The position that comes next in a sequence; empty if all were called. */
  Optional<Integer> next(List<Integer> sequence) {
    return left(sequence).stream().findFirst();
  }

  /** The positions of a sequence that were not called. */
  public List<Integer> left(List<Integer> sequence) {
    return sequence.stream().filter(n -> !closed.contains(n)).toList();
  }

  /** The positions that were called last. */
  List<Integer> last() {
    List<Integer> last = new ArrayList<>(closed);
    last.removeAll(before);
    return last;
  }

  /** Once all were called: what stays if the last call is taken back. */
  Pass ended() {
    return new Pass(List.of(), before, false);
  }

  /** The last call is taken back, after all were called. */
  Pass reopened() {
    return new Pass(before, before, false);
  }
}
