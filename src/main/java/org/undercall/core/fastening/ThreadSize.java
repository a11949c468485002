package org.undercall.core.fastening;

import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.term.Refused;

/**
 * An ISO metric thread: nominal diameter and pitch, with the basic sizes that follow from them.
 *
 * <p>The basic profile of ISO 68-1 has the height H = √3/2 P of the fundamental triangle; ISO 724
 * gives d2 = d - 3/4 H and D1 = d - 5/4 H, and the root diameter is d3 = d - 17/12 H. The stress
 * area is that of ISO 898-1, 9.1.6.1: As = π/4 ((d2 + d3)/2)².
 *
 * @param diameter the nominal diameter d
 * @param pitch the pitch P, less than half the diameter
 */
public record ThreadSize(Length diameter, Length pitch) {
  private static final double TRIANGLE = Math.sqrt(3) / 2;

  public ThreadSize {
    Require.larger("nominal diameter of a thread", pitch.times(2), diameter);
  }

  /**
   * The thread with a designation such as {@code M12} or {@code M12x1.5}.
   *
   * @throws IllegalArgumentException FAS-010 if the catalogue has no such thread
   */
  public static ThreadSize of(String designation) {
    return ThreadCatalogue.find(designation)
        .orElseThrow(
            () ->
                new Refused(
                    "FAS-010",
                    "thread",
                    "'" + designation + "'",
                    "an ISO metric thread from M4 to M24, such as M12 or M12x1.5"));
  }

  /** The pitch diameter d2 (ISO 724). */
  public Length pitchDiameter() {
    return below(3.0 / 4);
  }

  /** The minor diameter D1 of the nut thread (ISO 724). */
  public Length minorDiameter() {
    return below(5.0 / 4);
  }

  /** The root diameter d3 of the bolt thread (ISO 898-1). */
  public Length rootDiameter() {
    return below(17.0 / 12);
  }

  /** The diameter d0 of the stress area: the mean of pitch and root diameter (VDI 2230 Part 1). */
  public Length stressDiameter() {
    return new Length((pitchDiameter().millimetres() + rootDiameter().millimetres()) / 2);
  }

  /** The nominal stress area As (ISO 898-1). */
  public Area stressArea() {
    return Area.ofCircle(stressDiameter());
  }

  /** Whether this is the coarse pitch of its diameter (ISO 261). */
  public boolean coarse() {
    Optional<ThreadSize> coarse =
        ThreadCatalogue.find("M" + plain(diameter.millimetres())).filter(this::equals);
    return coarse.isPresent();
  }

  private Length below(double triangles) {
    return new Length(diameter.millimetres() - triangles * TRIANGLE * pitch.millimetres());
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** The designation of ISO 965-1, without the pitch if it is the coarse one. */
  @Override
  public String toString() {
    String name = "M" + plain(diameter.millimetres());
    return coarse() ? name : name + "x" + plain(pitch.millimetres());
  }
}
