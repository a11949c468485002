package org.undercall.core.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercall.core.fastening.NutClass;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;

/** Rules about thread, class, drive and state of a fastener. */
final class HardwareRules {
  private HardwareRules() {}

  static List<Finding> check(Spot spot) {
    List<Finding> findings = new ArrayList<>();
    spot.fastener()
        .ifPresent(
            fastener -> {
              thread(spot, fastener).ifPresent(findings::add);
              lubrication(spot, fastener).ifPresent(findings::add);
              markings(spot, fastener).ifPresent(findings::add);
              drive(spot, fastener).ifPresent(findings::add);
              tapped(spot, fastener).ifPresent(findings::add);
              findings.addAll(classes(spot, fastener));
            });
    return findings;
  }

  private static Optional<Finding> thread(Spot spot, Fastener fastener) {
    String expected = "an ISO metric thread from M4 to M24, to judge its torque";
    return ThreadCatalogue.find(fastener.thread()).isPresent()
        ? Optional.empty()
        : Optional.of(
            spot.at("fastener/thread", CheckRule.THREAD_NOT_KNOWN, fastener.thread(), expected));
  }

  private static Optional<Finding> lubrication(Spot spot, Fastener fastener) {
    String expected = "dry, oiled, greased, threadlocker or as-delivered";
    return fastener.part().lubrication() == Lubrication.UNSTATED
        ? Optional.of(
            spot.at("fastener/lubrication", CheckRule.LUBRICATION_UNSTATED, "unstated", expected))
        : Optional.empty();
  }

  private static Optional<Finding> markings(Spot spot, Fastener fastener) {
    boolean bolt = fastener.part().hardware() == Hardware.BOLT && fastener.part().oneTimeUse();
    String expected = "a variant for each head marking that a new bolt may have";
    return bolt && !fastener.dependsOnMarking()
        ? Optional.of(
            spot.at(
                "fastener/variants/0/stages",
                CheckRule.NO_MARKINGS,
                "stages without a head marking",
                expected))
        : Optional.empty();
  }

  private static Optional<Finding> drive(Spot spot, Fastener fastener) {
    BigDecimal size = fastener.drive();
    List<Integer> usual =
        ThreadCatalogue.find(fastener.thread())
            .map(ThreadSize::diameter)
            .map(d -> DriveSizes.usual((int) d.millimetres()))
            .orElse(List.of());
    boolean known =
        usual.isEmpty() || usual.stream().anyMatch(u -> size.compareTo(BigDecimal.valueOf(u)) == 0);
    String found = size.toPlainString() + " mm for " + fastener.thread();
    return known
        ? Optional.empty()
        : Optional.of(
            spot.at("fastener/drive", CheckRule.UNUSUAL_DRIVE, found, "one of " + usual + " mm"));
  }

  /** The thread of a tapped hole should hold more than the bolt does. */
  private static Optional<Finding> tapped(Spot spot, Fastener fastener) {
    Optional<Fastener.Joint.Tapped> tapped = fastener.joint().tapped();
    Optional<ThreadSize> thread = ThreadCatalogue.find(fastener.thread());
    if (tapped.isEmpty() || thread.isEmpty()) {
      return Optional.empty();
    }
    double diameters =
        switch (tapped.get().material()) {
          case STEEL -> 1;
          case CAST_IRON -> 1.5;
          case ALUMINIUM -> 2;
        };
    double least = diameters * thread.get().diameter().millimetres();
    boolean enough = tapped.get().engagement().filter(mm -> mm.doubleValue() >= least).isPresent();
    String found =
        tapped.get().engagement().map(mm -> mm.toPlainString() + " mm").orElse("not stated");
    String expected =
        "at least "
            + BigDecimal.valueOf(least).stripTrailingZeros().toPlainString()
            + " mm engaged";
    return enough
        ? Optional.empty()
        : Optional.of(spot.at("fastener/engagement", CheckRule.TAPPED_SHORT, found, expected));
  }

  private static List<Finding> classes(Spot spot, Fastener fastener) {
    List<Finding> findings = new ArrayList<>();
    Optional<NutClass> nut = fastener.joint().nutClass().flatMap(NutClass::of);
    Optional<ThreadSize> thread = ThreadCatalogue.find(fastener.thread());
    for (int v = 0; v < fastener.variants().size(); v++) {
      String field = "fastener/variants/" + v + "/marking";
      Optional<PropertyClass> bolt =
          fastener.variants().get(v).marking().flatMap(PropertyClass::of);
      if (bolt.isPresent() && nut.isPresent() && !nut.get().carries(bolt.get())) {
        String found = "nut of class " + nut.get() + " on a bolt of class " + bolt.get();
        String expected = "a nut of class " + NutClass.leastFor(bolt.get()) + " or more";
        findings.add(spot.at("fastener/nutClass", CheckRule.NUT_TOO_WEAK, found, expected));
      }
      if (bolt.isPresent() && thread.isPresent() && !bolt.get().exists(thread.get())) {
        String found = bolt.get() + " for " + thread.get();
        String expected = "a class that is made for this diameter";
        findings.add(spot.at(field, CheckRule.CLASS_NOT_MADE, found, expected));
      }
    }
    return findings;
  }
}
