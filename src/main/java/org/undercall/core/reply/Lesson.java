package org.undercall.core.reply;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What somebody knows who has heard a sentence whole. Each is found again by words that stand in
 * the whole sentence and in no brief one, so that the log tells what was heard before.
 */
public enum Lesson {
  CAUTIONS("Caution[.] "),
  STEP("Step (?!closed)[a-z-]+(, [a-z ]+)?[.] "),
  CLOSED("Step closed[.]"),
  CHECK("(?<!No[.] )Say: check passed,"),
  MEASURE("Call the value in "),
  READ_BACK("Say: that is correct[.]"),
  HEIGHT("bounced or rolled"),
  HARDWARE("Fit [a-z -]+, then say: "),
  REUSE_LENGTH("Or measure [a-z]+, [a-z ]+, and say: length, and the value[.]"),
  REUSE_USES(" before, say: used, and how often[.]"),
  BY_HAND("by hand[.] Then say: "),
  MARKING("Read out the head marking[.]"),
  STAGE("Stage one of "),
  STAGE_CLOSED("Stage one closed at "),
  SET(" fasteners, "),
  POSITION(" left[.] Next: number "),
  NOTED("oted[.]"),
  LOAD(", and say how[.]"),
  LOAD_READ_BACK("Read it back: "),
  LOAD_CONFIRMED("eight confirmed, "),
  TIMER("[.] Say: start the timer[.]"),
  TIME_OVER("Say: step completed[.]"),
  HAND_OVER("Hand over: ");

  private final Pattern mark;

  Lesson(String mark) {
    this.mark = Pattern.compile(mark);
  }

  private boolean isIn(String said) {
    return mark.matcher(said).find();
  }

  /** What somebody knows who has heard these words. */
  public static Set<Lesson> in(String said) {
    Set<Lesson> learned = EnumSet.noneOf(Lesson.class);
    Arrays.stream(values()).filter(lesson -> lesson.isIn(said)).forEach(learned::add);
    return learned;
  }
}
