package org.undercall.core.reply;

import java.util.Optional;
import org.undercall.core.term.TalkLevel;

/**
 * One sentence of a reply.
 *
 * @param whole as it is said to whom it is new
 * @param known as it is said to whom it is not; blank if it is left out then
 * @param brief as it is said where little is wanted
 * @param lesson what somebody knows who has heard it whole; empty if it is always said whole
 */
public record Sentence(String whole, String known, String brief, Optional<Lesson> lesson) {
  /** A sentence that is never shortened. */
  static Sentence fixed(String words) {
    return new Sentence(words, words, words, Optional.empty());
  }

  /** The words for somebody with this habit. */
  String in(Habit habit) {
    if (lesson.isEmpty() || habit.level() == TalkLevel.FULL) {
      return whole;
    }
    boolean heard = habit.heard().contains(lesson.get());
    if (habit.level() == TalkLevel.SHORT) {
      return heard && known.length() < brief.length() ? known : brief;
    }
    return heard ? known : whole;
  }
}
