package org.undercall.core.writing;

import static org.undercall.core.reply.Wanted.*;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.fastening.ThreadCatalogue;
import org.undercall.core.fastening.ThreadSize;
import org.undercall.core.intent.AnswerCommand;
import org.undercall.core.intent.AnswerTable;
import org.undercall.core.intent.AnswerWords;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.reply.Wanted;

/** What can be said at each question. */
final class Spoken {
  /** What is always typed: the names of people and things, the source, and a day. */
  private static final Set<Wanted> TYPED =
      EnumSet.of(TITLE, VEHICLE, AUTHOR, SOURCE, CALIBRATED, DUE);

  private static final Set<SpokenUnit> TORQUES =
      EnumSet.of(SpokenUnit.NEWTON_METRES, SpokenUnit.FOOT_POUNDS, SpokenUnit.INCH_POUNDS);

  private static final Set<AnswerCommand> ALWAYS =
      EnumSet.of(
          AnswerCommand.REPEAT,
          AnswerCommand.EXPLAIN,
          AnswerCommand.BACK,
          AnswerCommand.LIST,
          AnswerCommand.TYPE,
          AnswerCommand.STOP);

  /** The largest set whose order can be said. */
  private static final int MOST_ORDERED = 5;

  private Spoken() {}

  static boolean isTyped(Wanted wanted) {
    return TYPED.contains(wanted);
  }

  /** Whether an amount of the question needs its unit, because nothing else tells it. */
  static boolean needsUnit(Wanted wanted) {
    return isStage(wanted) || wanted == TOOL_LEAST || wanted == TOOL_MOST;
  }

  /** Whether the question is for a stage, so that a tolerance is asked for as well. */
  static boolean isStage(Wanted wanted) {
    return wanted == STAGE || wanted == MORE_STAGES;
  }

  /**
   * The answer that stands ready. Where only a name is wanted, there is a plain one; never for the
   * source, and never for a value.
   */
  static Optional<String> ready(Interview interview) {
    Wanted wanted = interview.question().orElseThrow();
    int number = interview.draft().rows().size() + 1;
    Optional<String> otherwise =
        interview.otherwise().filter(text -> !text.equals(Given.NONE) && !isListed(wanted, text));
    return switch (wanted) {
      case STEP -> Optional.of(otherwise.orElse("Step " + number));
      case TOOL -> Optional.of("wrench 1");
      default -> otherwise;
    };
  }

  private static boolean isListed(Wanted wanted, String text) {
    return wanted.choices().contains(text);
  }

  /** The answers that the question names, as they are said first. */
  static List<String> named(Interview interview) {
    List<String> words = new ArrayList<>();
    for (String answer : answers(interview)) {
      words.add(AnswerTable.said(answer).get(0));
    }
    return words;
  }

  private static List<String> answers(Interview interview) {
    Wanted wanted = interview.question().orElseThrow();
    List<String> answers = new ArrayList<>(wanted.choices());
    if (interview.mayBeNone() && !answers.contains(Given.NONE)) {
      answers.add(Given.NONE);
    }
    return answers;
  }

  /** The words of the question at hand. */
  static AnswerWords words(Interview interview) {
    Wanted wanted = interview.question().orElseThrow();
    AnswerWords words = AnswerWords.of(ALWAYS).withAnswers(answers(interview));
    if (ready(interview).isPresent()) {
      words = words.withReady();
    }
    return switch (wanted) {
      case FASTENER -> words.withAnswers(AnswerTable.NAMES);
      case PHASE -> words.withAnswers(List.of("inspect", "remove", "fit", "tighten", "finish"));
      case THREAD -> words.withThreads(threads());
      case MARKING, MORE_MARKINGS -> words.withMarkings();
      case ORDER -> ordered(words, interview.draft());
      case STAGE, TOOL_LEAST, TOOL_MOST -> words.withNumbers(TORQUES);
      case MORE_STAGES -> words.withNumbers(withDegrees());
      case SOCKET, CLAMPED, HEIGHT_TOLERANCE ->
          words.withNumbers(EnumSet.of(SpokenUnit.MILLIMETRES));
      case LEAST, MOST -> words.withNumbers(measured(interview.draft()));
      case COUNT, SECONDS, NUT_CLASS, REVISION, UNCERTAINTY, SEAT_ANGLE ->
          words.withNumbers(Set.of());
      default -> words;
    };
  }

  /** The words while a tolerance is wanted: a number, with the unit of its stage if one likes. */
  static AnswerWords tolerance(SpokenUnit unit) {
    return AnswerWords.of(ALWAYS).withNumbers(EnumSet.of(unit));
  }

  private static AnswerWords ordered(AnswerWords words, Draft draft) {
    String count = draft.inStep(COUNT).orElse("0");
    int number = count.matches("[0-9]") ? Integer.parseInt(count) : 0;
    return number >= 2 && number <= MOST_ORDERED ? words.withOrders(number) : words;
  }

  private static Set<SpokenUnit> withDegrees() {
    Set<SpokenUnit> units = EnumSet.copyOf(TORQUES);
    units.add(SpokenUnit.DEGREES);
    return units;
  }

  private static Set<SpokenUnit> measured(Draft draft) {
    SpokenUnit unit =
        switch (draft.inStep(UNIT).orElse("")) {
          case "mm" -> SpokenUnit.MILLIMETRES;
          case "in" -> SpokenUnit.INCHES;
          case "deg" -> SpokenUnit.DEGREES;
          case "km" -> SpokenUnit.KILOMETRES;
          default -> SpokenUnit.BAR;
        };
    return EnumSet.of(unit);
  }

  private static List<String> threads() {
    return ThreadCatalogue.all().stream().map(Spoken::designation).toList();
  }

  private static String designation(ThreadSize thread) {
    return "M" + plain(thread.diameter().millimetres()) + "x" + plain(thread.pitch().millimetres());
  }

  private static String plain(double millimetres) {
    return String.format(Locale.ROOT, "%.2f", millimetres).replaceFirst("\\.?0+$", "");
  }
}
