package org.undercall.listen;

import java.time.Duration;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.reply.Say;
import org.undercall.port.Ear;
import org.undercall.port.EarAround;
import org.undercall.port.Heard;
import org.undercall.port.Time;
import org.undercall.port.Voice;

/**
 * An ear that is closed until it is called: it hears only the attention phrase, answers it, and is
 * open for a time. Every reply of the program begins that time anew.
 *
 * <p>What is said to the closed ear is not passed on, so it is neither answered nor logged; it is
 * only counted. While a note is spoken the ear stays open.
 */
public final class CalledEar extends EarAround {
  private static final Set<IntentKind> CALL = Set.of(IntentKind.ATTENTION);

  private final Voice voice;
  private final Time time;
  private final long openMillis;
  private boolean open;
  private long until;
  private long ignored;

  /**
   * An ear in front of another one.
   *
   * @param ear hears; closed with this one
   * @param voice answers the call; not closed
   * @param time measures how long the ear is open
   * @param openFor how long that is after the call and after each reply
   */
  public CalledEar(Ear ear, Voice voice, Time time, Duration openFor) {
    super(ear);
    this.voice = voice;
    this.time = time;
    this.openMillis = openFor.toMillis();
  }

  /** {@inheritDoc} Empty also after a call, and after what the closed ear ignores. */
  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    if (allowed.contains(IntentKind.NOTE_TEXT)) {
      return ear.next(allowed, patienceMillis);
    }
    long left = left();
    open &= left > 0;
    if (!open) {
      ear.next(CALL, patienceMillis).ifPresent(this::toClosedEar);
      return Optional.empty();
    }
    Set<IntentKind> kinds = EnumSet.copyOf(CALL);
    kinds.addAll(allowed);
    Optional<Heard> heard = ear.next(kinds, Math.min(patienceMillis, left));
    if (heard.filter(CalledEar::isCall).isPresent()) {
      answer();
      return Optional.empty();
    }
    open = heard.isPresent() || left() > 0;
    return heard;
  }

  private long left() {
    return until - time.now().monotonicMillis();
  }

  private void toClosedEar(Heard heard) {
    if (isCall(heard)) {
      open = true;
      answer();
    } else {
      ignored++;
    }
  }

  private static boolean isCall(Heard heard) {
    return Interpreter.interpret(heard.phrase(), CALL, Interpreter.LEAST_CONFIDENCE).kind()
        == IntentKind.ATTENTION;
  }

  private void answer() {
    voice.say(Say.listening().text());
    forget();
  }

  @Override
  public void forget() {
    super.forget();
    until = time.now().monotonicMillis() + openMillis;
  }

  /** How many phrases the closed ear did not pass on. */
  public long ignored() {
    return ignored;
  }
}
