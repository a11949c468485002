package org.undercall.core.reply;

import java.util.EnumSet;
import java.util.Set;
import org.undercall.core.term.TalkLevel;

/**
 * How much is said to a technician.
 *
 * @param level what was asked for
 * @param heard what was heard whole in this job, or before it
 * @param cautions the numbers of the cautions that were heard whole and confirmed on this day
 */
public record Habit(TalkLevel level, Set<Lesson> heard, Set<Integer> cautions) {
  /** Everything whole when it is new. */
  public static final Habit NEW = new Habit(TalkLevel.NORMAL, Set.of());

  public Habit {
    heard = Set.copyOf(heard);
    cautions = Set.copyOf(cautions);
  }

  /** Of somebody who heard no caution on this day. */
  public Habit(TalkLevel level, Set<Lesson> heard) {
    this(level, heard, Set.of());
  }

  /** With another level. */
  public Habit at(TalkLevel next) {
    return new Habit(next, heard, cautions);
  }

  /** For somebody who knows more. */
  public Habit knowing(Set<Lesson> lessons) {
    Set<Lesson> more = EnumSet.noneOf(Lesson.class);
    more.addAll(lessons);
    more.addAll(heard);
    return new Habit(level, more, cautions);
  }

  /** For somebody who heard these cautions whole and confirmed them on this day. */
  public Habit cautioned(Set<Integer> numbers) {
    return new Habit(level, heard, numbers);
  }

  /** For somebody who is told everything whole, unless he asked for short talk. */
  public Habit whole() {
    return level == TalkLevel.SHORT ? this : at(TalkLevel.FULL);
  }

  /** After these words were said. */
  public Habit after(String said) {
    Set<Lesson> more = Lesson.in(said);
    return heard.containsAll(more) ? this : knowing(more);
  }

  /** To say something once more, shorter. */
  public Habit shorter() {
    return at(level == TalkLevel.FULL ? TalkLevel.NORMAL : TalkLevel.SHORT);
  }
}
