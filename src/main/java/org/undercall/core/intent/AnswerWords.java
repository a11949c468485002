package org.undercall.core.intent;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What can be heard at one question, and what it means: what can be heard is what can be
 * understood.
 *
 * @param fixed whole phrases with what they mean
 * @param numbers whether a number can be said
 * @param units that can be said after a number
 */
public record AnswerWords(Map<String, Said> fixed, boolean numbers, Set<SpokenUnit> units)
    implements Looks {
  public AnswerWords {
    fixed = Collections.unmodifiableMap(new LinkedHashMap<>(fixed));
    units = Set.copyOf(units);
  }

  /** Nothing but these commands. */
  public static AnswerWords of(Set<AnswerCommand> commands) {
    return new AnswerWords(Map.of(), false, Set.of()).withCommands(commands);
  }

  /** With these commands as well. */
  public AnswerWords withCommands(Set<AnswerCommand> commands) {
    AnswerWords all = this;
    for (AnswerCommand command : EnumSet.copyOf(commands)) {
      all = all.with(AnswerTable.COMMANDS.get(command), new Said.Command(command));
    }
    return all;
  }

  /** With answers that a question names. */
  public AnswerWords withAnswers(List<String> answers) {
    AnswerWords all = this;
    for (String answer : answers) {
      all = all.with(AnswerTable.said(answer), new Said.Answer(answer));
    }
    return all;
  }

  /** With threads, by their designations. */
  public AnswerWords withThreads(List<String> designations) {
    AnswerWords all = this;
    for (String thread : designations) {
      all = all.with(AnswerTable.thread(thread), new Said.Answer(thread));
    }
    return all;
  }

  /** With the property classes of bolts. */
  public AnswerWords withMarkings() {
    AnswerWords all = this;
    for (String marking : SlotWords.MARKINGS) {
      all = all.with(AnswerTable.marking(marking), new Said.Answer(marking));
    }
    return all;
  }

  /** With every order of so many fasteners, position by position. */
  public AnswerWords withOrders(int count) {
    AnswerWords all = this;
    for (List<Integer> order : orders(count)) {
      List<String> words = order.stream().map(NumberWords.DIGITS::get).toList();
      String text = String.join("-", order.stream().map(String::valueOf).toList());
      all = all.with(List.of(String.join(" ", words)), new Said.Answer(text));
    }
    return all;
  }

  /** With the answer that stands ready. */
  public AnswerWords withReady() {
    return with(AnswerTable.TAKE, new Said.Ready());
  }

  /** With numbers and these units after them. */
  public AnswerWords withNumbers(Set<SpokenUnit> units) {
    return new AnswerWords(fixed, true, units);
  }

  private AnswerWords with(List<String> phrases, Said meaning) {
    Map<String, Said> more = new LinkedHashMap<>(fixed);
    phrases.forEach(phrase -> more.putIfAbsent(phrase, meaning));
    return new AnswerWords(more, numbers, units);
  }

  private static List<List<Integer>> orders(int count) {
    List<List<Integer>> all = new ArrayList<>(List.of(List.of()));
    for (int position = 0; position < count; position++) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> begun : all) {
        for (int next = 1; next <= count; next++) {
          if (!begun.contains(next)) {
            List<Integer> more = new ArrayList<>(begun);
            more.add(next);
            longer.add(more);
          }
        }
      }
      all = longer;
    }
    return all;
  }

  /** The phrases to listen for, lower case. */
  public List<String> phrases() {
    Set<String> all = new LinkedHashSet<>(fixed.keySet());
    if (numbers) {
      all.addAll(Fillings.quantities(units));
      Fillings.THREE_DIGITS.forEach(all::add);
      for (SpokenUnit unit : units) {
        String word = SlotWords.UNITS.get(unit).get(0);
        Fillings.THREE_DIGITS.forEach(number -> all.add(number + " " + word));
      }
    }
    return List.copyOf(all);
  }

  /** What the words mean; empty if they are no answer here. */
  public Optional<Said> read(List<String> words) {
    Optional<Said> said = Optional.ofNullable(fixed.get(String.join(" ", words)));
    return said.isPresent() || !numbers ? said : amount(words);
  }

  private Optional<Said> amount(List<String> words) {
    for (Map.Entry<List<String>, SpokenUnit> unit : SlotWords.UNIT_WORDS.entrySet()) {
      int end = words.size() - unit.getKey().size();
      boolean ends = end > 0 && words.subList(end, words.size()).equals(unit.getKey());
      if (ends && units.contains(unit.getValue())) {
        return number(words.subList(0, end), Optional.of(unit.getValue()));
      }
    }
    return number(words, Optional.empty());
  }

  private static Optional<Said> number(List<String> words, Optional<SpokenUnit> unit) {
    return SpokenNumbers.read(words) instanceof NumberReading.Read read
        ? Optional.of(new Said.Amount(read.number(), unit))
        : Optional.empty();
  }

  /** What could follow the words; empty if they are no answer yet. */
  public Optional<Continuation> next(String words) {
    List<String> list = words.isBlank() ? List.of() : List.of(words.split(" ", -1));
    Optional<Said> said = read(list);
    if (said.isEmpty()) {
      return Optional.empty();
    }
    boolean longer = fixed.keySet().stream().anyMatch(p -> p.startsWith(words + " "));
    Continuation after = longer ? Continuation.MORE : Continuation.NOTHING;
    if (said.get() instanceof Said.Amount amount && amount.unit().isEmpty()) {
      Continuation number = Continuations.afterNumber(list);
      after = number.compareTo(after) > 0 ? number : after;
    }
    return Optional.of(after);
  }

  /** Numbers are always heard a second time, as are words that mean nothing. */
  @Override
  public Optional<List<String>> phrases(RecognisedPhrase first, double least) {
    List<String> words = texts(first);
    boolean foreign = words.stream().allMatch(RecognisedPhrase.UNKNOWN::equals);
    boolean number = numbers && words.stream().anyMatch(NumberWords.ALL::contains);
    boolean clear = read(words).isPresent() && first.confidence() >= least;
    if (foreign || (clear && !number)) {
      return Optional.empty();
    }
    List<String> all = new ArrayList<>(phrases());
    if (number) {
      all.addAll(SecondLook.numbers(units));
    }
    return Optional.of(all.stream().distinct().toList());
  }

  @Override
  public Optional<Meanings.Choice> likeliest(List<Alternative> alternatives) {
    return Meanings.likeliest(
        alternatives,
        phrase ->
            read(texts(phrase))
                .map(
                    said ->
                        said instanceof Said.Amount amount
                            ? new Meanings.Sense(List.of(amount.value(), amount.unit()), true)
                            : new Meanings.Sense(said, false)));
  }

  @Override
  public boolean counts(RecognisedPhrase first, double least) {
    return read(texts(first)).isPresent() && first.confidence() >= least;
  }

  /** The words of a phrase. */
  public static List<String> texts(RecognisedPhrase phrase) {
    return phrase.words().stream().map(RecognisedPhrase.Word::text).toList();
  }
}
