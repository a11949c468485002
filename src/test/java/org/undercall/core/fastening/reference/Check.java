package org.undercall.core.fastening.reference;

import java.util.Locale;

/** One outside value next to ours. */
record Check(
    Group group, String what, double published, double ours, Citation citation, String note) {

  /** Who gave the value and how it was taken. */
  record Citation(String source, Basis basis) {}

  static Check of(Group group, String what, double published, double ours, Citation citation) {
    return new Check(group, what, published, ours, citation, "");
  }

  /** Published less ours: in percent of ours, or in the value's own unit. */
  double deviation() {
    double difference = published - ours;
    if (group.absolute() || difference == 0) {
      return difference;
    }
    return difference / Math.abs(ours) * 100;
  }

  boolean holds() {
    return Math.abs(deviation()) <= group.tolerance();
  }

  String name() {
    return String.format(
        Locale.ROOT, "%s = %s [%s]", what, Double.toString(published), citation.source());
  }
}
