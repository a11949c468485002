package org.undercall.core.reply;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.undercall.core.term.Kebab;

/**
 * What somebody knows who has heard a sentence whole. Each is found again by words that stand in
 * the whole sentence and in no brief one, so that the log tells what was heard before. What tells
 * how to answer is known in a later job too; what is particular to a job is new in each.
 */
public enum Lesson {
  /** The cautions, earlier on the day: learned by confirming them, never by hearing alone. */
  CAUTIONS,
  /** The titles of this very procedure, in an earlier job that was done to its end. */
  TITLES,
  STEP("Step (?!closed)[a-z-]+(, [a-z ]+)?[.] ", Of.WORK),
  CLOSED("Step closed[.]", Of.WORK),
  CHECK("(?<!No[.] )Say: check passed,", Of.WORK),
  MEASURE("Call the value in ", Of.WORK),
  READ_BACK("Say: that is correct[.]", Of.WORK),
  HEIGHT("bounced or rolled", Of.WORK),
  HARDWARE("Fit [a-z -]+, then say: ", Of.WORK),
  REUSE_LENGTH("Or measure [a-z]+, [a-z ]+, and say: length, and the value[.]", Of.JOB),
  REUSE_USES(" before, say: used, and how often[.]", Of.JOB),
  BY_HAND("by hand[.] Then say: ", Of.WORK),
  MARKING("Read out the head marking[.]", Of.WORK),
  STAGE("Stage one of |Torque, [a-z ]+[.]", Of.JOB),
  STAGE_CLOSED("Stage one closed at ", Of.JOB),
  SET(" fasteners, ", Of.JOB),
  POSITION(" left[.] Next: number ", Of.WORK),
  NOTED("oted[.]", Of.WORK),
  LOAD(", and say how[.]", Of.WORK),
  LOAD_READ_BACK("Read it back: ", Of.WORK),
  LOAD_CONFIRMED("eight confirmed, ", Of.WORK),
  TIMER("[.] Say: start the timer[.]", Of.WORK),
  TIME_OVER("Say: step completed[.]", Of.WORK),
  HAND_OVER("Hand over: ", Of.WORK),
  WRENCH("Say its number[.]", Of.WORK),
  WITNESS("until a second person saw it[.]", Of.WORK),
  END("All steps are closed[.]", Of.WORK);

  /** What a lesson is of. */
  private enum Of {
    JOB,
    WORK
  }

  private final Optional<Pattern> mark;
  private final boolean carried;

  Lesson() {
    mark = Optional.empty();
    carried = false;
  }

  Lesson(String mark, Of of) {
    this.mark = Optional.of(Pattern.compile(mark));
    this.carried = of == Of.WORK;
  }

  /** Whether it is still known in a later job. */
  public boolean carried() {
    return carried;
  }

  private boolean isIn(String said) {
    return mark.filter(words -> words.matcher(said).find()).isPresent();
  }

  /** The lessons with these names, with a blank between them; other names are passed over. */
  public static Set<Lesson> named(String names) {
    Set<Lesson> named = EnumSet.noneOf(Lesson.class);
    List<String> all = List.of(names.split(" ", -1));
    Arrays.stream(values()).filter(lesson -> all.contains(Kebab.of(lesson))).forEach(named::add);
    return named;
  }

  /** The names of lessons, with a blank between them. */
  public static String names(Set<Lesson> lessons) {
    return lessons.stream().sorted().map(Kebab::of).collect(Collectors.joining(" "));
  }

  /** What somebody knows who has heard these words. */
  public static Set<Lesson> in(String said) {
    Set<Lesson> learned = EnumSet.noneOf(Lesson.class);
    Arrays.stream(values()).filter(lesson -> lesson.isIn(said)).forEach(learned::add);
    return learned;
  }
}
