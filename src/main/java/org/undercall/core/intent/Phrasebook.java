package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercall.core.term.SpellingAlphabet;

/**
 * Every phrase that can be heard, and what it means.
 *
 * <p>What can be heard is what can be understood: the recogniser's word list is made from the same
 * table as the reading of a phrase.
 */
public final class Phrasebook {
  private static final Map<IntentKind, List<Wording>> COMPILED = compiled();
  private static final SortedSet<String> WORDS = allWords();

  private Phrasebook() {}

  /**
   * The wordings of a kind, with slots such as {@code <number>} and an optional unit in brackets.
   *
   * @return empty for a kind that is not spoken
   */
  public static List<String> wordings(IntentKind kind) {
    return compiledWordings(kind).stream().map(Phrasebook::shown).toList();
  }

  /**
   * The phrases to listen for while these kinds are allowed, in a fixed order, lower case.
   *
   * @return never empty: "say again" and its like if no allowed kind is spoken; without phrases of
   *     one word and short answers, which chatter is full of
   */
  public static List<String> wordList(Set<IntentKind> allowed) {
    WordList list = new WordList();
    Stream.of(IntentKind.values())
        .filter(kind -> allowed.contains(kind) && !kind.isShort())
        .flatMap(kind -> compiledWordings(kind).stream())
        .filter(wording -> wording.slot().isPresent() || wording.before().size() > 1)
        .forEach(list::add);
    if (list.phrases().isEmpty()) {
      compiledWordings(IntentKind.REPEAT).forEach(list::add);
    }
    return list.phrases();
  }

  /**
   * Phrases that say a kind in full without a number: its first wording without a slot, or one for
   * each side or reason.
   *
   * @return empty for a kind that needs a number or words of its own
   */
  public static List<String> withoutNumber(IntentKind kind) {
    List<Wording> wordings = compiledWordings(kind);
    Optional<Wording> fixed = wordings.stream().filter(w -> w.slot().isEmpty()).findFirst();
    return fixed
        .map(wording -> List.of(wording.filled("")))
        .orElseGet(() -> wordings.stream().limit(1).flatMap(Phrasebook::chosen).toList());
  }

  private static Stream<String> chosen(Wording wording) {
    return wording.slot().orElseThrow().choices().stream().map(wording::filled);
  }

  /** All single words that can be part of a phrase; a no or a short answer is none. */
  public static SortedSet<String> words() {
    return WORDS;
  }

  /** The wordings of a kind, ready to be matched. */
  static List<Wording> compiledWordings(IntentKind kind) {
    return COMPILED.getOrDefault(kind, List.of());
  }

  private static Map<IntentKind, List<Wording>> compiled() {
    Map<IntentKind, List<Wording>> compiled = new EnumMap<>(IntentKind.class);
    PhraseTable.WORDINGS.forEach(
        (kind, texts) ->
            compiled.put(kind, texts.stream().map(text -> Wording.of(kind, text)).toList()));
    return Collections.unmodifiableMap(compiled);
  }

  private static SortedSet<String> allWords() {
    Stream<String> phrases =
        Stream.of(
                COMPILED.values().stream()
                    .flatMap(List::stream)
                    .filter(wording -> !wording.kind().isShort())
                    .flatMap(wording -> Stream.of(wording.before(), wording.after()))
                    .flatMap(List::stream),
                SlotWords.UNITS.values().stream().flatMap(List::stream),
                SlotWords.SIGNS.keySet().stream(),
                SlotWords.SIDES.values().stream(),
                SlotWords.REASONS.values().stream().flatMap(List::stream),
                SlotWords.CAUSES.values().stream(),
                SlotWords.TIMES.stream().skip(1),
                SlotWords.TROUBLES.values().stream().flatMap(List::stream),
                SlotWords.FINDINGS.values().stream().flatMap(List::stream),
                SlotWords.EXCUSES.values().stream(),
                SpellingAlphabet.words().stream(),
                Stream.of(SlotWords.NUMBER),
                SlotWords.TIMERS.values().stream(),
                SlotWords.MINUTES_FOR.stream(),
                Stream.of(SlotWords.OF, SlotWords.EVERY),
                NumberWords.ALL.stream())
            .flatMap(part -> part);
    return Collections.unmodifiableSortedSet(
        phrases
            .flatMap(phrase -> Stream.of(phrase.split(" ", -1)))
            .collect(Collectors.toCollection(TreeSet::new)));
  }

  private static String shown(Wording wording) {
    return wording
        .slot()
        .map(slot -> wording.filled(shown(slot)))
        .orElseGet(() -> wording.filled(""));
  }

  private static String shown(Slot slot) {
    if (slot == Slot.MINUTES_AND_TIMER) {
      return "<minutes> " + SlotWords.MINUTES_FOR.get(0) + " <timer>";
    }
    if (slot == Slot.SIGNED) {
      return "<" + String.join(" | ", SlotWords.SIGNS.keySet()) + "> " + shown(Slot.VALUE);
    }
    if (slot == Slot.DEGREES_AND_MINUTES) {
      return "["
          + String.join(" | ", SlotWords.SIGNS.keySet())
          + "] [<number> degrees] <number> minutes";
    }
    if (slot.units().isEmpty()) {
      return "<" + slot.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ">";
    }
    List<String> units = new ArrayList<>();
    for (SpokenUnit unit : SpokenUnit.values()) {
      if (slot.units().contains(unit)) {
        units.add(SlotWords.UNITS.get(unit).get(0));
      }
    }
    return "<number> [" + String.join(" | ", units) + "]";
  }
}
