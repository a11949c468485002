package org.undercall.core.reply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A thread is spoken")
class ThreadWordsTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "M12x1.5; M 12 by 1.5",
        "1/2-20 UNF; one half inch, 20 threads, U N F",
        "7/16-14 UNC; seven sixteenths inch, 14 threads, U N C",
        "1 1/8-12 UNF; one and one eighth inch, 12 threads, U N F",
        "#10-32 UNF; number ten, 32 threads, U N F",
        "1-8 UNC; one inch, 8 threads, U N C"
      })
  @DisplayName("as a technician says it")
  void spoken(String designation, String words) {
    assertEquals(words, Words.thread(designation));
  }
}
