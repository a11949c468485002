package org.undercall.adapter.recogniser;

import java.util.ArrayList;
import java.util.List;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.sound.Frames;

/**
 * Hears one piece of sound after the other with the same recogniser. Each is heard as if it were
 * the first, but in about a third of the time: what the recogniser has found out about the language
 * is kept.
 */
final class KeptHearing implements FreeHearing {
  private static final int BYTES_PER_SAMPLE = 2;

  private final Recogniser recogniser;
  private long samples;

  /**
   * A hearing.
   *
   * @param recogniser its sound starts at 0; closed with this
   */
  KeptHearing(Recogniser recogniser) {
    this.recogniser = recogniser;
  }

  @Override
  public RecognisedPhrase of(byte[] sound, double startSeconds) {
    double later = startSeconds - (double) samples / Frames.RATE;
    List<RecognisedPhrase.Word> words = new ArrayList<>();
    if (recogniser.accept(sound, sound.length)) {
      words.addAll(recogniser.result().words());
    }
    words.addAll(recogniser.finalResult().words());
    samples += sound.length / BYTES_PER_SAMPLE;
    return new RecognisedPhrase(words.stream().map(word -> moved(word, later)).toList());
  }

  private static RecognisedPhrase.Word moved(RecognisedPhrase.Word word, double later) {
    return new RecognisedPhrase.Word(
        word.text(), word.confidence(), word.start() + later, word.end() + later);
  }

  @Override
  public void close() {
    recogniser.close();
  }
}
