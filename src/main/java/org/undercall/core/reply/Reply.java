package org.undercall.core.reply;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is said, sentence by sentence.
 *
 * @param sentences in order; empty if nothing is said
 */
public record Reply(List<String> sentences) {
  /** Nothing is said. */
  public static final Reply SILENCE = new Reply(List.of());

  public Reply {
    sentences = List.copyOf(sentences);
  }

  /** A reply of these sentences. */
  public static Reply of(String... sentences) {
    return new Reply(List.of(sentences));
  }

  /** This reply and then the other. */
  public Reply and(Reply other) {
    return new Reply(Stream.concat(sentences.stream(), other.sentences.stream()).toList());
  }

  /** The sentences with a blank between them. */
  public String text() {
    return sentences.stream().collect(Collectors.joining(" "));
  }

  /** This reply without these last sentences; as it is if it ends otherwise. */
  public Reply without(Reply ending) {
    int rest = sentences.size() - ending.sentences.size();
    return rest >= 0 && sentences.subList(rest, sentences.size()).equals(ending.sentences)
        ? new Reply(sentences.subList(0, rest))
        : this;
  }
}
