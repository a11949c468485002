package org.undercall.listen;

import java.io.ByteArrayOutputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.undercall.adapter.recogniser.FreeHearing;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.Certainty;
import org.undercall.core.intent.Evidence;
import org.undercall.core.intent.HeardTwice;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.Looks;
import org.undercall.core.intent.Meanings;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SecondLook;
import org.undercall.core.intent.Witness;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.SoundQuality;

/**
 * Hears a value, or a phrase that was not understood, a second time as a whole and weighs what else
 * it could have been. In poor sound more must speak for it. What closes or confirms is also heard
 * with all words of the language, which speak against it if it was denied.
 */
final class SecondHearing implements AutoCloseable {
  /** Frames that are kept: 9 s. */
  private static final int MOST_FRAMES = 300;

  private static final int BYTES_PER_SAMPLE = 2;

  /** How long before its first word a phrase may begin, should the first word have been missed. */
  private static final double SECONDS_BEFORE = 2.5;

  /** How long before a phrase words still speak against it; hearing freely takes its time. */
  private static final double SECONDS_FREE = 1;

  /** Silence before and after, without which a word gets lost: 0.4 s. */
  private static final byte[] SILENCE = new byte[BYTES_PER_SAMPLE * Frames.RATE * 4 / 10];

  /** A phrase that begins so soon after words that were not understood is the rest of them. */
  private static final double LEAST_PAUSE = 0.4;

  private final RecogniserMaker maker;
  private final Deque<Frame> recent = new ArrayDeque<>();
  private Optional<FreeHearing> free = Optional.empty();
  private Optional<Evidence> before = Optional.empty();
  private List<Frame> soundBefore = List.of();
  private List<Frame> soundLast = List.of();
  private double endOfUnclear = Double.NEGATIVE_INFINITY;

  SecondHearing(RecogniserMaker maker) {
    this.maker = maker;
  }

  /** Keeps a frame. */
  void keep(Frame frame) {
    recent.add(frame);
    if (recent.size() > MOST_FRAMES) {
      recent.remove();
    }
  }

  /** Forgets what was kept. */
  void clear() {
    recent.clear();
    soundBefore = List.of();
    soundLast = List.of();
  }

  /**
   * Looks at a phrase again, if it needs that, and forgets its sound.
   *
   * @param first as heard at first; there is a word in it
   * @return what it was, with a confidence that is below the program's limit if that is not sure
   */
  RecognisedPhrase of(RecognisedPhrase first, Set<IntentKind> allowed) {
    return of(first, new AtWork(allowed, this));
  }

  /** Looks at a phrase again in another way than at work. */
  RecognisedPhrase of(RecognisedPhrase first, Looks looks) {
    RecognisedPhrase heard = heard(first, looks);
    boolean clear = looks.counts(heard, Interpreter.LEAST_CONFIDENCE);
    before = clear ? Optional.empty() : before;
    endOfUnclear =
        clear ? Double.NEGATIVE_INFINITY : first.words().get(first.words().size() - 1).end();
    return heard;
  }

  /**
   * Hears the two phrases heard last as one, without what speaks for either alone.
   *
   * @return empty if the sound of one was not kept
   */
  Optional<RecognisedPhrase> together(
      RecognisedPhrase first, RecognisedPhrase rest, Set<IntentKind> allowed) {
    if (soundBefore.isEmpty() || soundLast.isEmpty()) {
      return Optional.empty();
    }
    List<Frame> sound = Stream.concat(soundBefore.stream(), soundLast.stream()).toList();
    List<RecognisedPhrase.Word> words =
        Stream.of(first, rest).flatMap(phrase -> phrase.words().stream()).toList();
    before = Optional.empty();
    return Optional.of(again(new RecognisedPhrase(words), sound, new AtWork(allowed, this)));
  }

  private RecognisedPhrase heard(RecognisedPhrase first, Looks looks) {
    List<Frame> sound = soundOf(recent, first, SECONDS_BEFORE);
    recent.clear();
    soundBefore = soundLast;
    soundLast = sound;
    if (sound.isEmpty()) {
      return first;
    }
    RecognisedPhrase second = again(first, sound, looks);
    if (!looks.wantsWitness(second, Interpreter.LEAST_CONFIDENCE)) {
      return second;
    }
    List<String> rivals = looks.rivals(second, Interpreter.LEAST_CONFIDENCE);
    List<Alternative> alternatives =
        rivals.isEmpty() ? List.of() : maker.alternatives(rivals, bytes(sound), start(sound));
    boolean poor = !rivals.isEmpty() && Certainty.isPoor(SoundQuality.decibels(sound));
    boolean more = !rivals.isEmpty() && isPartOfMore(first, second, sound, poor);
    if (!more && looks.isBeyondDoubt(second, alternatives)) {
      return second;
    }
    List<Frame> near = soundOf(sound, first, SECONDS_FREE);
    HeardTwice both = new HeardTwice(second, freely().of(bytes(near), start(near)));
    RecognisedPhrase judged =
        rivals.isEmpty()
            ? looks.judged(both, Interpreter.LEAST_CONFIDENCE)
            : looks.weighed(both, alternatives, poor, Interpreter.LEAST_CONFIDENCE);
    boolean closes = !looks.rivals(judged, Interpreter.LEAST_CONFIDENCE).isEmpty();
    return more && closes ? unsure(judged) : judged;
  }

