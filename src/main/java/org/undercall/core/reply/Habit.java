package org.undercall.core.reply;

import java.util.EnumSet;
import java.util.Set;
import org.undercall.core.term.TalkLevel;

/**
 * How much is said to a technician.
 *
 * @param level what was asked for
 * @param heard what was heard whole in this job
 */
public record Habit(TalkLevel level, Set<Lesson> heard) {
  /** Everything whole when it is new. */
  public static final Habit NEW = new Habit(TalkLevel.NORMAL, Set.of());

  public Habit {
    heard = Set.copyOf(heard);
  }

  /** With another level. */
  public Habit at(TalkLevel next) {
    return new Habit(next, heard);
  }

  /** For somebody who knows one thing more. */
  public Habit knowing(Lesson lesson) {
    Set<Lesson> more = EnumSet.of(lesson);
    more.addAll(heard);
    return new Habit(level, more);
  }

  /** After these words were said. */
  public Habit after(String said) {
    Set<Lesson> more = Lesson.in(said);
    if (heard.containsAll(more)) {
      return this;
    }
    more.addAll(heard);
    return new Habit(level, more);
  }

  /** To say something once more, shorter. */
  public Habit shorter() {
    return at(level == TalkLevel.FULL ? TalkLevel.NORMAL : TalkLevel.SHORT);
  }
}
