package org.undercall.core.writing;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.undercall.core.intent.AnswerCommand;
import org.undercall.core.intent.AnswerWords;
import org.undercall.core.intent.ConfusableNumbers;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.Said;
import org.undercall.core.intent.SpokenNumber;
import org.undercall.core.intent.SpokenUnit;
import org.undercall.core.reply.AskToWrite;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Wanted;

/**
 * Asks for a procedure by voice. What was heard is read back and taken only when it was confirmed;
 * what was not heard well is asked again, and no number is ever guessed.
 *
 * @param interview the questions and the answers that were taken
 * @param begun the amount of a stage, while its tolerance is wanted
 * @param heard what was read back and waits for its confirmation
 * @param failures how often in a row nothing could be made of what was said
 */
public record Talk(Interview interview, Optional<Part> begun, Optional<Heard> heard, int failures) {
  private static final int OFTEN = 2;

  /**
   * The amount of a stage.
   *
   * @param text as in a table
   * @param said as it is read back
   */
  record Part(String text, String said, SpokenUnit unit) {}

  /**
   * An answer that was heard.
   *
   * @param text as in a table
   * @param said as it is read back
   */
  record Heard(String text, String said) {}

  /** A talk that goes on with these answers. */
  public static Talk of(Interview interview) {
    return new Talk(interview, Optional.empty(), Optional.empty(), 0);
  }

  /** Whether the question at hand is answered at the keyboard. */
  public boolean isTyped() {
    return interview.question().filter(Spoken::isTyped).isPresent();
  }

  /** The question as it is said now. */
  public Reply ask() {
    Optional<Wanted> wanted = interview.question();
    if (wanted.isEmpty()) {
      return AskToWrite.whole();
    }
    if (isTyped()) {
      return AskToWrite.typed(wanted.get());
    }
    return begun
        .map(part -> AskToWrite.tolerance(part.said()))
        .orElseGet(
            () ->
                AskToWrite.question(
                    wanted.get(), Spoken.named(interview), Spoken.ready(interview).orElse("")));
  }

  /** What can be said now. */
  public AnswerWords words() {
    if (interview.question().isEmpty()) {
      return AnswerWords.of(
          EnumSet.of(
              AnswerCommand.WRITE, AnswerCommand.BACK, AnswerCommand.REPEAT, AnswerCommand.STOP));
    }
    AnswerWords own =
        begun.map(part -> Spoken.tolerance(part.unit())).orElseGet(() -> Spoken.words(interview));
    return heard.isPresent()
        ? own.withCommands(EnumSet.of(AnswerCommand.RIGHT, AnswerCommand.WRONG))
        : own;
  }

  /** Takes what was heard. */
  public Turn hear(RecognisedPhrase phrase, Judge judge) {
    List<String> words = AnswerWords.texts(phrase);
    boolean foreign = words.stream().allMatch(RecognisedPhrase.UNKNOWN::equals);
    if (foreign) {
      return turn(this, Reply.SILENCE, Turn.Act.NOTHING);
    }
    Optional<Said> said =
        phrase.confidence() < Interpreter.LEAST_CONFIDENCE ? Optional.empty() : words().read(words);
    if (said.isEmpty()) {
      Talk next = new Talk(interview, begun, heard, failures + 1);
      Reply reply = AskToWrite.notUnderstood(next.failures >= OFTEN);
      return turn(
          next, reply.and(heard.isPresent() ? AskToWrite.sayAgain() : ask()), Turn.Act.NOTHING);
    }
    if (said.get() instanceof Said.Command command) {
      return command(command.kind(), judge);
    }
    return answer(said.get());
  }

  /** Takes what was typed, which needs no confirmation. */
  public Turn typed(String text, Judge judge) {
    String ready = Spoken.ready(interview).orElse("");
    return taken(text.strip().isEmpty() && interview.otherwise().isEmpty() ? ready : text, judge);
  }

  private Turn answer(Said said) {
    Wanted wanted = interview.question().orElseThrow();
    if (said instanceof Said.Amount amount) {
      return amount(wanted, amount);
    }
    String text =
        said instanceof Said.Answer answer ? answer.text() : Spoken.ready(interview).orElseThrow();
    return readBack(wanted, begun, text, ReadBack.words(wanted, text));
  }

