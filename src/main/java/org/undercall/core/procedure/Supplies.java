package org.undercall.core.procedure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.undercall.core.term.LoadCondition;

/**
 * What a procedure uses up, and what carries the car and holds against a turn, as far as it says
 * so: by the fields of its steps, and by English words in their titles and cautions.
 *
 * @param usedUp what is used up, and the fasteners or steps it is for
 * @param supports what carries the car and the suspension
 * @param holders with what the other end is held, and the fasteners
 */
public record Supplies(
    Map<String, Set<String>> usedUp, Set<String> supports, Map<String, Set<String>> holders) {
  private static final Map<String, Pattern> NAMED =
      Map.of(
          "cleaner",
          word("clean|cleaned|cleaner|degrease|degreased|degreaser"),
          "grease",
          word("grease|regrease"),
          "thread locker",
          word("thread ?lock(er|ing)?"),
          "sealant",
          word("sealant|sealer"));
  private static final Pattern CHOCKS = word("chock|chocks|chocked");

  public Supplies {
    usedUp = Collections.unmodifiableMap(new LinkedHashMap<>(usedUp));
    supports = Collections.unmodifiableSet(new LinkedHashSet<>(supports));
    holders = Collections.unmodifiableMap(new LinkedHashMap<>(holders));
  }

  private static Pattern word(String words) {
    return Pattern.compile("\\b(" + words + ")\\b");
  }

  static Supplies of(Procedure procedure) {
    Collected all = new Collected();
    procedure.cautions().forEach(caution -> all.chocks(caution.text()));
    for (WorkPhase phase : procedure.phases()) {
      phase.steps().forEach(all::add);
    }
    if (all.rideHeight && !all.byWheels) {
      all.supports.add("a jack for the arm or knuckle, for ride height");
    }
    return new Supplies(all.usedUp, all.supports, all.holders);
  }

  private static final class Collected {
    private final Map<String, Set<String>> usedUp = new LinkedHashMap<>();
    private final Set<String> supports = new LinkedHashSet<>();
    private final Map<String, Set<String>> holders = new LinkedHashMap<>();
    private boolean rideHeight;
    private boolean byWheels;

    void chocks(String words) {
      if (CHOCKS.matcher(words.toLowerCase(Locale.ROOT)).find()) {
        supports.add("wheel chocks");
      }
    }

    void add(Step step) {
      Step.Head head = step.head();
      String words = (head.title() + ". " + String.join(" ", head.cautions()));
      chocks(words);
      NAMED.keySet().stream()
          .sorted()
          .filter(name -> NAMED.get(name).matcher(words.toLowerCase(Locale.ROOT)).find())
          .forEach(name -> put(usedUp, name, head.title()));
      boolean off = step instanceof Step.Do work && work.wheels() == Wheels.REMOVED;
      if (off || head.bearing().car() == Bearing.Lift.RAISED) {
        supports.add("stands or a lift that carry the car");
      }
      if (step instanceof Step.Load load && load.condition() == LoadCondition.RIDE_HEIGHT) {
        rideHeight |= !load.byWheels();
        byWheels |= load.byWheels();
      } else if (step instanceof Step.Fasten fasten) {
        add(fasten.fastener());
      }
    }

    private void add(Fastener fastener) {
      rideHeight |= fastener.needs() == LoadCondition.RIDE_HEIGHT;
      lubricant(fastener.part().lubrication())
          .ifPresent(name -> put(usedUp, name, fastener.name()));
      fastener.manner().counterHold().ifPresent(with -> put(holders, with, fastener.name()));
    }

    private static void put(Map<String, Set<String>> map, String name, String what) {
      map.computeIfAbsent(name, any -> new LinkedHashSet<>()).add(what);
    }
  }

  private static Optional<String> lubricant(Lubrication state) {
    return switch (state) {
      case OILED -> Optional.of("oil");
      case GREASED -> Optional.of("grease");
      case PASTE -> Optional.of("assembly paste or wax");
      case THREADLOCKER -> Optional.of("thread locker");
      case DRY, AS_DELIVERED, UNSTATED -> Optional.empty();
    };
  }
}
