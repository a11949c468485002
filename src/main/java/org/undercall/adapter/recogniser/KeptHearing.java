package org.undercall.adapter.recogniser;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.sound.Frames;

/**
 * Hears one piece of sound after the other with the same recogniser. Each is heard as if it were
 * the first, but in about a third of the time: what the recogniser has found out about the language
 * is kept. That grows by nearly a megabyte a piece, so another one begins after a few.
 */
final class KeptHearing implements FreeHearing {
  private static final int BYTES_PER_SAMPLE = 2;
  private static final int MOST_PIECES = 12;

  private final Supplier<Recogniser> maker;
  private Recogniser recogniser;
  private int pieces;
  private long samples;

  /**
   * A hearing.
   *
   * @param maker makes recognisers whose sound starts at 0; they are closed by this
   */
  KeptHearing(Supplier<Recogniser> maker) {
    this.maker = maker;
    this.recogniser = maker.get();
  }

  @Override
  public RecognisedPhrase of(byte[] sound, double startSeconds) {
    if (pieces == MOST_PIECES) {
      recogniser.close();
      recogniser = maker.get();
      pieces = 0;
      samples = 0;
    }
    pieces++;
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
        word.text(), word.confidence(), seconds(word.start() + later), seconds(word.end() + later));
  }

  private static double seconds(double time) {
    return Math.max(0, Math.round(1000 * time) / 1000.0);
  }

  @Override
  public void close() {
    recogniser.close();
  }
}
