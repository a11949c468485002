package org.undercall.listen;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Ear;
import org.undercall.port.EarAround;
import org.undercall.port.Heard;

/**
 * An ear that waits for the rest of a value: people pause inside a number for longer than a phrase
 * lasts. What does not belong to it is heard next; what cancels a load is heard before it.
 */
public final class PatientEar extends EarAround {
  /** How long after the first part the second may begin. */
  private static final long PAUSE_MILLIS = 2_000;

  /** How long it may last, once it has begun. */
  private static final long REST_MILLIS = 4_000;

  private final Predicate<Intent> mayGoOn;
  private final BiPredicate<Intent, Intent> isOne;
  private Optional<Heard> waiting = Optional.empty();
  private Set<IntentKind> allowedThen = Set.of();

  /**
   * An ear around another one.
   *
   * @param mayGoOn whether what was heard may be the beginning of a value
   * @param isOne whether what was heard first is one value with the rest, given with it
   */
  public PatientEar(Ear ear, Predicate<Intent> mayGoOn, BiPredicate<Intent, Intent> isOne) {
    super(ear);
    this.mayGoOn = mayGoOn;
    this.isOne = isOne;
  }

  /** {@inheritDoc} After the beginning of a value it may take six seconds longer. */
  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    if (waiting.isPresent()) {
      Optional<Heard> next = waiting;
      waiting = Optional.empty();
      return next;
    }
    Optional<Heard> heard = ear.next(allowed, patienceMillis);
    boolean begun =
        heard
            .filter(h -> h.how() == Heard.How.SPOKEN)
            .filter(h -> mayGoOn.test(read(h.phrase(), allowed)))
            .isPresent();
    return begun ? Optional.of(whole(heard.get(), allowed)) : heard;
  }

  /**
   * {@inheritDoc} What waits was said before a reply: it may not close or confirm what that reply
   * asks for.
   */
  @Override
  public void forget() {
    super.forget();
    waiting = waiting.filter(h -> !read(h.phrase(), allowedThen).kind().closes());
  }

  private Heard whole(Heard first, Set<IntentKind> allowed) {
    try {
      Optional<Heard> rest = ear.next(allowed, PAUSE_MILLIS);
      if (rest.isEmpty() && ear.isHearing()) {
        rest = ear.next(allowed, REST_MILLIS);
      }
      if (rest.filter(r -> isRest(first, r, allowed)).isPresent()) {
        return joined(first, rest.get(), allowed);
      }
      boolean urgent =
          rest.filter(
                  r -> read(r.phrase(), allowed, Interpreter.LEAST_CONFIDENCE).kind().cancelsLoad())
              .isPresent();
      waiting = urgent ? Optional.of(first) : rest;
      allowedThen = allowed;
      return urgent ? rest.get() : first;
    } catch (EndOfInput e) {
      // Asked again, the source has ended still.
    }
    return first;
  }

  /** Whether both are one value, however sure each is: they are heard once more together. */
  private boolean isRest(Heard first, Heard rest, Set<IntentKind> allowed) {
    return rest.how() == Heard.How.SPOKEN
        && isOne.test(read(first.phrase(), allowed), read(inARow(first, rest), allowed));
  }

  private static Intent read(RecognisedPhrase phrase, Set<IntentKind> allowed) {
    return read(phrase, allowed, 0);
  }

  private static Intent read(RecognisedPhrase phrase, Set<IntentKind> allowed, double least) {
    return Interpreter.interpret(phrase, allowed, least);
  }

  private static RecognisedPhrase inARow(Heard first, Heard rest) {
    return new RecognisedPhrase(
        Stream.of(first, rest).flatMap(h -> h.phrase().words().stream()).toList());
  }

  /** Both as one phrase in parts; not sure if they are something else when heard together. */
  private Heard joined(Heard first, Heard rest, Set<IntentKind> allowed) {
    RecognisedPhrase row = inARow(first, rest);
    RecognisedPhrase both = ear.together(first, rest, allowed).orElse(row);
    boolean one =
        read(both, allowed).kind() == read(row, allowed).kind()
            && isOne.test(read(first.phrase(), allowed), read(both, allowed));
    RecognisedPhrase phrase = new RecognisedPhrase(one ? both.words() : unsure(row), true);
    Optional<byte[]> sound = first.sound().flatMap(f -> rest.sound().map(r -> both(f, r)));
    return new Heard(phrase, first.how(), first.levels(), sound);
  }

  private static List<RecognisedPhrase.Word> unsure(RecognisedPhrase phrase) {
    return phrase.words().stream()
        .map(w -> new RecognisedPhrase.Word(w.text(), 0, w.start(), w.end()))
        .toList();
  }

  private static byte[] both(byte[] first, byte[] rest) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(first);
    bytes.writeBytes(rest);
    return bytes.toByteArray();
  }
}
