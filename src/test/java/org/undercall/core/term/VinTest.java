package org.undercall.core.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Weights and values recalled from 49 CFR 565.15(c); the sums here are worked out by hand. */
@DisplayName("A vehicle identification number")
class VinTest {
  /** The weights add up to 89, which leaves 1 when divided by 11. */
  private static final String ONES = "11111111111111111";

  @Test
  @DisplayName("has a check digit in the ninth place where it has one")
  void checkDigit() {
    assertTrue(Vin.of(ONES).checkDigitFits());
    assertFalse(Vin.of("11111111211111111").checkDigitFits());
  }

  @Test
  @DisplayName("shows a change of any one character")
  void changes() {
    for (int place = 0; place < ONES.length(); place++) {
      String changed = ONES.substring(0, place) + "2" + ONES.substring(place + 1);
      assertFalse(Vin.of(changed).checkDigitFits(), changed);
    }
  }

  @Test
  @DisplayName("counts letters as their values: 8+14+18+20+20+18+14+80 and 44 leave 5")
  void letters() {
    assertTrue(Vin.of("ABCDEFGH511111111").checkDigitFits());
    assertFalse(Vin.of("ABCDEFGH611111111").checkDigitFits());
  }

  @Test
  @DisplayName("has an X where ten is left: 89 less 2 is 87, which leaves 10")
  void ten() {
    assertTrue(Vin.of("11111111X11111110").checkDigitFits());
  }

  @Test
  @DisplayName("is read in small letters, with blanks and hyphens")
  void typed() {
    assertEquals("ABCDEFGH111111111", Vin.of("abcd-efgh 1111 11111").text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "1111111111111111",
        "111111111111111111",
        "1111111I111111111",
        "O2345678901234567"
      })
  @DisplayName("is refused in another form")
  void refused(String text) {
    assertThrows(IllegalArgumentException.class, () -> Vin.of(text));
  }
}
