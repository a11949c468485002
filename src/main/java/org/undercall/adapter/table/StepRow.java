package org.undercall.adapter.table;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.check.LoadWords;
import org.undercall.text.Shown;

/** Makes a step of one row. */
final class StepRow {
  /** The kinds of a joint, as a cell has them. */
  static final List<String> JOINTS = List.of("bonded-bush", "spherical-joint", "rigid");

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final List<String> KINDS =
      List.of("fasten", "do", "measure", "wait", "load", "hand-over");
  private static final List<String> CONDITIONS = List.of("any", "ride-height", "full-droop");

  /** What divides several cautions in one cell. */
  static final String BETWEEN_NOTES = " | ";

  private final RowCells row;
  private final TableFaults faults;

  StepRow(RowCells row, TableFaults faults) {
    this.row = row;
    this.faults = faults;
  }

  /**
   * The step as in a procedure file, its class and stages as a single variant. It has no id if the
   * table gives none.
   */
  ObjectNode step() {
    ObjectNode step = NODES.objectNode();
    row.text(step, "id", Column.ID, false);
    step.put("kind", "fasten");
    row.word(step, "kind", Column.KIND, KINDS, false);
    title(step);
    row.text(step, "brief", Column.BRIEF, false);
    cautions(step);
    row.text(step, "why", Column.WHY, false);
    row.truth(step, "changesLoad", Column.CHANGES_LOAD, false);
    list(step, "after", Column.AFTER);
    bearing(step);
    String kind = step.get("kind").textValue();
    switch (kind) {
      case "fasten" -> step.set("fastener", fastener());
      case "do" -> {
        row.text(step, "check", Column.CHECK, false);
        row.truth(step, "wheelsOn", Column.WHEELS_ON, false);
      }
      case "measure" -> measure(step);
      case "wait" -> row.whole(step, "seconds", Column.SECONDS, true);
      case "load" -> {
        row.word(step, "condition", Column.NEEDS, CONDITIONS.subList(1, 3), true);
        row.truth(step, "byWheels", Column.BY_WHEELS, false);
      }
      default -> row.text(step, "due", Column.DUE, true);
    }
    row.cell(Column.SIDE);
    row.cell(Column.PHASE);
    row.cell(Column.SOURCE);
    row.requireNothingElse(kind);
    return step;
  }

  /** The note of the row, and what is read out of comments on it. */
  private void cautions(ObjectNode step) {
    List<String> cautions = new ArrayList<>();
    Cell note = row.cell(Column.NOTE);
    if (!note.isEmpty()) {
      cautions.addAll(List.of(note.given().split(" ?\\| ?", -1)));
    }
    cautions.addAll(row.comments());
    if (!cautions.isEmpty()) {
      cautions.forEach(step.putArray("cautions")::add);
    }
  }

  private static final List<String> CORNERS =
      List.of("left", "right", "front-left", "front-right", "rear-left", "rear-right");

  /** What a step does to the car and to other steps, as far as its kind can. */
  private void bearing(ObjectNode step) {
    String kind = step.get("kind").textValue();
    if (kind.equals("do") || kind.equals("load")) {
      list(step, "undoes", Column.UNDOES);
      row.word(step, "car", Column.CAR, List.of("raised", "lowered"), false);
    }
    if (kind.equals("do") || kind.equals("fasten")) {
      row.word(step, "corner", Column.CORNER, CORNERS, false);
    }
    if (kind.equals("do") || kind.equals("fasten") || kind.equals("measure")) {
      row.truth(step, "witness", Column.WITNESS, false);
    }
    if (kind.equals("do")) {
      row.truth(step, "roadTest", Column.ROAD_TEST, false);
    }
  }

  /** Puts words with blanks, commas or semicolons between them: ids, or reasons. */
  private void list(ObjectNode node, String field, Column column) {
    Cell cell = row.cell(column);
    if (!cell.isEmpty()) {
      ArrayNode words = node.putArray(field);
      List.of(cell.given().trim().split("[ ,;]+", -1)).forEach(words::add);
    }
  }

  private void title(ObjectNode step) {
    Cell title = row.cell(Column.STEP);
    boolean numbered = title.given().matches("[0-9]+[.)]?");
    if (!title.isEmpty() && !numbered) {
      step.put("title", title.given());
    } else if (step.get("kind").textValue().equals("fasten")) {
      step.put("title", "Tighten the " + row.cell(Column.FASTENER).given());
    } else {
      row.required(Column.STEP);
    }
  }

