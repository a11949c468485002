package org.undercall.core.fastening;

/**
 * The clamp force of two variants of the same fastener, such as 68 N·m on 8.8 against 70 N·m and 90
 * degrees on 10.9.
 *
 * <p>Both are reckoned with the same friction ({@link Tightening}), so the ratio tells the variants
 * apart and not the state of the threads. Cannot see: that the bolts may differ in coating too.
 *
 * @param one the preload of the first variant over the range of friction
 * @param other that of the second
 * @param ratio second over first, at the same friction
 */
public record VariantComparison(Range<Force> one, Range<Force> other, Range<Double> ratio) {

  /** Compares two variants over a range of friction. */
  public static VariantComparison of(
      Joint one, Tightening first, Joint other, Tightening second, Range<Friction> friction) {
    return new VariantComparison(
        first.preload(one, friction),
        second.preload(other, friction),
        friction.map(f -> newtons(other, second, f) / newtons(one, first, f)));
  }

  private static double newtons(Joint joint, Tightening way, Friction f) {
    return way.preload(joint.bolt(), joint.stiffness(), f, f).newtons();
  }
}
