package org.undercall.adapter.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpokenTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          110 Nm                       | one one zero newton meters
          110 N·m                      | one one zero newton meters
          80 lbf·ft                    | eight zero foot pounds
          60 lb-in                     | six zero inch pounds
          1.5 kgf·m                    | one point five kilogram meters
          90°                          | nine zero degrees
          ±5 %                         | plus or minus five percent
          12.5 mm                      | one two point five millimeters
          1,200 km                     | one two zero zero kilometers
          3 in                         | three inches
          3 in total                   | three in total
          -7                           | minus seven
          M12 bolt                     | M one two bolt
          one one zero newton metres   | one one zero newton meters
          Nmx stays                    | Nmx stays
          Done. 110 Nm, now 90°!       | Done. one one zero newton meters, now nine zero degrees!
          the bolt – "new" (M8)        | the bolt new M eight
          """)
  void saysSymbolsAndFiguresInWords(String text, String words) {
    assertEquals(words, SpokenText.plain(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "...", "\n\t", "——", "!?", "\u0000"})
  void saysNothingWhereThereIsNothingToSay(String text) {
    assertEquals("", SpokenText.plain(text));
    assertEquals(List.of(), SpokenText.sentences(text));
  }

  @Test
  void splitsSentencesButNotDecimals() {
    assertEquals(
        List.of("Step one.", "one zero point nine newton meters.", "Ready?", "Go"),
        SpokenText.sentences("Step one. 10.9 Nm. Ready?\nGo"));
  }

  @Test
  void leavesPlainTextAsItIsWhenSaidTwice() {
    String once = SpokenText.plain("Tighten to 110 Nm ± 5, then 90°.");
    assertEquals(once, SpokenText.plain(once));
  }
}
