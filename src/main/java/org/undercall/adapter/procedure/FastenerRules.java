package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercall.adapter.procedure.ProcedureRules.Located;
import org.undercall.adapter.procedure.ProcedureRules.Range;
import org.undercall.core.term.Torque;
import org.undercall.text.Shown;

/** Checks the rules between the fields of a fastener. */
final class FastenerRules {
  private final Faults faults;
  private final List<Range> tools;

  FastenerRules(Faults faults, List<Range> tools) {
    this.faults = faults;
    this.tools = List.copyOf(tools);
  }

  /** Adds a fault for every broken rule of a fastener. */
  void check(Located fastener) {
    order(fastener);
    runDown(fastener);
    tapped(fastener);
    renewed(fastener);
    JointSizes.check(fastener, faults);
    stages(fastener.at("stages"));
    List<Located> variants = ProcedureRules.items(fastener.at("variants"));
    markings(fastener.at("variants"), variants);
    variants.forEach(variant -> stages(variant.at("stages")));
  }

  /** A run-down torque is measured at one nut, and is not reckoned through an adaptor. */
  private void runDown(Located fastener) {
    Located runDown = fastener.at("runDown");
    if (!runDown.node().isTextual()) {
      return;
    }
    boolean several = fastener.node().path("count").asInt(1) > 1;
    if (several || fastener.node().toString().contains("\"adaptor\"")) {
      String found = several ? "several fasteners" : "an adaptor";
      faults.value(
          ProcedureCode.RUN_DOWN, runDown.pointer(), found, "one fastener without an adaptor");
    }
  }

  private void tapped(Located fastener) {
    Located engagement = fastener.at("engagement");
    if (engagement.node().isNumber() && !fastener.node().has("tappedIn")) {
      String found = Shown.value(engagement.node());
      faults.value(ProcedureCode.NOT_TAPPED, engagement.pointer(), found, "\"tappedIn\" as well");
    }
  }

  private void renewed(Located fastener) {
    Located once = fastener.at("oneTimeUse");
    if (fastener.node().has("renew") && once.node().isBoolean() && !once.node().booleanValue()) {
      faults.value(
          ProcedureCode.RENEWED_AND_REUSED, once.pointer(), "false", "true, or no \"renew\"");
    }
  }

  private void order(Located fastener) {
    Located order = fastener.at("order");
    JsonNode count = fastener.node().path("count");
    if (!order.node().isArray() || !(count.isMissingNode() || count.isInt())) {
      return;
    }
    int size = count.asInt(1);
    Set<Integer> distinct = new HashSet<>();
    boolean within = true;
    for (JsonNode position : order.node()) {
      within &= position.isInt() && position.intValue() >= 1 && position.intValue() <= size;
      distinct.add(position.intValue());
    }
    boolean complete = within && distinct.size() == size && order.node().size() == size;
    if (!order.node().isEmpty() && !complete) {
      String expected = "each position from 1 to " + size + " once";
      faults.value(ProcedureCode.WRONG_ORDER, order.pointer(), order.node().toString(), expected);
    }
  }

  private void markings(Located list, List<Located> variants) {
    Map<String, String> seen = new HashMap<>();
    int unmarked = 0;
    for (Located variant : variants) {
      Located marking = variant.at("marking");
      if (marking.node().isTextual()) {
        String before = seen.putIfAbsent(marking.node().textValue(), variant.pointer());
        if (before != null) {
          String expected = "another marking than that of " + faults.named(before);
          String found = Shown.value(marking.node());
          faults.value(ProcedureCode.DUPLICATE_MARKING, marking.pointer(), found, expected);
        }
      } else if (variant.node().isObject() && marking.node().isMissingNode()) {
        unmarked++;
      }
    }
    if (unmarked > 0 && variants.size() > 1) {
      String found = unmarked + " of " + variants.size() + " variants without a marking";
      String expected = "a marking in each, or one variant alone";
      faults.value(ProcedureCode.MIXED_VARIANTS, list.pointer(), found, expected);
    }
  }

  private void stages(Located list) {
    boolean angleSeen = false;
    int index = 0;
    for (Located stage : ProcedureRules.items(list)) {
      if (stage.node().has("angle")) {
        angleSeen = true;
        if (index == 0) {
          faults.value(
              ProcedureCode.FIRST_STAGE_NOT_TORQUE, stage.pointer(), "an angle", "a torque first");
        }
        tolerance(stage, "angle");
      } else if (stage.node().has("backOff")) {
        angleSeen = false;
        if (index == 0) {
          String expected = "a torque before it";
          faults.value(ProcedureCode.BACK_OFF_FIRST, stage.pointer(), "a back-off first", expected);
        }
        tolerance(stage, "backOff");
      } else if (stage.node().has("torque")) {
        if (angleSeen) {
          String found = "a torque after an angle";
          String expected = "torque stages before angle stages";
          faults.value(ProcedureCode.ANGLE_BEFORE_TORQUE, stage.pointer(), found, expected);
        }
        tolerance(stage, "torque");
        rising(stage);
        Levers.checkAdaptor(stage.at("adaptor"), faults);
        range(stage);
      }
      index++;
    }
  }

  private void rising(Located stage) {
    Located upTo = stage.at("upTo");
    JsonNode from = stage.node().path("torque");
    boolean numbers = from.isNumber() && upTo.node().isNumber();
    if (numbers && upTo.node().decimalValue().compareTo(from.decimalValue()) <= 0) {
      String expected = "more than the torque, " + Shown.value(from);
      faults.value(
          ProcedureCode.RANGE_NOT_RISING, upTo.pointer(), Shown.value(upTo.node()), expected);
    }
  }

  private void tolerance(Located stage, String field) {
    JsonNode target = stage.node().path(field);
    Located plusMinus = stage.at("plusMinus");
    if (target.isNumber()
        && target.decimalValue().signum() > 0
        && plusMinus.node().isNumber()
        && plusMinus.node().decimalValue().compareTo(target.decimalValue()) >= 0) {
      String found = Shown.value(plusMinus.node());
      String expected = "less than the " + field + ", " + Shown.value(target);
      faults.value(ProcedureCode.TOLERANCE_TOO_WIDE, plusMinus.pointer(), found, expected);
    }
  }

  private void range(Located stage) {
    FileWords.torque(stage.node().path("torque"), stage.node().path("unit"))
        .filter(torque -> !tools.isEmpty() && tools.stream().noneMatch(t -> t.covers(torque)))
        .ifPresent(torque -> outside(stage.at("torque").pointer(), torque));
  }

  private void outside(String pointer, Torque torque) {
    String ranges = tools.stream().map(Range::toString).collect(Collectors.joining(", "));
    String expected = "a torque in the range of a listed tool: " + ranges;
    faults.value(ProcedureCode.NO_TOOL_COVERS, pointer, torque.toString(), expected);
  }
}
