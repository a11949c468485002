package org.undercall.core.term;

import java.util.regex.Pattern;

/**
 * The property class stamped on the head of a bolt (ISO 898-1), for example {@code 10.9}.
 *
 * @param text one or two digits, a point, one digit
 */
public record HeadMarking(String text) {
  private static final Pattern FORM = Pattern.compile("[1-9][0-9]?\\.[0-9]");

  public HeadMarking {
    if (!isOne(text)) {
      throw new IllegalArgumentException(
          "a head marking is a property class such as 8.8 or 10.9: " + text);
    }
  }

  /** Whether a text is a head marking. */
  public static boolean isOne(String text) {
    return FORM.matcher(text).matches();
  }

  @Override
  public String toString() {
    return text;
  }
}
