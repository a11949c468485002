package org.undercall.listen;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.undercall.core.intent.Continuation;
import org.undercall.core.intent.Continuations;
import org.undercall.core.intent.IntentKind;

/**
 * Decides that a phrase has ended when its words are whole and nobody speaks any more; the likelier
 * it is that words follow, the later. A number that has hardly begun is left to the recogniser.
 */
public final class QuickEnd implements EndOfSpeech {
  /** The words must have been the same this long in any case. */
  private static final int LEAST_SAME = 90;

  private final Waits waits;
  private final Function<String, Optional<Continuation>> following;
  private Set<IntentKind> allowed = Set.of();
  private String words = "";
  private Optional<Continuation> next = Optional.empty();
  private int sameMillis;
  private int quietMillis;

  /** An end after these waits. */
  public QuickEnd(Waits waits) {
    this.waits = waits;
    this.following = now -> Continuations.of(now, allowed);
  }

  /**
   * An end where something else than the work's phrases is said.
   *
   * @param following what could follow the words; empty if they are nothing yet
   */
  QuickEnd(Waits waits, Function<String, Optional<Continuation>> following) {
    this.waits = waits;
    this.following = following;
  }

  @Override
  public void begin(Set<IntentKind> allowed) {
    this.allowed = allowed;
    words = "";
    next = Optional.empty();
    sameMillis = 0;
    quietMillis = 0;
  }

  @Override
  public boolean ended(int millis, boolean speech, Supplier<String> heard) {
    quietMillis = speech ? 0 : quietMillis + millis;
    String now = heard.get();
    if (now.equals(words)) {
      sameMillis += millis;
    } else {
      words = now;
      next = following.apply(words);
      sameMillis = 0;
    }
    return next.isPresent() && isOver(next.get());
  }

  @Override
  public boolean holds(String finalWords) {
    return following.apply(finalWords).filter(this::isOver).isPresent();
  }

  private boolean isOver(Continuation after) {
    boolean quiet = quietMillis >= waits.quiet(after) && sameMillis >= LEAST_SAME;
    return quiet || sameMillis >= waits.same(after);
  }
}
