package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A technician's own wordings. Each stands for a fixed wording of the program: what is heard in own
 * words goes on as if the program's words had been said, so nothing else knows of them.
 */
public final class OwnWords {
  private static final Set<IntentKind> ALL =
      Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT)));
  private static final Pattern FORM = Pattern.compile("[\\p{Ll}']+( [\\p{Ll}']+){1,7}");

  private final Map<String, IntentKind> kinds;

  /** What is wrong with a wording. */
  public enum Trouble {
    /** Not two to eight words in small letters of any language, one blank between them. */
    FORM,
    /** The intent is only said with a number or a choice, or not at all. */
    NO_FIXED_WORDING,
    /** The program knows the phrase already. */
    KNOWN,
    /** One word more, less or other makes it a phrase that means something else. */
    TOO_CLOSE
  }

  /**
   * One trouble.
   *
   * @param other the phrase it is too close to, or means already; else empty
   */
  public record Problem(IntentKind kind, String wording, Trouble trouble, String other) {}

  private OwnWords(Map<String, IntentKind> kinds) {
    this.kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
  }

  /** No own wordings. */
  public static OwnWords none() {
    return new OwnWords(Map.of());
  }

  /**
   * Own wordings.
   *
   * @param kinds what each wording stands for
   * @throws IllegalArgumentException if there are {@link #problems}
   */
  public static OwnWords of(Map<String, IntentKind> kinds) {
    List<Problem> problems = problems(kinds);
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException("found " + problems + ", expected wordings without");
    }
    return new OwnWords(kinds);
  }

  /** What is wrong with wordings, in their order; empty if they can be used. */
  public static List<Problem> problems(Map<String, IntentKind> kinds) {
    List<Problem> problems = new ArrayList<>();
    kinds.forEach((wording, kind) -> problem(wording, kind, kinds).ifPresent(problems::add));
    return List.copyOf(problems);
  }

  private static Optional<Problem> problem(
      String wording, IntentKind kind, Map<String, IntentKind> kinds) {
    if (!FORM.matcher(wording).matches()) {
      return Optional.of(new Problem(kind, wording, Trouble.FORM, ""));
    }
    if (standard(kind).isEmpty()) {
      return Optional.of(new Problem(kind, wording, Trouble.NO_FIXED_WORDING, ""));
    }
    Intent known = Interpreter.interpret(RecognisedPhrase.typed(wording), ALL, 0);
    if (known.kind() != IntentKind.UNCLEAR) {
      return Optional.of(new Problem(kind, wording, Trouble.KNOWN, wording));
    }
    for (IntentKind other : ALL) {
      for (String phrase : other == kind ? List.<String>of() : Phrasebook.wordList(Set.of(other))) {
        if (isClose(wording, phrase)) {
          return Optional.of(new Problem(kind, wording, Trouble.TOO_CLOSE, phrase));
        }
      }
    }
    return kinds.entrySet().stream()
        .filter(other -> other.getValue() != kind && isClose(wording, other.getKey()))
        .map(other -> new Problem(kind, wording, Trouble.TOO_CLOSE, other.getKey()))
        .findFirst();
  }

  /** The intents that may have own words: those with a wording without a number or a choice. */
  public static Set<IntentKind> possible() {
    Set<IntentKind> possible = EnumSet.noneOf(IntentKind.class);
    ALL.stream().filter(kind -> standard(kind).isPresent()).forEach(possible::add);
    return Collections.unmodifiableSet(possible);
  }

  /** The program's first wording without a number or a choice. */
  private static Optional<String> standard(IntentKind kind) {
    return Phrasebook.compiledWordings(kind).stream()
        .filter(wording -> wording.slot().isEmpty() && wording.before().size() > 1)
        .filter(wording -> !kind.isShort())
        .map(wording -> wording.filled(""))
        .findFirst();
  }

  /** Whether one is part of the other, or one word more, less or other makes them the same. */
  private static boolean isClose(String one, String other) {
    if ((" " + one + " ").contains(" " + other + " ")
        || (" " + other + " ").contains(" " + one + " ")) {
      return true;
    }
    return changes(List.of(one.split(" ", -1)), List.of(other.split(" ", -1))) <= 1;
  }

  /** How many words must be put in, left out or changed (Levenshtein's distance over words). */
  private static int changes(List<String> one, List<String> other) {
    int[] last = new int[other.size() + 1];
    for (int j = 0; j <= other.size(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= one.size(); i++) {
      int[] now = new int[other.size() + 1];
      now[0] = i;
      for (int j = 1; j <= other.size(); j++) {
        int changed = last[j - 1] + (one.get(i - 1).equals(other.get(j - 1)) ? 0 : 1);
        now[j] = Math.min(changed, 1 + Math.min(last[j], now[j - 1]));
      }
      last = now;
    }
    return last[other.size()];
  }

  /** The wordings with what each stands for. */
  public Map<String, IntentKind> wordings() {
    return kinds;
  }

  /**
   * A word list with the own wordings that stand for phrases in it.
   *
   * @param phrases the program's phrases that may be said now
   */
  public List<String> with(List<String> phrases) {
    List<String> all = new ArrayList<>(phrases);
    kinds.forEach(
        (wording, kind) -> {
          if (standard(kind).filter(phrases::contains).isPresent()) {
            all.add(wording);
          }
        });
    return List.copyOf(all);
  }

  /** The program's wording for an own one; any other text as it is. */
  public String inStandard(String text) {
    return Optional.ofNullable(kinds.get(text)).flatMap(OwnWords::standard).orElse(text);
  }

  /** The words of the program's wording, in the time and with the confidence of the own ones. */
  public List<RecognisedPhrase.Word> inStandard(List<RecognisedPhrase.Word> words) {
    RecognisedPhrase phrase = new RecognisedPhrase(words);
    String standard = inStandard(phrase.text());
    if (standard.equals(phrase.text())) {
      return words;
    }
    List<String> texts = List.of(standard.split(" ", -1));
    double start = words.get(0).start();
    double each = (words.get(words.size() - 1).end() - start) / texts.size();
    List<RecognisedPhrase.Word> standards = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      double from = start + i * each;
      standards.add(
          new RecognisedPhrase.Word(texts.get(i), phrase.confidence(), from, from + each));
    }
    return List.copyOf(standards);
  }
}
