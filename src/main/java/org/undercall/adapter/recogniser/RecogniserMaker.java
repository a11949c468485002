package org.undercall.adapter.recogniser;

import java.util.List;

/** Makes recognisers, each for the thread that asks. */
public interface RecogniserMaker {

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
}
