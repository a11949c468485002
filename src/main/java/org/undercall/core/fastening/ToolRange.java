package org.undercall.core.fastening;

import java.math.BigDecimal;
import org.undercall.core.procedure.Tool;
import org.undercall.core.term.Refused;
import org.undercall.core.term.Torque;

/**
 * The torques a tool may be used for.
 *
 * <p>Without a statement by the tool: from 20 % to 100 % of its largest value, the span between the
 * lowest and highest calibration point of ISO 6789:2003.
 *
 * @param least the least torque
 * @param most the largest torque
 */
public record ToolRange(Torque least, Torque most) {
  private static final BigDecimal LOWEST_SHARE = new BigDecimal("0.2");

  /** Where a torque lies. */
  public enum Place {
    BELOW,
    WITHIN,
    ABOVE
  }

  public ToolRange {
    if (least.compareTo(most) >= 0) {
      throw new Refused("FAS-040", "range of a tool", least + " to " + most, "one that goes up");
    }
  }

  /** The range of a tool that states its largest torque only. */
  public static ToolRange upTo(Torque most) {
    return new ToolRange(new Torque(most.amount().multiply(LOWEST_SHARE), most.unit()), most);
  }

  /** The range that a tool states. */
  public static ToolRange of(Tool tool) {
    return new ToolRange(tool.least(), tool.most());
  }

  /** Where the torque lies, the ends counting as within. */
  public Place place(Torque torque) {
    if (torque.compareTo(least) < 0) {
      return Place.BELOW;
    }
    return torque.compareTo(most) > 0 ? Place.ABOVE : Place.WITHIN;
  }
}
