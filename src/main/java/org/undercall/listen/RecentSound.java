package org.undercall.listen;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Looks;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SoundLevels;
import org.undercall.port.Heard;
import org.undercall.sound.Frame;

/** The latest sound, in which a phrase is looked at again, measured and cut out. */
final class RecentSound implements AutoCloseable {
  private final SecondHearing second;
  private final Optional<Looks> looks;
  private final PhraseMeter meter = new PhraseMeter();
  private final PhraseSound sounds = new PhraseSound();

  /**
   * No sound yet.
   *
   * @param looks how phrases are looked at again; empty for the way of the work
   */
  RecentSound(RecogniserMaker maker, Optional<Looks> looks) {
    this.second = new SecondHearing(maker);
    this.looks = looks;
  }

  void keep(Frame frame) {
    second.keep(frame);
    sounds.keep(frame);
    meter.add(frame);
  }

  /** Forgets the sound of phrases; how loud it was still counts for what is around the next. */
  void clear() {
    second.clear();
    sounds.clear();
  }

  /** The two phrases heard last as one; empty if their sound was not kept. */
  Optional<RecognisedPhrase> together(
      RecognisedPhrase first, RecognisedPhrase rest, Set<IntentKind> allowed) {
    return second.together(first, rest, allowed);
  }

  /**
   * A phrase as it is after a second look, with its levels and its sound.
   *
   * @param first as heard at first; there is a word in it
   */
  Heard heard(RecognisedPhrase first, Set<IntentKind> allowed) {
    Optional<SoundLevels> levels = meter.of(first);
    RecognisedPhrase phrase =
        looks.map(other -> second.of(first, other)).orElseGet(() -> second.of(first, allowed));
    boolean note = allowed.contains(IntentKind.NOTE_TEXT);
    Optional<byte[]> sound =
        sounds.of(List.of(first, phrase), note ? PhraseSound.NOTE : PhraseSound.PHRASE);
    return new Heard(phrase, Heard.How.SPOKEN, levels, sound);
  }

  @Override
  public void close() {
    second.close();
  }
}
