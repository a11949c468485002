package org.undercall.listen;

import java.time.Duration;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
 * <p>What cancels a load is passed on at any time. All else that is said to the closed ear is not,
 * so it is neither answered nor logged; it is only counted. While a note is spoken the ear stays
 * open.
 */
public final class CalledEar extends EarAround {
  private static final Set<IntentKind> CALL = Set.of(IntentKind.ATTENTION);

  /** What a closed ear hears: the call, and that the car, the jack or a stand moves. */
  private static final Set<IntentKind> TO_CLOSED =
      Stream.of(IntentKind.values())
          .filter(kind -> kind == IntentKind.ATTENTION || kind.cancelsLoad())
          .collect(Collectors.toUnmodifiableSet());

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
      return ear.next(TO_CLOSED, patienceMillis).filter(this::getsThrough);
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

  /** Opens the ear at a call, and at what cancels a load: only that is passed on. */
  private boolean getsThrough(Heard heard) {
    boolean danger =
        Interpreter.interpret(heard.phrase(), TO_CLOSED, Interpreter.LEAST_CONFIDENCE)
            .kind()
            .cancelsLoad();
    open = danger || isCall(heard);
    if (!open) {
      ignored++;
    } else if (!danger) {
      answer();
    }
    return danger;
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
