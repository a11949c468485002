package org.undercall.adapter.recogniser;

import java.util.List;
import org.undercall.core.intent.Alternative;

/** Makes recognisers, each for the thread that asks. */
public interface RecogniserMaker extends AutoCloseable {

  /**
   * Makes a recogniser that knows no words but those of the list.
   *
   * @param phrases lower case, words with one blank between them; not empty
   * @param startSeconds where in the source its sound starts; added to the times of the words
   */
  Recogniser withWordList(List<String> phrases, double startSeconds);

  /**
   * Makes a recogniser for any words of the language.
   *
   * @param startSeconds where in the source its sound starts; added to the times of the words
   */
  Recogniser free(double startSeconds);

  /**
   * Hears a piece of sound as a whole, for what else it could have been.
   *
   * @param phrases as for {@link #withWordList}
   * @param sound as {@link org.undercall.sound.Frames} gives it; of even length
   * @param startSeconds where in the source the sound starts; added to the times of the words
   * @return the likeliest first, twenty at most; never with a phrase without words
   */
  List<Alternative> alternatives(List<String> phrases, byte[] sound, double startSeconds);

  /** Makes a hearing of pieces of sound with all words of the language. */
  default FreeHearing freely() {
    return new KeptHearing(() -> free(0));
  }

  /**
   * Gives memory that recognisers needed back to the system; a good moment is when all is quiet.
   */
  default void giveBack() {}

  /** Frees what they are made from, once; those already made may still be used and closed. */
  @Override
  default void close() {}
}
