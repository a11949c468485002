package de.dfki.lt.tools.tokenizer.annotate;

/** A text whose stretches carry marks, read with an index. MaryTTS binds to this name. */
public interface AnnotatedString {

  /** What {@link #setIndex} gives past the end of the text. */
  char DONE = '\uffff';

  /** Moves to a place and gives the character there, {@link #DONE} past the end. */
  char setIndex(int index);

  /** Where the stretch at the index starts, as far as this mark goes. */
  int getRunStart(String key);

  /** Where the stretch at the index ends (exclusive), as far as this mark goes. */
  int getRunLimit(String key);

  /** The mark at the index; null if there is none. */
  Object getAnnotation(String key);

  /** A part of the text. */
  String substring(int start, int end);
}
