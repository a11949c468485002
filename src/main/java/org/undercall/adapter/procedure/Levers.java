package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.adapter.procedure.ProcedureRules.Located;
import org.undercall.core.fastening.Adaptor;
import org.undercall.core.fastening.Length;
import org.undercall.core.fastening.Rotation;
import org.undercall.core.fastening.ScaleReading;
import org.undercall.core.procedure.Dialled;
import org.undercall.core.procedure.RideHeight;
import org.undercall.core.procedure.Stage;
import org.undercall.core.term.Torque;

/** Reads and checks what has to do with levers: a control arm, and an adaptor on the wrench. */
final class Levers {
  private static final BigDecimal FINE_SCALE_BELOW = new BigDecimal("20");
  private static final BigDecimal FINE_STEP = new BigDecimal("0.5");

  private Levers() {}

  static Optional<RideHeight> rideHeight(JsonNode node) {
    if (node.isMissingNode()) {
      return Optional.empty();
    }
    JsonNode arm = node.path("arm");
    return Optional.of(
        new RideHeight(
            amount(node, "plusMinus"),
            arm.isMissingNode() ? Optional.empty() : Optional.of(arm(arm)),
            node.has("sides") ? Optional.of(amount(node, "sides")) : Optional.empty()));
  }

  private static RideHeight.Arm arm(JsonNode arm) {
    return new RideHeight.Arm(
        amount(arm, "length"),
        amount(arm, "ride"),
        amount(arm, "droop"),
        amount(arm, "bump"),
        amount(arm, "presetLimit"),
        arm.has("ratio") ? amount(arm, "ratio") : BigDecimal.ONE);
  }

  /** A torque stage; with an adaptor, the setting to dial is computed and rounded to the scale. */
  static Stage torqueStage(Torque target, BigDecimal plusMinus, JsonNode adaptor) {
    if (adaptor.isMissingNode()) {
      return new Stage.TorqueStage(target, plusMinus);
    }
    Torque exact = adaptor(adaptor).setting(target);
    BigDecimal step = exact.amount().compareTo(FINE_SCALE_BELOW) < 0 ? FINE_STEP : BigDecimal.ONE;
    Torque setting = ScaleReading.of(exact, target.unit(), step).shown();
    Dialled dialled =
        new Dialled(
            setting,
            amount(adaptor, "wrench"),
            amount(adaptor, "extension"),
            amount(adaptor, "angle"));
    return new Stage.TorqueStage(
        target, plusMinus, Optional.of(dialled), Stage.TorqueStage.Form.NOMINAL);
  }

  private static Adaptor adaptor(JsonNode node) {
    return new Adaptor(
        new Length(node.get("wrench").doubleValue()),
        new Length(node.get("extension").doubleValue()),
        Rotation.degrees(node.get("angle").doubleValue()));
  }

  /** Adds a fault if the heights of the arm do not rise within its length. */
  static void checkArm(Located arm, Faults faults) {
    JsonNode node = arm.node();
    if (!numbers(node, "length", "ride", "droop", "bump")) {
      return;
    }
    double reach = node.get("length").doubleValue();
    double droop = node.get("droop").doubleValue();
    double ride = node.get("ride").doubleValue();
    double bump = node.get("bump").doubleValue();
    if (!(-reach < droop && droop <= ride && ride <= bump && bump < reach)) {
      String found = "droop " + droop + ", ride " + ride + ", bump " + bump;
      String expected = "rising heights between " + -reach + " and " + reach;
      faults.value(ProcedureCode.ARM_TRAVEL, arm.pointer(), found, expected);
    }
  }

  /** Adds a fault if an adaptor leaves no lever. */
  static void checkAdaptor(Located adaptor, Faults faults) {
    JsonNode node = adaptor.node();
    if (!numbers(node, "wrench", "extension", "angle")) {
      return;
    }
    double turn = Math.toRadians(node.get("angle").doubleValue());
    double along = node.get("extension").doubleValue() * Math.cos(turn);
    double wrench = node.get("wrench").doubleValue();
    if (wrench > 0 && wrench + along <= 0) {
      String found = "extension " + node.get("extension") + " at " + node.get("angle") + " degrees";
      String expected = "less than the wrench turned back, " + node.get("wrench");
      faults.value(ProcedureCode.ADAPTOR_TURNED_BACK, adaptor.pointer(), found, expected);
    }
  }

  private static boolean numbers(JsonNode node, String... fields) {
    for (String field : fields) {
      if (!node.path(field).isNumber()) {
        return false;
      }
    }
    return true;
  }

  private static BigDecimal amount(JsonNode node, String field) {
    return node.get(field).decimalValue();
  }
}