  private void measure(ObjectNode step) {
    Cell unit = row.required(Column.UNIT);
    step.put("unit", unit.given());
    row.number(step, "least", Column.LEAST);
    row.number(step, "most", Column.MOST);
    row.word(step, "outside", Column.OUTSIDE, List.of("fault", "finding"), false);
    row.truth(step, "notesRideHeight", Column.NOTES_HEIGHT, false);
  }

  private ObjectNode fastener() {
    ObjectNode fastener = NODES.objectNode();
    row.text(fastener, "name", Column.FASTENER, true);
    PartCells part = new PartCells(row, faults);
    part.thread(fastener);
    row.drive(fastener, "drive", Column.SOCKET);
    part.hardware(fastener);
    part.oneTime(fastener);
    JointCells joint = new JointCells(row, faults);
    if (!part.renewSaysWhether()) {
      joint.renew(fastener);
    }
    joint.friction(fastener);
    joint.sizes(fastener);
    List<String> states =
        List.of("dry", "oiled", "greased", "paste", "threadlocker", "as-delivered", "unstated");
    if (row.cell(Column.LUBRICATION).isEmpty()) {
      fastener.put("lubrication", "unstated");
    }
    row.word(fastener, "lubrication", Column.LUBRICATION, states, false);
    needs(fastener);
    row.text(fastener, "needsReason", Column.REASON, false);
    row.word(fastener, "joint", Column.JOINT, JOINTS, false);
    row.text(fastener, "arm", Column.ARM, false);
    row.truth(fastener, "wheel", Column.WHEEL, false);
    part.nutClass(fastener);
    row.word(
        fastener, "tappedIn", Column.TAPPED_IN, List.of("steel", "cast-iron", "aluminium"), false);
    row.number(fastener, "engagement", Column.ENGAGEMENT);
    row.truth(fastener, "leftHand", Column.LEFT_HAND, false);
    row.truth(fastener, "byHand", Column.BY_HAND, false);
    row.text(fastener, "counterHold", Column.COUNTER_HOLD, false);
    row.word(fastener, "runDown", Column.RUN_DOWN, List.of("added", "included"), false);
    row.whole(fastener, "cureMinutes", Column.CURE, false);
    row.whole(fastener, "count", Column.COUNT, false);
    order(fastener);
    ObjectNode variant = fastener.putArray("variants").addObject();
    part.marking(fastener, variant);
    ArrayNode stages = new StageCell(faults).stages(row);
    new BesideStages(row, faults).add(stages);
    variant.set("stages", stages);
    return fastener;
  }

  /** What a note says of the load is no answer, but stands in the question. */
  private void needs(ObjectNode fastener) {
    Cell cell = row.cell(Column.NEEDS);
    Optional<String> said = LoadWords.spokenIn(row.cell(Column.NOTE).given());
    if (cell.isEmpty() && cell.kind() != Cell.Kind.REPORTED && said.isPresent()) {
      Cell place = cell.row() < 0 ? row.cell(Column.NOTE) : cell;
      String expected = "the load condition; the note says " + Shown.quoted(said.get());
      String asked = Column.NEEDS.label();
      faults.about(asked, cell, place, TableCode.EMPTY_CELL, "nothing", expected);
    } else {
      row.word(fastener, "needs", Column.NEEDS, CONDITIONS, true);
    }
  }

  private void order(ObjectNode fastener) {
    Cell cell = row.cell(Column.ORDER);
    if (cell.isEmpty()) {
      return;
    }
    if (cell.given().matches("[0-9]{1,2}([-–, ]+[0-9]{1,2})+")) {
      ArrayNode order = fastener.putArray("order");
      for (String position : cell.given().split("[-–, ]+", -1)) {
        order.add(Integer.parseInt(position));
      }
    } else {
      faults.at(cell, TableCode.NUMBER, cell.shown(), "positions such as 1-3-5-2-4");
    }
  }

  /** An id of small letters, digits and hyphens, from the words of a step. */
  static String id(ObjectNode step) {
    String words = step.path("fastener").path("name").asText(step.path("title").asText());
    String plain =
        Normalizer.normalize(words, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^[-0-9]+|-+$", "");
    String cut = plain.length() > 50 ? plain.substring(0, 50).replaceAll("-+$", "") : plain;
    return cut.isEmpty() ? "step" : cut;
  }
}
