package org.undercall.core.fastening;

import org.undercall.core.term.Torque;

/**
 * The short form of the torque equation, T = K F d.
 *
 * <p>Published in common machine design texts; K holds pitch, thread friction and seat friction in
 * one number and is known only as a range.
 */
public final class ShortForm {
  private ShortForm() {}

  /** The torque that makes a preload. */
  public static Torque torque(NutFactor k, Force preload, Length diameter) {
    return Units.newtonMetres(k.k() * preload.newtons() * diameter.millimetres() / 1000);
  }

  /** The preload that a torque makes. */
  public static Force preload(NutFactor k, Torque torque, Length diameter) {
    return new Force(torque.inNewtonMetres() * 1000 / (k.k() * diameter.millimetres()));
  }

  /** The range of preloads that a torque makes. */
  public static Range<Force> preload(Range<NutFactor> k, Torque torque, Length diameter) {
    return k.map(one -> preload(one, torque, diameter));
  }

  /** The range of torques that make a preload. */
  public static Range<Torque> torque(Range<NutFactor> k, Force preload, Length diameter) {
    return k.map(one -> torque(one, preload, diameter));
  }
}
