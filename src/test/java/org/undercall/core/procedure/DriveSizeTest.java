package org.undercall.core.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The size of a socket or key")
class DriveSizeTest {
  @ParameterizedTest(name = "{0} inches: {1}")
  @CsvSource({
    "0.5625, 9/16 in",
    "0.5, 1/2 in",
    "1, 1 in",
    "1.125, 1 1/8 in",
    "0.46875, 15/32 in",
    "0.015625, 1/64 in"
  })
  @DisplayName("in inches is shown as the fraction that is stamped on it")
  void inches(BigDecimal inches, String shown) {
    assertEquals(shown, DriveSize.shown(DriveSize.ofInches(inches)));
  }

  @ParameterizedTest(name = "{0} mm: {1}")
  @CsvSource({"18, 18 mm", "18.0, 18 mm", "5.5, 5.5 mm", "30, 30 mm", "100, 100 mm"})
  @DisplayName("in millimetres is shown as such")
  void millimetres(BigDecimal size, String shown) {
    assertEquals(shown, DriveSize.shown(size));
  }
}