  private Turn amount(Wanted wanted, Said.Amount amount) {
    boolean unsafe =
        amount.number().style() == SpokenNumber.Style.WORDS
            && ConfusableNumbers.isConfusable(amount.value());
    if (unsafe) {
      return turn(failed(), AskToWrite.digitByDigit(), Turn.Act.NOTHING);
    }
    String number = amount.value().toPlainString();
    if (begun.isPresent()) {
      Part part = begun.get();
      String said = AskToWrite.stage(part.said(), AskToWrite.amount(amount.value(), ""));
      return readBack(wanted, begun, part.text() + " ± " + number + Units.after(part.unit()), said);
    }
    if (Spoken.needsUnit(wanted) && amount.unit().isEmpty()) {
      return turn(failed(), AskToWrite.withUnit(), Turn.Act.NOTHING);
    }
    String said = AskToWrite.amount(amount.value(), amount.unit().map(Units::said).orElse(""));
    if (Spoken.isStage(wanted)) {
      SpokenUnit unit = amount.unit().orElseThrow();
      Part part = new Part(number + Units.after(unit), said, unit);
      Talk next = new Talk(interview, Optional.of(part), Optional.empty(), 0);
      return turn(next, next.ask(), Turn.Act.NOTHING);
    }
    String unit = Spoken.needsUnit(wanted) ? Units.after(amount.unit().orElseThrow()) : "";
    return readBack(wanted, begun, number + unit, said);
  }

  private Talk failed() {
    return new Talk(interview, begun, Optional.empty(), failures + 1);
  }

  private Turn readBack(Wanted wanted, Optional<Part> part, String text, String said) {
    Talk next = new Talk(interview, part, Optional.of(new Heard(text, said)), 0);
    return turn(next, AskToWrite.readBack(wanted, said), Turn.Act.NOTHING);
  }

  /** Does what a command says. */
  public Turn command(AnswerCommand kind, Judge judge) {
    return switch (kind) {
      case RIGHT -> taken(heard.orElseThrow().text(), judge);
      case WRONG -> {
        Talk next = of(interview);
        yield turn(next, AskToWrite.sayAgain().and(next.ask()), Turn.Act.NOTHING);
      }
      case REPEAT -> repeated();
      case EXPLAIN ->
          turn(this, AskToWrite.explained(interview.question().orElseThrow()), Turn.Act.NOTHING);
      case BACK -> back();
      case LIST -> turn(this, AskToWrite.shown(), Turn.Act.LIST);
      case TYPE -> {
        Talk next = of(interview);
        yield turn(next, AskToWrite.typed(interview.question().orElseThrow()), Turn.Act.TYPE);
      }
      case STOP -> turn(this, AskToWrite.kept(), Turn.Act.STOP);
      case WRITE -> turn(this, Reply.SILENCE, Turn.Act.WRITE);
    };
  }

  private Turn repeated() {
    Reply reply =
        heard
            .map(h -> AskToWrite.readBack(interview.question().orElseThrow(), h.said()))
            .orElseGet(this::ask);
    return turn(this, reply, Turn.Act.NOTHING);
  }

  private Turn back() {
    if (heard.isPresent() || begun.isPresent()) {
      Talk next = of(interview);
      return turn(next, next.ask(), Turn.Act.NOTHING);
    }
    if (interview.draft().given().isEmpty()) {
      return turn(this, AskToWrite.nothingBefore(), Turn.Act.NOTHING);
    }
    Talk next = of(interview.back());
    return turn(next, next.ask(), Turn.Act.NOTHING);
  }

  private Turn taken(String text, Judge judge) {
    Interview.Result result = interview.answer(text, judge);
    Talk next = of(result.next());
    Reply why =
        result.told().stream()
            .findFirst()
            .map(told -> AskToWrite.notTaken(told.replaceFirst("^[A-Z]{3}-\\d{3} ", "")))
            .orElse(Reply.SILENCE);
    return new Turn(next, why.and(next.ask()), Turn.Act.NOTHING, result.told());
  }

  private static Turn turn(Talk next, Reply reply, Turn.Act act) {
    return new Turn(next, reply, act, List.of());
  }
}
