package org.undercall.core.decision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.core.term.Positions;

/**
 * How far a set of fasteners has come at the stage at hand: each of them is called by itself.
 *
 * @param closed the positions that were called, in that order
 * @param before those of them that stay if what was called last is taken back
 * @param doubted whether each of the others may have been turned through an angle
 * @param ahead how many stages are closed of those that are further than the stage at hand, since
 *     one was renewed
 */
public record Pass(
    List<Integer> closed, List<Integer> before, boolean doubted, Map<Integer, Integer> ahead) {
  static final Pass NONE = new Pass(List.of(), List.of(), false, Map.of());

  public Pass {
    closed = List.copyOf(closed);
    before = List.copyOf(before);
    ahead = Map.copyOf(ahead);
  }

  Pass with(Positions more) {
    List<Integer> all = new ArrayList<>(closed);
    all.addAll(more.numbers());
    return new Pass(all, closed, doubted, ahead);
  }

  /**
   * With some of them open again.
   *
   * @param doubt whether it is not known which of those that are open now were turned
   */
  Pass without(Positions back, boolean doubt) {
    List<Integer> rest = new ArrayList<>(closed);
    rest.removeAll(back.numbers());
    return new Pass(rest, rest, doubted || doubt, ahead);
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

  /** Once all were called at a stage: those that were further before; what stays if taken back. */
  Pass ended(int stage) {
    return new Pass(furtherThan(stage), before, doubted && !ahead.isEmpty(), ahead);
  }

  /**
   * One of a sequence is renewed: it starts again, and the others wait for it.
   *
   * @param stages how many stages all of them have closed
   */
  Pass renewed(int position, int stages, List<Integer> sequence) {
    Map<Integer, Integer> far = new HashMap<>();
    for (int other : sequence) {
      int reached =
          Math.max(ahead.getOrDefault(other, 0), stages + (closed.contains(other) ? 1 : 0));
      if (other != position && reached > 0) {
        far.put(other, reached);
      }
    }
    List<Integer> first = new Pass(List.of(), List.of(), false, far).furtherThan(0);
    return new Pass(first, first, doubted, far);
  }

  private List<Integer> furtherThan(int stage) {
    return ahead.entrySet().stream()
        .filter(other -> other.getValue() > stage)
        .map(Map.Entry::getKey)
        .sorted()
        .toList();
  }

  /** The last call is taken back, after all were called. */
  Pass reopened() {
    return new Pass(before, before, false, ahead);
  }
}
