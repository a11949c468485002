package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Writes changed values into a text: whatever did not change stays as it is written, with its
 * blanks, its lines and, in YAML, its comments.
 *
 * @param text as it was read
 * @param fresh writes what is new
 */
record ChangedText(String text, FreshText fresh) {

  /** The text with another value in the place of the whole one. */
  String with(Stretch root, JsonNode now) {
    return text.substring(0, root.start()) + value(root, now) + text.substring(root.end());
  }

  /** Whether two values are the same, however their numbers are written. */
  static boolean same(JsonNode one, JsonNode other) {
    if (one.isNumber() && other.isNumber()) {
      return one.decimalValue().compareTo(other.decimalValue()) == 0;
    }
    if (!one.isContainerNode() || one.size() != other.size() || one.isArray() != other.isArray()) {
      return one.equals(other);
    }
    if (one.isObject()) {
      return one.properties().stream()
          .allMatch(f -> other.has(f.getKey()) && same(f.getValue(), other.get(f.getKey())));
    }
    for (int i = 0; i < one.size(); i++) {
      if (!same(one.get(i), other.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** A field or an item as it will be: from an inner stretch, or new. */
  private record Kept(Optional<Stretch.Inner> from, String name, JsonNode now) {}

  private String value(Stretch old, JsonNode now) {
    if (same(old.value(), now)) {
      return text.substring(old.start(), old.end());
    }
    return canKeep(old, now) ? inside(old, now) : fresh.value(now, indent(old.start()));
  }

  private static boolean canKeep(Stretch old, JsonNode now) {
    return old.holds() && !now.isEmpty() && old.value().getNodeType() == now.getNodeType();
  }

  private String inside(Stretch old, JsonNode now) {
    List<Kept> kept = now.isObject() ? fields(old, now) : items(old, now);
    List<Stretch.Inner> inner = old.inner();
    boolean lines = text.substring(old.start(), inner.get(0).start()).contains("\n");
    int indent = old.block() || lines ? column(inner.get(0).start()) : indent(old.start());
    StringBuilder out = new StringBuilder(text.substring(old.start(), inner.get(0).start()));
    int before = -1;
    for (int i = 0; i < kept.size(); i++) {
      Kept each = kept.get(i);
      int index = each.from().map(inner::indexOf).orElse(-2);
      if (i > 0) {
        boolean next = before >= 0 && index == before + 1;
        out.append(
            next
                ? text.substring(inner.get(before).end(), inner.get(index).start())
                : separator(old, indent));
      }
      out.append(one(each, old.block(), indent));
      before = index;
    }
    return out.append(text, inner.get(inner.size() - 1).end(), old.end()).toString();
  }

  /** What stands between two fields or items that were not beside each other before. */
  private String separator(Stretch old, int indent) {
    String line = fresh.eol() + " ".repeat(indent);
    if (old.block()) {
      return line;
    }
    List<Stretch.Inner> inner = old.inner();
    if (inner.size() > 1) {
      String used = text.substring(inner.get(0).end(), inner.get(1).start());
      return used.contains("#") ? ", " : used;
    }
    boolean lines = text.substring(old.start(), inner.get(0).start()).contains("\n");
    return lines ? "," + line : ", ";
  }

  private String one(Kept kept, boolean block, int indent) {
    if (kept.from().isEmpty()) {
      return added(kept, block, indent);
    }
    Stretch.Inner from = kept.from().get();
    Stretch of = from.of();
    if (same(of.value(), kept.now())) {
      return text.substring(from.start(), from.end());
    }
    String head = text.substring(from.start(), from.head());
    boolean inPlace = !of.block() && !kept.now().isContainerNode() && of.end() > of.start();
    if (canKeep(of, kept.now()) || inPlace) {
      return head + text.substring(from.head(), of.start()) + value(of, kept.now());
    }
    boolean bare = kept.name().isEmpty() && !block;
    return bare
        ? fresh.value(kept.now(), indent)
        : head + fresh.tail(kept.name().isEmpty() ? "" : ":", kept.now(), indent);
  }

  private String added(Kept kept, boolean block, int indent) {
    if (!kept.name().isEmpty()) {
      return fresh.name(kept.name()) + fresh.tail(":", kept.now(), indent);
    }
    return block ? "-" + fresh.tail("", kept.now(), indent) : fresh.value(kept.now(), indent);
  }

  private static List<Kept> fields(Stretch old, JsonNode now) {
    List<Kept> kept = new ArrayList<>();
    for (Map.Entry<String, JsonNode> field : now.properties()) {
      Optional<Stretch.Inner> from =
          old.inner().stream().filter(in -> in.name().equals(field.getKey())).findFirst();
      kept.add(new Kept(from, field.getKey(), field.getValue()));
    }
    return kept;
  }

  /** By what an item is known again although something else of it was changed. */
  private static final List<String> NAMES = List.of("id", "name", "include", "marking");

  /** Items are known again if they are the same, else by what names them, else by their order. */
  private static List<Kept> items(Stretch old, JsonNode now) {
    Stretch.Inner[] from = new Stretch.Inner[now.size()];
    List<Stretch.Inner> left = new ArrayList<>(old.inner());
    for (int i = 0; i < from.length; i++) {
      from[i] = take(left, now.get(i), ChangedText::same);
    }
    for (int i = 0; i < from.length; i++) {
      if (from[i] == null) {
        from[i] = take(left, now.get(i), ChangedText::sameName);
      }
    }
    long open = Arrays.stream(from).filter(Objects::isNull).count();
    for (int i = 0; i < from.length && open == left.size(); i++) {
      if (from[i] == null) {
        from[i] = left.remove(0);
        open--;
      }
    }
    List<Kept> kept = new ArrayList<>();
    for (int i = 0; i < from.length; i++) {
      kept.add(new Kept(Optional.ofNullable(from[i]), "", now.get(i)));
    }
    return kept;
  }

  private static boolean sameName(JsonNode one, JsonNode other) {
    return NAMES.stream()
        .filter(name -> one.path(name).isTextual() && one.path(name).equals(other.path(name)))
        .anyMatch(name -> !name.equals("include") || one.path("ids").equals(other.path("ids")));
  }

  private interface Likeness {
    boolean is(JsonNode one, JsonNode other);
  }

  private static Stretch.Inner take(List<Stretch.Inner> left, JsonNode now, Likeness likeness) {
    for (int i = 0; i < left.size(); i++) {
      if (likeness.is(left.get(i).of().value(), now)) {
        return left.remove(i);
      }
    }
    return null;
  }

  private int column(int at) {
    return at - (text.lastIndexOf('\n', Math.max(0, at - 1)) + 1);
  }

  /** The blanks that the line of a place begins with. */
  private int indent(int at) {
    int line = text.lastIndexOf('\n', Math.max(0, at - 1)) + 1;
    int end = line;
    while (end < at && text.charAt(end) == ' ') {
      end++;
    }
    return end - line;
  }
}
