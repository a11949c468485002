package org.undercall.core.reply;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.undercall.core.term.HeadMarking;

/** What the program says while it asks for a procedure. */
public final class AskToWrite {
  private AskToWrite() {}

  /**
   * A question.
   *
   * @param words the answers to choose from, as they are said; none for a value
   * @param ready the answer that stands ready; blank if there is none
   */
  public static Reply question(Wanted wanted, List<String> words, String ready) {
    List<String> sentences = new ArrayList<>(List.of(spoken(wanted) + "."));
    if (!words.isEmpty() && words.size() < 10) {
      sentences.add("Say: " + String.join(", or: ", words) + ".");
    }
    if (!ready.isEmpty()) {
      sentences.add("Or say: take that one, for: " + ended(ready));
    }
    return Reply.of(sentences);
  }

  /** A question that is answered at the keyboard. */
  public static Reply typed(Wanted wanted) {
    return Reply.of("Type: " + spoken(wanted) + ".");
  }

  /** What a question is for. */
  public static Reply explained(Wanted wanted) {
    return Reply.of(wanted.explained());
  }

  /** A question as it is spoken: without what only typing needs. */
  private static String spoken(Wanted wanted) {
    return wanted.brief().replace(" in mm", " in millimetres");
  }

  /** With one stop at its end. */
  private static String ended(String words) {
    return words.endsWith(".") ? words : words + ".";
  }

  /** An answer read back. */
  public static Reply readBack(Wanted wanted, String words) {
    return Reply.of(spoken(wanted) + ": " + ended(words), "Say: that is correct, or say it again.");
  }

  /** A number digit by digit, with its unit. */
  public static String amount(BigDecimal number, String unit) {
    return (Words.digits(number) + " " + unit).strip();
  }

  /** A property class. */
  public static String marking(String text) {
    return Words.marking(new HeadMarking(text));
  }

  /** A thread. */
  public static String thread(String designation) {
    return Words.thread(designation);
  }

  /** A torque or an angle with its tolerance. */
  public static String stage(String amount, String tolerance) {
    return amount + ", plus or minus " + tolerance;
  }

  /** The tolerance of a stage is wanted. */
  public static Reply tolerance(String amount) {
    return Reply.of(Words.sentence(amount) + ". Plus or minus how much?");
  }

  /** A number that sounds like another one must be said by its digits. */
  public static Reply digitByDigit() {
    return Reply.of("Say the number digit by digit.");
  }

  /** The unit is missing. */
  public static Reply withUnit() {
    return Reply.of("Say it with the unit.");
  }

  /** Something was said that is no answer. */
  public static Reply notUnderstood(boolean often) {
    return often
        ? Reply.of("Not understood. You can say: let me type.")
        : Reply.of("Not understood.");
  }

  /** An answer is not taken. */
  public static Reply notTaken(String why) {
    return Reply.of("Not taken.", Words.sentence(ended(why)));
  }

  /** It was heard wrong. */
  public static Reply sayAgain() {
    return Reply.of("Say it again.");
  }

  /** There is nothing before. */
  public static Reply nothingBefore() {
    return Reply.of("That was the first question.");
  }

  /** Everything is answered. */
  public static Reply whole() {
    return Reply.of("All is answered. Look at the walk. Say: write it down, or: go back one step.");
  }

  /** The answers are kept. */
  public static Reply kept() {
    return Reply.of("The answers are kept.");
  }

  /** What was asked for is shown. */
  public static Reply shown() {
    return Reply.of("It is on the screen.");
  }
}
