package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.undercall.port.Fault;

@DisplayName("The check of one joint")
class JointsTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(
      resources = "/procedures/check/bad-joints.csv",
      delimiter = '|',
      quoteCharacter = '`',
      numLinesToSkip = 1)
  @DisplayName("finds what is wrong and no other error")
  void bad(String what, String code, String thread, String marking, String stages, String more)
      throws Fault {
    List<Finding> findings = OneJoint.findings(thread, marking, stages, more);
    List<Finding> right = findings.stream().filter(f -> f.rule().code().equals(code)).toList();
    assertFalse(right.isEmpty(), what + ": " + findings);
    List<Finding> others =
        findings.stream()
            .filter(f -> f.rule().severity() == Severity.ERROR && !f.rule().code().equals(code))
            .toList();
    assertEquals(List.of(), others);
    right.forEach(f -> assertTrue(f.todo().endsWith("."), f.todo()));
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = "/procedures/check/good-joints.csv",
      delimiter = '|',
      quoteCharacter = '`',
      numLinesToSkip = 1)
  @DisplayName("finds no error where nothing is wrong")
  void good(String what, String thread, String marking, String stages, String more) throws Fault {
    List<Finding> errors =
        OneJoint.findings(thread, marking, stages, more).stream()
            .filter(f -> f.rule().severity() == Severity.ERROR)
            .toList();
    assertEquals(List.of(), errors, what);
  }

  @ParameterizedTest(name = "{1} begins where the other still is good: {0}")
  @CsvFileSource(
      resources = "/procedures/check/edge-joints.csv",
      delimiter = '|',
      quoteCharacter = '`',
      numLinesToSkip = 1)
  @DisplayName("parts a bad one from its nearest good neighbour")
  void edge(
      String what,
      String code,
      String thread,
      String marking,
      String good,
      String bad,
      String both,
      String ofTheBad)
      throws Fault {
    String more = (both == null ? "" : both) + (ofTheBad == null ? "" : ", " + ofTheBad);
    String left = more.startsWith(", ") ? more.substring(2) : more;
    assertEquals(0, count(code, OneJoint.findings(thread, marking, good, both)), what);
    assertTrue(count(code, OneJoint.findings(thread, marking, bad, left)) > 0, what);
  }

  private static long count(String code, List<Finding> findings) {
    return findings.stream().filter(f -> f.rule().code().equals(code)).count();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(
      resources = "/procedures/check/told-joints.csv",
      delimiter = '|',
      quoteCharacter = '`',
      numLinesToSkip = 1)
  @DisplayName("says what it found and what it expected")
  void told(
      String what,
      String code,
      String thread,
      String marking,
      String stages,
      String more,
      String found,
      String expected)
      throws Fault {
    List<String> told =
        OneJoint.findings(thread, marking, stages, more).stream()
            .filter(f -> f.rule().code().equals(code))
            .map(f -> f.found() + " | " + f.expected())
            .toList();
    assertEquals(List.of(found + " | " + expected), told, what);
  }
}
