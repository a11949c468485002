package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.undercall.text.Yaml;

/** Lays pieces out as one tree and notes for each value where it is written. */
final class WholeTree {
  /** How many values; a file may have some more, to state what it was put together from. */
  private static final int MOST_VALUES = LocatedJson.MOST_VALUES - 1000;

  /** The pointers of all values together, in characters: what keeping them costs. */
  private static final int MOST_POINTERS = 16_000_000;

  private final Faults faults;
  private int values;
  private long pointers;

  WholeTree(Faults faults) {
    this.faults = faults;
  }

  /** The tree; not whole if it is {@link #tooLarge}. */
  JsonNode of(Piece root) {
    return node(root, "", new Above("", ""), 0);
  }

  /** Whether there were more values than a file may have. */
  boolean tooLarge() {
    return values > MOST_VALUES || pointers > MOST_POINTERS;
  }

  /** What holds for all values in another: where it is used, and which include brought it. */
  private record Above(String used, String via) {
    Above within(Faults.Spot spot) {
      return new Above(
          spot.used().isEmpty() ? used : spot.used(), spot.via().isEmpty() ? via : spot.via());
    }
  }

  private JsonNode node(Piece piece, String pointer, Above above, int depth) {
    values++;
    pointers += pointer.length();
    Above here = above.within(piece.spot());
    Faults.Spot spot = piece.spot().usedAt(here.used()).broughtBy(here.via());
    faults.valueAt(pointer, spot);
    if (depth > Yaml.MOST_DEPTH) {
      String expected = "at most " + Yaml.MOST_DEPTH + " levels";
      faults.at(ProcedureCode.TOO_DEEP, spot, "deeper nesting", expected);
    }
    if (piece.unusable() || depth > Yaml.MOST_DEPTH) {
      faults.ignore(pointer);
    }
    if (tooLarge() || depth > Yaml.MOST_DEPTH) {
      return LocatedJson.NODES.nullNode();
    }
    if (piece.value().isObject()) {
      return object(piece, pointer, here, depth);
    }
    return piece.value().isArray() ? list(piece, pointer, here, depth) : piece.value();
  }

  private ObjectNode object(Piece piece, String pointer, Above here, int depth) {
    ObjectNode object = LocatedJson.NODES.objectNode();
    for (Map.Entry<String, Piece.Member> member : piece.members().entrySet()) {
      String inner = LocatedJson.inner(pointer, member.getKey());
      Faults.Spot key = member.getValue().key();
      faults.keyAt(inner, key.usedAt(here.used()));
      object.set(member.getKey(), node(member.getValue().piece(), inner, here, depth + 1));
    }
    return object;
  }

  private ArrayNode list(Piece piece, String pointer, Above here, int depth) {
    ArrayNode list = LocatedJson.NODES.arrayNode();
    for (Piece item : piece.items()) {
      list.add(node(item, pointer + "/" + list.size(), here, depth + 1));
    }
    return list;
  }
}
