package org.undercall.core.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Rules about steps that name a side of the car. */
final class SideRules {
  private SideRules() {}

  static List<Finding> check(List<Spot> spots) {
    Set<String> carWords = new HashSet<>();
    spots.stream()
        .filter(spot -> !spot.perSide())
        .forEach(
            spot -> {
              carWords.add("id " + spot.step().head().id());
              carWords.add("title " + title(spot));
            });
    List<Finding> findings = new ArrayList<>();
    for (Spot spot : spots) {
      side(title(spot))
          .or(() -> side(spot.step().head().id()))
          .flatMap(side -> finding(spot, side, carWords))
          .ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> finding(Spot spot, String side, Set<String> carWords) {
    String field = side(title(spot)).isPresent() ? "title" : "id";
    if (namesBoth(spot, side)) {
      return Optional.empty();
    }
    if (spot.perSide()) {
      String expected = "no side: the step is walked for left and right";
      return Optional.of(spot.at(field, CheckRule.SIDE_IN_BOTH, '"' + side + '"', expected));
    }
    boolean twin =
        twin("id ", spot.step().head().id(), side, carWords)
            || twin("title ", title(spot), side, carWords);
    String expected = "another step for the car that names \"" + other(side) + '"';
    return twin
        ? Optional.empty()
        : Optional.of(spot.at(field, CheckRule.ONE_SIDE_ONLY, '"' + side + "\" alone", expected));
  }

  /** Whether the step names the other side as well. */
  private static boolean namesBoth(Spot spot, String side) {
    return Spot.word(title(spot), other(side));
  }

  private static String title(Spot spot) {
    return spot.step().head().title().toLowerCase(Locale.ROOT);
  }

  private static Optional<String> side(String words) {
    List<String> parts = List.of(words.split("[^a-z]+", -1));
    return List.of("left", "right").stream().filter(parts::contains).findFirst();
  }

  /** Words that name no side are no twin of themselves. */
  private static boolean twin(String kind, String words, String side, Set<String> carWords) {
    String swapped = words.replaceAll("(?<![a-z])" + side + "(?![a-z])", other(side));
    return !swapped.equals(words) && carWords.contains(kind + swapped);
  }

  private static String other(String side) {
    return side.equals("left") ? "right" : "left";
  }
}
