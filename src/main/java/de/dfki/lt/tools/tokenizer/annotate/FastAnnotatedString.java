package de.dfki.lt.tools.tokenizer.annotate;

import java.util.HashMap;
import java.util.Map;

/** An {@link AnnotatedString} with one slot a character and mark. MaryTTS binds to this name. */
public final class FastAnnotatedString implements AnnotatedString {
  private final String text;
  private final Map<String, Object[]> marks = new HashMap<>();
  private int index;

  /** A text without marks. */
  public FastAnnotatedString(String text) {
    this.text = text;
  }

  /** Marks a stretch, the end exclusive. */
  public void annotate(String key, Object value, int start, int end) {
    Object[] slots = marks.computeIfAbsent(key, k -> new Object[text.length()]);
    for (int i = start; i < end; i++) {
      slots[i] = value;
    }
  }

  @Override
  public char setIndex(int place) {
    index = place;
    return place < text.length() ? text.charAt(place) : DONE;
  }

  @Override
  public int getRunStart(String key) {
    int start = index;
    while (start > 0 && at(key, start - 1) == at(key, index)) {
      start--;
    }
    return start;
  }

  @Override
  public int getRunLimit(String key) {
    int limit = index + 1;
    while (limit < text.length() && at(key, limit) == at(key, index)) {
      limit++;
    }
    return limit;
  }

  @Override
  public Object getAnnotation(String key) {
    return at(key, index);
  }

  @Override
  public String substring(int start, int end) {
    return text.substring(start, end);
  }

  private Object at(String key, int place) {
    Object[] slots = marks.get(key);
    return slots == null || place >= slots.length ? null : slots[place];
  }
}
