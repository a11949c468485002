package org.undercall.core.procedure;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.undercall.core.term.HeadMarking;
import org.undercall.core.term.LoadCondition;

/**
 * A fastener, or a set of like ones tightened together, with everything its tightening depends on.
 *
 * @param name as spoken
 * @param thread ISO designation, for example {@code M12x1.5}, or one of ASME B1.1, for example
 *     {@code 1/2-20 UNF}
 * @param drive size of the socket or key in millimetres
 * @param part what is turned and how it may be used again
 * @param needs the load condition for the final tightening
 * @param set how many there are and in which order they are tightened
 * @param variants the specification by head marking; one without a marking, or all with different
 *     ones
 * @param joint what it holds, as far as that is stated
 * @param manner what is to be minded when it is turned
 */
public record Fastener(
    String name,
    String thread,
    BigDecimal drive,
    Part part,
    LoadCondition needs,
    FastenerSet set,
    List<Variant> variants,
    Joint joint,
    Manner manner) {

  /** A wheel has at least so many. */
  private static final int FEWEST_OF_A_WHEEL = 3;

  /** The wheel itself, and not a part that is named after it. */
  private static final Pattern WHEEL =
      Pattern.compile(
          "(?<![a-z])wheel(?!s?[ -]?(bearing|hub|carrier|arch|housing|well|speed|sensor|liner"
              + "|cylinder))");

  /**
   * What a fastener holds. Only checked, never spoken.
   *
   * @param kind the kind of joint; empty if it is not stated
   * @param arm the arm it belongs to, so that its fasteners can be compared
   * @param reason why it is tightened at another load condition than its like
   * @param wheel whether it holds a wheel
   * @param nutClass the property class marked on the nut, for example {@code 10}
   * @param tapped what its thread is cut into, where that is no nut
   * @param sizes its sizes and its friction, as far as they are known
   */
  public record Joint(
      Optional<JointKind> kind,
      Optional<String> arm,
      Optional<String> reason,
      boolean wheel,
      Optional<String> nutClass,
      Optional<Tapped> tapped,
      Sizes sizes) {
    /** Nothing is stated. */
    public static final Joint UNSTATED =
        new Joint(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty());

    /** Of which no sizes are known. */
    public Joint(
        Optional<JointKind> kind,
        Optional<String> arm,
        Optional<String> reason,
        boolean wheel,
        Optional<String> nutClass,
        Optional<Tapped> tapped) {
      this(kind, arm, reason, wheel, nutClass, tapped, Sizes.UNKNOWN);
    }

    /**
     * A tapped hole.
     *
     * @param material what it is cut into
     * @param engagement the length of thread that carries, in millimetres; empty if not stated
     */
    public record Tapped(Material material, Optional<BigDecimal> engagement) {}

    /** What a thread is cut into. */
    public enum Material {
      STEEL,
      CAST_IRON,
      ALUMINIUM
    }
  }

  /**
   * What is to be minded when it is turned, and after.
   *
   * @param leftHand whether its thread is left-handed
   * @param byHand whether it is run in by hand before the first stage, of a set all of them
   * @param counterHold with what the other end is held, in words; empty if nothing is stated
   * @param runDown what is done with the torque that it needs to run down; empty if it is not
   *     measured
   * @param cure how long it must rest when it is tight, such as for a threadlocker
   */
  public record Manner(
      boolean leftHand,
      boolean byHand,
      Optional<String> counterHold,
      Optional<RunDown> runDown,
      Optional<Duration> cure) {
    /** Nothing is stated. */
    public static final Manner PLAIN =
        new Manner(false, false, Optional.empty(), Optional.empty(), Optional.empty());

    /** What is done with the prevailing torque of a nut, measured as it runs down. */
    public enum RunDown {
      /** It is added to every torque of the specification. */
      ADDED,
      /** The specification has it; it is only recorded. */
      INCLUDED
    }
  }

  /**
   * What is turned.
   *
   * @param hardware bolt, nut or self-locking nut
   * @param oneTimeUse whether new hardware is needed each time; it is if there is a reason
   * @param lubrication the state of thread and seat the specification assumes
   * @param renew why new hardware is needed; empty if it is not, or if no reason is stated
   */
  public record Part(
      Hardware hardware, boolean oneTimeUse, Lubrication lubrication, Set<Renewal> renew) {
    public Part {
      renew = renew.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(renew));
      if (!oneTimeUse && !renew.isEmpty()) {
        throw new IllegalArgumentException("what is renewed is for one use: " + renew);
      }
    }

    /** A part of which no reason is stated. */
    public Part(Hardware hardware, boolean oneTimeUse, Lubrication lubrication) {
      this(hardware, oneTimeUse, lubrication, Set.of());
    }
  }

  /**
   * How many fasteners share this step.
   *
   * @param count one or more
   * @param order the order of tightening, each position from 1 to count once; empty if it is free
   */
  public record FastenerSet(int count, List<Integer> order) {
    /** One fastener alone. */
    public static final FastenerSet SINGLE = new FastenerSet(1, List.of());

    public FastenerSet {
      order = List.copyOf(order);
      Set<Integer> distinct = new HashSet<>(order);
      boolean complete =
          distinct.size() == count
              && order.size() == count
              && distinct.stream().allMatch(p -> p >= 1 && p <= count);
      if (count < 1 || !(order.isEmpty() || complete)) {
        throw new IllegalArgumentException("an order names each of " + count + " once: " + order);
      }
    }

    /** Whether there are several. */
    public boolean several() {
      return count > 1;
    }

    /** The positions in the order of tightening; by number if the order is free. */
    public List<Integer> sequence() {
      return order.isEmpty() ? IntStream.rangeClosed(1, count).boxed().toList() : order;
    }
  }

  public Fastener {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(needs, "needs");
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(joint, "joint");
    Objects.requireNonNull(manner, "manner");
    variants = List.copyOf(variants);
    if (drive.signum() <= 0) {
      throw new IllegalArgumentException("a drive size is more than zero: " + drive);
    }
    Set<Optional<HeadMarking>> markings = new HashSet<>();
    variants.forEach(v -> markings.add(v.marking()));
    boolean single = variants.size() == 1;
    boolean distinct = markings.size() == variants.size() && !markings.contains(Optional.empty());
    if (!single && !distinct) {
      throw new IllegalArgumentException("variants need different head markings: " + markings);
    }
  }

  /** A fastener of which it is not stated what it holds. */
  public Fastener(
      String name,
      String thread,
      BigDecimal drive,
      Part part,
      LoadCondition needs,
      FastenerSet set,
      List<Variant> variants) {
    this(name, thread, drive, part, needs, set, variants, Joint.UNSTATED);
  }

  /** A fastener of which nothing more is to be minded. */
  public Fastener(
      String name,
      String thread,
      BigDecimal drive,
      Part part,
      LoadCondition needs,
      FastenerSet set,
      List<Variant> variants,
      Joint joint) {
    this(name, thread, drive, part, needs, set, variants, joint, Manner.PLAIN);
  }

  /** Whether it holds a wheel, as stated or by its name. */
  public boolean holdsWheel() {
    boolean named = WHEEL.matcher(name.toLowerCase(Locale.ROOT)).find();
    return joint.wheel() || (named && set.count() >= FEWEST_OF_A_WHEEL);
  }

  /**
   * Whether all of a set may be called at once, with their number: of a wheel, or where an order is
   * given, each is called by itself.
   */
  public boolean mayBeCounted() {
    return set.several() && set.order().isEmpty() && !holdsWheel();
  }

  /** Whether the head marking must be read out before a value is released. */
  public boolean dependsOnMarking() {
    return variants.get(0).marking().isPresent();
  }

  /** The stages for a marking; empty if the procedure does not know it. */
  public Optional<List<Stage>> stagesFor(Optional<HeadMarking> marking) {
    return variants.stream()
        .filter(v -> v.marking().isEmpty() || v.marking().equals(marking))
        .map(Variant::stages)
        .findFirst();
  }
}
