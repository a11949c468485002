package org.undercall.core.reply;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is said, sentence by sentence.
 *
 * @param parts in order; empty if nothing is said
 */
public record Reply(List<Sentence> parts) {
  /** Nothing is said. */
  public static final Reply SILENCE = new Reply(List.of());

  public Reply {
    parts = List.copyOf(parts);
  }

  /** A reply of these sentences, which are never shortened. */
  public static Reply of(String... sentences) {
    return of(List.of(sentences));
  }

  /** A reply of these sentences, which are never shortened. */
  public static Reply of(List<String> sentences) {
    return new Reply(sentences.stream().map(Sentence::fixed).toList());
  }

  /** A sentence that is said in brief, or left out if that is blank, once it was heard whole. */
  static Reply once(Lesson lesson, String whole, String brief) {
    return once(lesson, whole, brief, brief);
  }

  /** The same with other words where little is wanted. */
  static Reply once(Lesson lesson, String whole, String known, String brief) {
    return new Reply(List.of(new Sentence(whole, known, brief, Optional.of(lesson))));
  }

  /** This reply and then the other. */
  public Reply and(Reply other) {
    return new Reply(Stream.concat(parts.stream(), other.parts.stream()).toList());
  }

  /** As it is said to somebody with this habit. */
  public Reply in(Habit habit) {
    return of(parts.stream().map(part -> part.in(habit)).filter(s -> !s.isBlank()).toList());
  }

  /** The sentences, whole. */
  public List<String> sentences() {
    return parts.stream().map(Sentence::whole).toList();
  }

  /** The sentences with a blank between them. */
  public String text() {
    return sentences().stream().collect(Collectors.joining(" "));
  }

  /** This reply without these last sentences; as it is if it ends otherwise. */
  public Reply without(Reply ending) {
    int rest = parts.size() - ending.parts.size();
    return rest >= 0 && parts.subList(rest, parts.size()).equals(ending.parts)
        ? new Reply(parts.subList(0, rest))
        : this;
  }
}
