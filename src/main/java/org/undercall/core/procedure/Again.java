package org.undercall.core.procedure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.undercall.core.term.Side;

/**
 * What is to be tightened again later, as the hand-over items of a procedure say: those that tell
 * to check a torque, by their English words, and the fasteners they are about.
 */
public final class Again {
  private static final Pattern PARTS = Pattern.compile("[.;:!?,()]+|\\bbut\\b|\\bthen\\b");
  private static final Pattern NO =
      word(
          "no|not|never|nothing|none|without|neither|nor|don t|avoid|skip|forget|cannot|unnecessary"
              + "|optional|unless");
  private static final Pattern WHEEL = word("wheels?|lugs?|studs?|rims?");
  private static final Pattern AGAIN =
      word(
          "check|recheck|re check|checked|retorque|re torque|torque|retighten|re tighten|tighten"
              + "|tightened|verify");
  private static final Pattern TIGHTNESS =
      word("torque|torques|retorque|re torque|tight|tightness|tighten|retighten|re tighten");

  /**
   * A fastener to be tightened again.
   *
   * @param phase the phase it was tightened in last
   * @param step the step it was tightened in last
   */
  public record Place(WorkPhase phase, Step.Fasten step) {
    private boolean sameAs(Place later) {
      return step.fastener().name().equals(later.step.fastener().name())
          && step.fastener().thread().equals(later.step.fastener().thread())
          && sides().stream().anyMatch(later.sides()::contains);
    }

    private Set<Side> sides() {
      Set<Side> sides = EnumSet.noneOf(Side.class);
      step.head().bearing().corner().ifPresentOrElse(sides::add, () -> sides.addAll(all()));
      return sides;
    }

    private List<Side> all() {
      return phase.each().sides();
    }
  }

  private Again() {}

  private static Pattern word(String words) {
    return Pattern.compile("\\b(" + words + ")\\b");
  }

  /** Whether a hand-over tells to check the torque of wheel fasteners again. */
  public static boolean checksWheels(String words) {
    return parts(words).stream()
        .anyMatch(part -> WHEEL.matcher(part).find() && checksTorqueOf(part));
  }

  private static boolean checksTorqueOf(String part) {
    return AGAIN.matcher(part).find() && TIGHTNESS.matcher(part).find() && !NO.matcher(part).find();
  }

  private static List<String> parts(String words) {
    String plain = words.toLowerCase(Locale.ROOT).replaceAll("[-'’]", " ");
    return List.of(PARTS.split(plain));
  }

  /** The hand-over items that tell to tighten something of the procedure again. */
  public static List<Step.HandOver> items(Procedure procedure) {
    List<Step.HandOver> items = new ArrayList<>();
    for (WorkPhase phase : procedure.phases()) {
      for (Step step : phase.steps()) {
        if (step instanceof Step.HandOver item && !of(procedure, item).isEmpty()) {
          items.add(item);
        }
      }
    }
    return List.copyOf(items);
  }

  /**
   * The fasteners that an item is about: the wheels' where it names wheels, else those that it
   * comes after, else those that it names. None if it does not tell to check a torque. What is
   * tightened in several steps is there once, as the last of them has it.
   */
  public static List<Place> of(Procedure procedure, Step.HandOver item) {
    String words = item.head().title() + ". " + item.due();
    if (parts(words).stream().noneMatch(Again::checksTorqueOf)) {
      return List.of();
    }
    List<Place> all = fasteners(procedure);
    List<Place> found =
        checksWheels(words)
            ? all.stream().filter(place -> place.step().fastener().holdsWheel()).toList()
            : all.stream()
                .filter(p -> item.head().bearing().after().contains(p.step().head().id()))
                .toList();
    String title = String.join(" ", parts(item.head().title()));
    return found.isEmpty()
        ? all.stream()
            .filter(p -> title.contains(p.step().fastener().name().toLowerCase(Locale.ROOT)))
            .toList()
        : found;
  }

  private static List<Place> fasteners(Procedure procedure) {
    List<Place> last = new ArrayList<>();
    for (WorkPhase phase : procedure.phases()) {
      for (Step step : phase.steps()) {
        if (step instanceof Step.Fasten fasten) {
          Place place = new Place(phase, fasten);
          last.removeIf(before -> before.sameAs(place));
          last.add(place);
        }
      }
    }
    return Collections.unmodifiableList(last);
  }
}
