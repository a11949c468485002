package org.undercall.core.intent;

import java.util.List;
import java.util.Optional;

/**
 * One wording of an intent, cut into words once.
 *
 * @param kind what it means
 * @param before the words before the slot, all words if there is no slot
 * @param slot empty if the wording is fixed
 * @param after the words after the slot
 */
record Wording(IntentKind kind, List<String> before, Optional<Slot> slot, List<String> after) {
  Wording {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /** Cuts a wording of the table. */
  static Wording of(IntentKind kind, String text) {
    int open = text.indexOf('<');
    if (open < 0) {
      return new Wording(kind, words(text), Optional.empty(), List.of());
    }
    int close = text.indexOf('>', open);
    Slot slot = Slot.named(text.substring(open + 1, close));
    return new Wording(
        kind, words(text.substring(0, open)), Optional.of(slot), words(text.substring(close + 1)));
  }

  /** The intent, if the words are exactly this wording; {@link Intent.Unclear} if not. */
  Intent read(List<String> words) {
    if (slot.isEmpty()) {
      return words.equals(before) ? new Intent.Plain(kind) : notThis();
    }
    return filling(words)
        .map(filling -> slot.get().read(kind, filling))
        .orElseGet(Wording::notThis);
  }

  /** What stands in place of the slot; empty if the words are no such wording. */
  Optional<List<String>> filling(List<String> words) {
    int end = words.size() - after.size();
    boolean framed =
        before.size() < end
            && words.subList(0, before.size()).equals(before)
            && words.subList(end, words.size()).equals(after);
    return framed ? Optional.of(words.subList(before.size(), end)) : Optional.empty();
  }

  /** Whether the slot holds a number that may have a unit. */
  boolean holdsNumber() {
    return slot.filter(s -> !s.units().isEmpty()).isPresent();
  }

  /** The phrase with the slot filled. */
  String filled(String filling) {
    String text = String.join(" ", before) + " " + filling + " " + String.join(" ", after);
    return text.strip();
  }

  private static Intent notThis() {
    return new Intent.Unclear(Intent.Unclear.Reason.NOT_A_PHRASE);
  }

  private static List<String> words(String text) {
    String plain = text.strip();
    return plain.isEmpty() ? List.of() : List.of(plain.split(" ", -1));
  }
}
