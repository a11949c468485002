package org.undercall.core.fastening;

import org.undercall.core.term.Torque;

/**
 * What a torque by itself does to a bolt, up to breaking it.
 *
 * <p>The long form F = T/(0.16 P + 0.58 d2 µ + DKm/2 µ) is an equilibrium of forces, so it holds
 * beyond yield too, while the wrench still turns. It ends where tension and torsion together reach
 * the least tensile strength ({@link Assembly#breaking}); no preload above that is given. Cannot
 * see: that most bolts are stronger than the least of their class, so that one "would break" here
 * may still hold; stripping of the thread before that ({@link Engagement}).
 *
 * @param reach how far it goes over the range of friction
 * @param preload the preload while turning, at most the breaking one
 * @param yieldPreload the preload at yield
 * @param yieldTorque the torque at which yield begins
 * @param breakingTorque the torque at which a bolt of least strength breaks
 */
public record TorqueAlone(
    Reach reach,
    Range<Force> preload,
    Range<Force> yieldPreload,
    Range<Torque> yieldTorque,
    Range<Torque> breakingTorque) {

  /** How far a torque goes, over the whole range of friction. */
  public enum Reach {
    BELOW_YIELD("below yield, whatever the friction"),
    MAY_YIELD("may reach yield if the friction is low"),
    YIELDS("reaches yield, whatever the friction"),
    MAY_BREAK("may break the bolt if the friction is low"),
    WOULD_BREAK("would break a bolt of least strength, whatever the friction");

    private final String words;

    Reach(String words) {
      this.words = words;
    }

    /** How far it goes, in words. */
    public String words() {
      return words;
    }
  }

  /** What a torque does over a range of friction, the same in thread and seat. */
  public static TorqueAlone of(Bolt bolt, Torque torque, Range<Friction> friction) {
    LongForm form = LongForm.of(bolt);
    Range<Force> yield = Assembly.atYield(bolt).preload(friction);
    return new TorqueAlone(
        reach(bolt, torque, friction),
        friction.map(f -> Force.least(form.preload(torque, f, f), Assembly.breaking(bolt, f))),
        yield,
        Assembly.atYield(bolt).torque(friction),
        friction.map(f -> form.torque(Assembly.breaking(bolt, f), f, f)));
  }

  private static Reach reach(Bolt bolt, Torque torque, Range<Friction> friction) {
    if (breaks(bolt, torque, friction.high())) {
      return Reach.WOULD_BREAK;
    }
    if (breaks(bolt, torque, friction.low())) {
      return Reach.MAY_BREAK;
    }
    if (yields(bolt, torque, friction.high())) {
      return Reach.YIELDS;
    }
    return yields(bolt, torque, friction.low()) ? Reach.MAY_YIELD : Reach.BELOW_YIELD;
  }

  private static boolean breaks(Bolt bolt, Torque torque, Friction friction) {
    Force preload = LongForm.of(bolt).preload(torque, friction, friction);
    return preload.compareTo(Assembly.breaking(bolt, friction)) >= 0;
  }

  private static boolean yields(Bolt bolt, Torque torque, Friction friction) {
    Force preload = LongForm.of(bolt).preload(torque, friction, friction);
    return preload.compareTo(Assembly.atYield(bolt).preload(friction)) >= 0;
  }
}
