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
}
