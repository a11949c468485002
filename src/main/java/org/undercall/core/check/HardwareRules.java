package org.undercall.core.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.undercall.core.fastening.NutClass;
import org.undercall.core.fastening.PropertyClass;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.procedure.Fastener;
import org.undercall.core.procedure.Hardware;
import org.undercall.core.procedure.Lubrication;
import org.undercall.core.procedure.Sizes;
import org.undercall.core.procedure.Step;

/** Rules about thread, class, drive and state of a fastener. */
final class HardwareRules {
  private static final Pattern LEFT_HAND =
      Pattern.compile("\\bleft[- ]hand(ed)?[- ]thread|\\bleft[- ]threaded|\\blh thread");

  /** The whole angle of a cone seat is 60 or 90 degrees as a rule: common practice, no source. */
  private static final double SHARP = 45;

  private static final double BLUNT = 130;

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
              lockNut(spot, fastener).ifPresent(findings::add);
              leftHand(spot, fastener).ifPresent(findings::add);
              cone(spot, fastener).ifPresent(findings::add);
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

  /** A bolt may have a hexagon or a socket head, a nut and what holds a wheel a hexagon only. */
  private static Optional<Finding> drive(Spot spot, Fastener fastener) {
    Optional<ThreadSize> thread = ThreadCatalogue.find(fastener.thread());
    if (thread.isEmpty()) {
      return Optional.empty();
    }
    int diameter = (int) thread.get().diameter().millimetres();
    boolean hexagon = nut(fastener) || spot.wheel().wheel();
    List<Integer> usual = new ArrayList<>(hexagon ? List.of() : DriveSizes.keys(diameter));
    usual.addAll(DriveSizes.hexagons(diameter));
    BigDecimal size = fastener.drive();
    String found = size.toPlainString() + " mm for " + fastener.thread();
    if (nut(fastener) && size.compareTo(BigDecimal.valueOf(diameter)) <= 0) {
      String expected = "more than " + diameter + " mm, such as one of " + usual;
      return Optional.of(spot.at("fastener/drive", CheckRule.SOCKET_TOO_SMALL, found, expected));
    }
    boolean known = usual.stream().anyMatch(u -> size.compareTo(BigDecimal.valueOf(u)) == 0);
    return known || usual.isEmpty()
        ? Optional.empty()
        : Optional.of(
            spot.at("fastener/drive", CheckRule.UNUSUAL_DRIVE, found, "one of " + usual + " mm"));
  }

  private static boolean nut(Fastener fastener) {
    return fastener.part().hardware() != Hardware.BOLT;
  }

  /** Thread lockers without a time to cure, and with no wait after them. */
  static List<Finding> cures(List<Spot> spots) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      Spot spot = spots.get(i);
      boolean locked =
          spot.fastener()
              .filter(f -> f.part().lubrication() == Lubrication.THREADLOCKER)
              .filter(f -> f.manner().cure().isEmpty())
              .isPresent();
      boolean waits =
          spots.subList(i, spots.size()).stream().anyMatch(s -> s.step() instanceof Step.Wait);
      if (locked && !waits) {
        String expected = "\"cureMinutes\", or a step that waits";
        findings.add(
            spot.at(
                "fastener/lubrication",
                CheckRule.LOCKER_WITHOUT_CURE,
                "a thread locker and no time",
                expected));
      }
    }
    return findings;
  }

  private static Optional<Finding> lockNut(Spot spot, Fastener fastener) {
    boolean locking = fastener.part().hardware() == Hardware.SELF_LOCKING_NUT;
    String expected = "\"oneTimeUse\": true, or the maker's leave to use it again";
    return locking && !fastener.part().oneTimeUse()
        ? Optional.of(
            spot.at(
                "fastener/oneTimeUse",
                CheckRule.LOCK_NUT_REUSED,
                "a self-locking nut to be used again",
                expected))
        : Optional.empty();
  }

  private static Optional<Finding> leftHand(Spot spot, Fastener fastener) {
    String words = fastener.name() + " " + spot.step().head().title();
    boolean said = LEFT_HAND.matcher(words.toLowerCase(Locale.ROOT)).find();
    String found = "no \"leftHand\", and a left-handed thread guessed from the words";
    return said && !fastener.manner().leftHand()
        ? Optional.of(
            spot.at("fastener/thread", CheckRule.LEFT_HAND_UNSAID, found, "\"leftHand\": true"))
        : Optional.empty();
  }

  private static Optional<Finding> cone(Spot spot, Fastener fastener) {
    String expected = "the whole angle, from 45 to 130 degrees";
    return fastener
        .joint()
        .sizes()
        .seat()
        .flatMap(Sizes.Ring::angle)
        .filter(angle -> angle.doubleValue() < SHARP || angle.doubleValue() > BLUNT)
        .map(
            angle ->
                spot.at(
                    "fastener/seat/angle",
                    CheckRule.CONE_ODD,
                    angle.toPlainString() + " degrees",
                    expected));
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
      boolean full = nut.filter(n -> !ClampRules.thin(n)).isPresent();
      if (bolt.isPresent() && full && !nut.get().carries(bolt.get())) {
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
