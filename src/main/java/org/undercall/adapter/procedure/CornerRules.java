package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.undercall.adapter.procedure.ProcedureRules.Located;
import org.undercall.text.Shown;

/** A procedure names sides or corners, never both; an arm is that of one axle. */
final class CornerRules {
  private static final Set<String> SIDES = Set.of("side", "left", "right");

  private final Faults faults;

  CornerRules(Faults faults) {
    this.faults = faults;
  }

  /** Adds a fault for every side named beside corners, and for an arm of two axles. */
  void check(JsonNode root) {
    List<Located> named = named(root);
    boolean corners = named.stream().map(CornerRules::word).anyMatch(w -> isFront(w) || isRear(w));
    if (!corners) {
      return;
    }
    String expected = "a corner, as elsewhere in this procedure";
    named.stream()
        .filter(place -> SIDES.contains(word(place)))
        .forEach(
            place ->
                faults.value(
                    ProcedureCode.SIDES_AND_CORNERS,
                    place.pointer(),
                    Shown.value(place.node()),
                    expected));
    boolean front = named.stream().map(CornerRules::word).anyMatch(CornerRules::isFront);
    boolean rear = named.stream().map(CornerRules::word).anyMatch(CornerRules::isRear);
    if (front && rear && root.path("rideHeight").has("arm")) {
      faults.value(
          ProcedureCode.ARM_OF_TWO_AXLES,
          "/rideHeight/arm",
          "front and rear corners",
          "corners of one axle, or no arm");
    }
  }

  private static List<Located> named(JsonNode root) {
    List<Located> named = new ArrayList<>();
    for (Located phase : ProcedureRules.items(new Located("/phases", root.path("phases")))) {
      named.add(phase.at("each"));
      ProcedureRules.items(phase.at("steps")).stream()
          .map(step -> step.at("corner"))
          .filter(corner -> corner.node().isTextual())
          .forEach(named::add);
    }
    return named;
  }

  private static String word(Located place) {
    return place.node().asText();
  }

  private static boolean isFront(String word) {
    return word.startsWith("front") || word.equals("corner");
  }

  private static boolean isRear(String word) {
    return word.startsWith("rear") || word.equals("corner");
  }
}
