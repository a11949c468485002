package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.port.Fault;

@DisplayName("The check of a published joint")
class PublishedJointsTest {
  private static final Set<String> CLASSES =
      Set.of("4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9");
  private static int judged;

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "/reference/20_published_joints.csv", numLinesToSkip = 1)
  @DisplayName("finds no error in what a maker asks for")
  void published(
      String id,
      String use,
      String thread,
      String marking,
      String lubrication,
      String seat,
      String torque,
      String unit,
      String plusMinus,
      String angle,
      String anglePlusMinus,
      String once,
      String hardware)
      throws Fault {
    Optional<ThreadSize> size = Optional.ofNullable(thread).flatMap(ThreadCatalogue::find);
    if (size.isEmpty() || torque == null || "kgf.m".equals(unit)) {
      return;
    }
    String turn = angle == null ? "" : " + " + angle(angle);
    List<Finding> all =
        OneJoint.findings(
            designation(size.get()),
            marking != null && CLASSES.contains(marking) ? marking : null,
            torque(torque, plusMinus) + " " + unit(unit) + turn,
            more(lubrication, once, hardware));
    List<Finding> errors = all.stream().filter(f -> f.rule().severity() == Severity.ERROR).toList();
    judged++;
    assertEquals(List.of(), errors, id + " " + use);
  }

  @AfterAll
  static void many() {
    assertTrue(judged > 150, "judged " + judged);
  }

  private static String designation(ThreadSize size) {
    return String.format(
        "M%sx%s", plain(size.diameter().millimetres()), plain(size.pitch().millimetres()));
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** With the tolerance that is published, else a twelfth; a range as its middle. */
  private static String torque(String torque, String plusMinus) {
    String[] ends = torque.split("\\.\\.", -1);
    BigDecimal least = new BigDecimal(ends[0]);
    BigDecimal most = new BigDecimal(ends[ends.length - 1]);
    BigDecimal target = least.add(most).divide(new BigDecimal(2));
    if (ends.length > 1) {
      return target + "±" + most.subtract(target).setScale(2, RoundingMode.HALF_UP);
    }
    boolean percent = plusMinus != null && plusMinus.endsWith("%");
    BigDecimal deviation =
        plusMinus == null
            ? target.divide(new BigDecimal(12), 1, RoundingMode.HALF_UP)
            : new BigDecimal(plusMinus.replace("%", ""));
    return target
        + "±"
        + (percent
            ? target.multiply(deviation).movePointLeft(2).setScale(2, RoundingMode.HALF_UP)
            : deviation);
  }

  private static String angle(String angle) {
    return angle.split("\\.\\.", -1)[0] + "°±5";
  }

  private static String unit(String unit) {
    return unit.replace("N.m", "N·m").replace('.', '·');
  }

  private static String more(String lubrication, String once, String hardware) {
    String state = lubrication == null ? "" : lubrication;
    String words = hardware == null ? "" : hardware;
    boolean oiled = state.contains("oil") && !state.matches(".*(no|not|wiped).*");
    String lubricated =
        oiled ? "oiled" : state.matches(".*(dry|no |not |wiped|free).*") ? "dry" : "as-delivered";
    boolean nut = words.contains("nut") && !words.startsWith("bolt");
    return "'lubrication': '"
        + lubricated
        + "', 'hardware': '"
        + (nut ? words.contains("self-locking") ? "self-locking-nut" : "nut" : "bolt")
        + "', 'oneTimeUse': "
        + "yes".equals(once);
  }
}
