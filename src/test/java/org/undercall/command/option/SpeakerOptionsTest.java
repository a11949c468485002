package org.undercall.command.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercall.command.App;

@DisplayName("How the work command speaks")
class SpeakerOptionsTest {
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "--volume|101|expected 0 to 100",
        "--rate|2.5|expected 0.5 to 2",
        "--rate|NaN|expected 0.5 to 2",
        "--tones|loud|NONE, REFUSED, ALL",
        "--digits|together|APART, GROUPED, NATURAL"
      })
  @DisplayName("is wrong usage outside its limits, before anything is opened")
  void limits(String option, String value, String expected) {
    StringWriter err = new StringWriter();
    int status =
        App.commandLine()
            .setErr(new PrintWriter(err))
            .execute("work", "no-such-procedure.json", option, value);
    assertEquals(2, status);
    assertTrue(err.toString().startsWith("USE-001 "), err.toString());
    assertTrue(err.toString().contains(expected), err.toString());
  }
}
