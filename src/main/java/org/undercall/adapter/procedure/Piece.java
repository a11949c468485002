package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercall.adapter.procedure.Faults.Spot;

/**
 * A value of a file with the place it is written at: what a procedure is put together from.
 *
 * @param value as it is written
 * @param spot where it is written
 * @param unusable whether a fault was reported for it, so that no other is
 * @param members the fields of an object, in order
 * @param items of a list
 */
record Piece(
    JsonNode value, Spot spot, boolean unusable, Map<String, Member> members, List<Piece> items) {
  private static final String INCLUDE = "include";
  private static final String REFERENCE = "given";

  /** A field of an object: where its name is written, and its value. */
  record Member(Spot key, Piece piece) {}

  /** A whole file. */
  static Piece of(JsonNode root, Faults faults) {
    return of(root, "", faults);
  }

  private static Piece of(JsonNode node, String pointer, Faults faults) {
    Map<String, Member> members = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      String inner = LocatedJson.inner(pointer, field.getKey());
      Piece piece = of(field.getValue(), inner, faults);
      members.put(field.getKey(), new Member(faults.keySpot(inner), piece));
    }
    List<Piece> items = new ArrayList<>();
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      items.add(of(node.get(i), pointer + "/" + i, faults));
    }
    return new Piece(node, faults.valueSpot(pointer), faults.ignored(pointer), members, items);
  }

  /** Whether a file, as it was read, has to be put together. */
  static boolean isIn(JsonNode root) {
    return root.findValue(INCLUDE) != null || root.findValue(REFERENCE) != null;
  }

  Optional<Piece> at(String field) {
    return Optional.ofNullable(members.get(field)).map(Member::piece);
  }

  boolean isInclude() {
    return members.containsKey(INCLUDE);
  }

  boolean isReference() {
    return members.containsKey(REFERENCE);
  }

  /** Whether it is a {@code null} that was written. */
  boolean isNone() {
    return value.isNull() && !unusable;
  }

  /** The same, used where a reference stands. */
  Piece usedAt(Spot reference) {
    return new Piece(value, spot.usedAt(reference.name()), unusable, members, items);
  }

  /** The same, brought into a procedure by an include that stands at a pointer. */
  Piece broughtBy(String include) {
    return new Piece(value, spot.broughtBy(include), unusable, members, items);
  }

  /** In place of something that cannot be had, with a fault reported already. */
  Piece lost() {
    return new Piece(LocatedJson.NODES.nullNode(), spot, true, Map.of(), List.of());
  }

  Piece withMembers(Map<String, Member> others) {
    return new Piece(value, spot, unusable, others, items);
  }

  Piece withItems(List<Piece> others) {
    return new Piece(value, spot, unusable, members, others);
  }

  /** The same text with another one before it; anything else as it is. */
  Piece after(String prefix) {
    return value.isTextual()
        ? new Piece(
            LocatedJson.NODES.textNode(prefix + value.textValue()), spot, unusable, members, items)
        : this;
  }
}
