package org.undercall.core.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A name")
class PersonNameTest {
  @ParameterizedTest
  @CsvSource({
    "JD, JD",
    "Jo Dahl, JD",
    "jd, Jo Dahl",
    "Jo Dahl, JO",
    "DAHL, Jo Dahl",
    "JO-DAHL, Jo Dahl",
    "'', AB"
  })
  @DisplayName("could be the same person's in another writing")
  void same(String one, String other) {
    assertTrue(PersonName.same(one, other));
    assertTrue(PersonName.same(other, one));
  }

  @ParameterizedTest
  @CsvSource({"JD, AB", "Jo Dahl, Jo Berg", "Jo Dahl, Ida Dahl", "Jo Dahl, DJ", "KIM, KL"})
  @DisplayName("is another person's")
  void another(String one, String other) {
    assertFalse(PersonName.same(one, other));
    assertFalse(PersonName.same(other, one));
  }

  @Test
  @DisplayName("spelled means whoever of a list it could be")
  void meant() {
    List<String> names = List.of("Anna Berg", "Alex Brink", "Carl Dorn");
    assertEquals(List.of("Carl Dorn"), PersonName.meant("CD", names));
    assertEquals(List.of("Anna Berg", "Alex Brink"), PersonName.meant("AB", names));
    assertEquals(List.of("Anna Berg"), PersonName.meant("ANNABERG", names));
    assertEquals(List.of(), PersonName.meant("AN", names));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "Jörg", "a, b", "-", "x\ny"})
  @DisplayName("that cannot be spelled is none")
  void odd(String name) {
    assertFalse(PersonName.canBeSpelled(name));
  }
}
