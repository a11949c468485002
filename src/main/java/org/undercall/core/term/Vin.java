package org.undercall.core.term;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A vehicle identification number: 17 characters, digits and letters without I, O and Q (ISO 3779).
 *
 * @param text in capitals
 */
public record Vin(String text) {
  private static final Pattern FORM = Pattern.compile("[A-HJ-NPR-Z0-9]{17}");

  /** The weight of each place, and the value of each letter, as 49 CFR 565.15(c) has them. */
  private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

  private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
  private static final String VALUES = "12345678123457923456789";
  private static final int CHECK_PLACE = 8;
  private static final int MODULUS = 11;

  public Vin {
    if (!FORM.matcher(text).matches()) {
      throw new IllegalArgumentException("17 digits or letters without I, O and Q: " + text);
    }
  }

  /** How many characters there are. */
  public static final int LENGTH = 17;

  /** Whether a text has the form of one, or of its beginning. */
  public static boolean begins(String text) {
    return text.matches("[A-HJ-NPR-Z0-9]{1,17}");
  }

  /**
   * What was told so far with one more text that was told: a whole one stands for itself, and after
   * a whole one a new one begins.
   */
  public static String joined(String before, String text) {
    return isOne(text) || before.length() >= LENGTH ? text : before + text;
  }

  /** Whether a text has the form of one. */
  public static boolean isOne(String text) {
    return FORM.matcher(text).matches();
  }

  /**
   * Reads it as typed or scanned: small letters, blanks and hyphens do not matter.
   *
   * @throws IllegalArgumentException if it has another form
   */
  public static Vin of(String typed) {
    return new Vin(typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT));
  }

  /**
   * Whether the ninth character is the check digit of the others. North America asks for one; in
   * other regions the place may hold anything.
   */
  public boolean checkDigitFits() {
    int sum = 0;
    for (int i = 0; i < text.length(); i++) {
      sum += WEIGHTS[i] * value(text.charAt(i));
    }
    int check = sum % MODULUS;
    char expected = check == MODULUS - 1 ? 'X' : (char) ('0' + check);
    return text.charAt(CHECK_PLACE) == expected;
  }

  private static int value(char character) {
    int letter = LETTERS.indexOf(character);
    return letter < 0 ? character - '0' : VALUES.charAt(letter) - '0';
  }

  @Override
  public String toString() {
    return text;
  }
}
