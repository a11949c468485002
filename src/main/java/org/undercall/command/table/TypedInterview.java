package org.undercall.command.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercall.core.reply.Wanted;
import org.undercall.core.writing.AnswerFault;
import org.undercall.core.writing.Interview;
import org.undercall.port.Fault;

/** Asks at the keyboard, one question a line. */
final class TypedInterview {
  private static final String HELP =
      "Enter takes what stands in brackets. back: the question before; ?: what it is for; "
          + "list: what is there; stop: keep it and end.";

  private final BufferedReader answers;
  private final PrintWriter out;
  private final TableJudge judge;
  private final KeptAnswers kept;

  TypedInterview(BufferedReader answers, PrintWriter out, TableJudge judge, KeptAnswers kept) {
    this.answers = answers;
    this.out = out;
    this.judge = judge;
    this.kept = kept;
  }

  /** Nothing more is answered; what was is kept. */
  static final class BrokenOff extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /** Asks until all is answered and wanted. */
  Interview run(Interview begun) throws BrokenOff, Fault {
    out.println(HELP);
    Interview at = begun;
    boolean wanted = false;
    while (!wanted) {
      while (at.question().isPresent()) {
        at = step(at);
      }
      new Shown(out, judge).whole(at.draft());
      String answer = line("Write it: yes, no or back [yes]: ");
      switch (answer.toLowerCase(Locale.ROOT)) {
        case "", "yes", "y" -> wanted = true;
        case "no", "n", "stop" -> throw new BrokenOff();
        case "back" -> at = at.back();
        default -> out.println("  " + notAWord(answer));
      }
    }
    return at;
  }

  private static String notAWord(String answer) {
    return AnswerFault.NOT_A_WORD.told('"' + answer + '"', "one of yes, no, back");
  }

  private Interview step(Interview at) throws BrokenOff, Fault {
    String answer = line(prompt(at));
    switch (answer.toLowerCase(Locale.ROOT)) {
      case "?" -> out.println("  " + at.question().orElseThrow().explained());
      case "list" -> at.list().forEach(shown -> out.println("  " + shown));
      case "stop" -> throw new BrokenOff();
      case "back" -> {
        return back(at);
      }
      default -> {
        return answered(at, answer);
      }
    }
    return at;
  }

  private Interview back(Interview at) throws Fault {
    if (at.draft().given().isEmpty()) {
      out.println("  " + AnswerFault.NOTHING_BEFORE.told("no answer", "one to go back to"));
      return at;
    }
    Interview before = at.back();
    kept.keep(before.draft());
    return before;
  }

  private Interview answered(Interview at, String answer) throws Fault {
    Interview.Result result = at.answer(answer, judge);
    result.told().forEach(told -> out.println("  " + told));
    if (result.taken()) {
      kept.keep(result.next().draft());
      new Shown(out, judge).step(at.draft(), result.next().draft());
    }
    return result.next();
  }

  /** The question with its words and with the answer that an empty line stands for. */
  static String prompt(Interview at) {
    Wanted wanted = at.question().orElseThrow();
    List<String> words = wanted.choices().stream().filter(w -> !w.equals("-")).toList();
    boolean listed = words.stream().anyMatch(word -> !wanted.asked().contains(word));
    String choices = listed ? " (" + String.join(", ", words) + ")" : "";
    Optional<String> otherwise = at.otherwise();
    String place = at.place().map(p -> ", " + p).orElse("");
    return wanted.asked() + place + choices + otherwise.map(o -> " [" + o + "]").orElse("") + ": ";
  }

  private String line(String prompt) throws BrokenOff {
    return line(answers, out, prompt);
  }

  /** Asks for a line. */
  static String line(BufferedReader answers, PrintWriter out, String prompt) throws BrokenOff {
    out.print(prompt);
    out.flush();
    try {
      return Optional.ofNullable(answers.readLine()).orElseThrow(BrokenOff::new).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether a plain yes is typed; whatever else is, or nothing, is none. */
  static boolean saysYes(BufferedReader answers, PrintWriter out, String prompt) {
    try {
      return line(answers, out, prompt).equalsIgnoreCase("yes");
    } catch (BrokenOff e) {
      return false;
    }
  }
}
