package org.undercall.core.fastening;

import org.undercall.core.fastening.SleeveStack.Sleeve;

/** The joint of the documented example, for tests: M12x1.5 through a tube of 64 mm. */
final class Joints {
  static final Range<Friction> AS_DELIVERED = new Range<>(Friction.of(0.08), Friction.of(0.24));
  static final Range<Friction> CLASS_B = FrictionClass.B.range();

  private Joints() {}

  static Joint documented(String strength) {
    Bolt bolt = Bolt.hexagon("M12x1.5", strength);
    BoltBody body =
        new BoltBody(bolt.thread(), Length.mm(40), Length.mm(24), BoltBody.Ends.HEXAGON_AND_NUT);
    return Joint.ofSteel(bolt, body, ConeStack.of(bolt.seat(), Sleeve.of(64, 28, 13)));
  }

  static Range<Friction> exactly(double friction) {
    return new Range<>(Friction.of(friction), Friction.of(friction));
  }
}