  private FreeHearing freely() {
    if (free.isEmpty()) {
      free = Optional.of(maker.freely());
    }
    return free.get();
  }

  @Override
  public void close() {
    free.ifPresent(FreeHearing::close);
    free = Optional.empty();
  }

  /** Whether a phrase that closes was said among more words, which the list does not hold. */
  private boolean isPartOfMore(
      RecognisedPhrase first, RecognisedPhrase heard, List<Frame> sound, boolean poor) {
    return first.words().get(0).start() - endOfUnclear < LEAST_PAUSE
        || UnheardSpeech.around(sound, heard, poor);
  }

  private static double start(List<Frame> sound) {
    return seconds(sound.get(0).firstSample()) - seconds(SILENCE.length / BYTES_PER_SAMPLE);
  }

  private RecognisedPhrase again(RecognisedPhrase first, List<Frame> sound, Looks looks) {
    Optional<List<String>> phrases = looks.phrases(first, Interpreter.LEAST_CONFIDENCE);
    if (phrases.isEmpty()) {
      return first;
    }
    List<String> list = new ArrayList<>(phrases.get());
    list.add(RecognisedPhrase.UNKNOWN);
    List<Alternative> alternatives = maker.alternatives(list, bytes(sound), start(sound));
    return looks
        .likeliest(alternatives)
        .map(choice -> looks.remembered(choice, first.words().get(0).start()))
        .map(choice -> sure(choice, first))
        .orElseGet(() -> looks.counts(first, Interpreter.LEAST_CONFIDENCE) ? unsure(first) : first);
  }

  /** Looks for what may be said at work. */
  private record AtWork(Set<IntentKind> allowed, SecondHearing ear) implements Looks {
    @Override
    public Meanings.Choice remembered(Meanings.Choice choice, double seconds) {
      return ear.remembered(choice, allowed, seconds);
    }

    @Override
    public Optional<List<String>> phrases(RecognisedPhrase first, double least) {
      return SecondLook.phrases(first, allowed, least);
    }

    @Override
    public Optional<Meanings.Choice> likeliest(List<Alternative> alternatives) {
      return isNote()
          ? Meanings.call(alternatives, allowed)
          : Meanings.likeliest(alternatives, allowed);
    }

    @Override
    public boolean wantsWitness(RecognisedPhrase heard, double least) {
      return Witness.isWanted(heard, allowed, least);
    }

    @Override
    public List<String> rivals(RecognisedPhrase heard, double least) {
      return Witness.rivals(heard, allowed, least);
    }

    @Override
    public boolean isBeyondDoubt(RecognisedPhrase heard, List<Alternative> alternatives) {
      return Witness.isBeyondDoubt(heard, alternatives);
    }

    @Override
    public RecognisedPhrase judged(HeardTwice both, double least) {
      return Witness.judged(both, allowed, least);
    }

    @Override
    public RecognisedPhrase weighed(
        HeardTwice both, List<Alternative> alternatives, boolean poor, double least) {
      return Witness.weighed(both, alternatives, poor, allowed, least);
    }

    @Override
    public boolean counts(RecognisedPhrase first, double least) {
      return !isNote() && !(Interpreter.interpret(first, allowed, least) instanceof Intent.Unclear);
    }

    private boolean isNote() {
      return allowed.contains(IntentKind.NOTE_TEXT);
    }
  }

  /** A value with what spoke for it when it was said before, which is kept from now on. */
  private Meanings.Choice remembered(
      Meanings.Choice choice, Set<IntentKind> allowed, double seconds) {
    if (!choice.number()) {
      return choice;
    }
    Meanings.Choice both = before.map(e -> e.with(choice, allowed, seconds)).orElse(choice);
    before = Optional.of(Evidence.of(both, allowed, seconds));
    return both;
  }

  private static RecognisedPhrase sure(Meanings.Choice choice, RecognisedPhrase first) {
    double confidence = Certainty.confidence(choice, first, Interpreter.LEAST_CONFIDENCE);
    return with(choice.words(), confidence);
  }

  /** Nothing that makes sense is the likeliest: the words stay, but they do not count. */
  private static RecognisedPhrase unsure(RecognisedPhrase first) {
    return with(first.words(), Math.min(first.confidence(), Interpreter.LEAST_CONFIDENCE / 2));
  }

  private static RecognisedPhrase with(List<RecognisedPhrase.Word> words, double confidence) {
    return new RecognisedPhrase(
        words.stream()
            .map(w -> new RecognisedPhrase.Word(w.text(), confidence, w.start(), w.end()))
            .toList());
  }

  private static List<Frame> soundOf(
      Collection<Frame> frames, RecognisedPhrase phrase, double secondsBefore) {
    double from = phrase.words().get(0).start() - secondsBefore;
    return frames.stream().filter(frame -> seconds(frame.firstSample()) >= from).toList();
  }

  private static byte[] bytes(List<Frame> sound) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(SILENCE);
    sound.forEach(frame -> bytes.write(frame.sound(), 0, BYTES_PER_SAMPLE * frame.samples()));
    bytes.writeBytes(SILENCE);
    return bytes.toByteArray();
  }

  private static double seconds(long samples) {
    return (double) samples / Frames.RATE;
  }
}
