package org.undercall.command.table;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.Optional;
import org.undercall.command.table.TypedInterview.BrokenOff;
import org.undercall.core.intent.AnswerCommand;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.reply.Reply;
import org.undercall.core.writing.Interview;
import org.undercall.core.writing.Talk;
import org.undercall.core.writing.Turn;
import org.undercall.listen.Answers;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Voice;

/** Asks by voice; what cannot be heard is typed. */
final class VoicedInterview {
  private static final long PATIENCE_MILLIS = 60_000;

  private final Answers ear;
  private final Voice voice;
  private final BufferedReader keyboard;
  private final PrintWriter out;
  private final TableJudge judge;
  private final KeptAnswers kept;

  /** What it asks with. */
  record Ports(Answers ear, Voice voice, BufferedReader keyboard, PrintWriter out) {}

  VoicedInterview(Ports ports, TableJudge judge, KeptAnswers kept) {
    this.ear = ports.ear();
    this.voice = ports.voice();
    this.keyboard = ports.keyboard();
    this.out = ports.out();
    this.judge = judge;
    this.kept = kept;
  }

  /** Asks until all is answered and wanted. */
  Interview run(Interview begun) throws BrokenOff, Fault {
    Talk at = Talk.of(begun);
    say(at.ask());
    while (true) {
      Turn turn = at.isTyped() ? typed(at) : heard(at);
      at = settled(at, turn);
      if (turn.act() == Turn.Act.WRITE) {
        return at.interview();
      }
      if (turn.act() == Turn.Act.STOP) {
        throw new BrokenOff();
      }
    }
  }

  private Talk settled(Talk before, Turn turn) throws BrokenOff, Fault {
    Talk next = turn.next();
    turn.told().forEach(told -> out.println("  " + told));
    if (!next.interview().equals(before.interview())) {
      kept.keep(next.interview().draft());
      Shown shown = new Shown(out, judge);
      shown.step(before.interview().draft(), next.interview().draft());
      if (next.interview().question().isEmpty()) {
        shown.whole(next.interview().draft());
      }
    }
    say(turn.reply());
    if (turn.act() == Turn.Act.LIST) {
      next.interview().list().forEach(line -> out.println("  " + line));
      out.flush();
    }
    return turn.act() == Turn.Act.TYPE ? settled(next, typed(next)) : next;
  }

  private Turn typed(Talk at) throws BrokenOff {
    String line = TypedInterview.line(keyboard, out, TypedInterview.prompt(at.interview()));
    return switch (line) {
      case "stop" -> throw new BrokenOff();
      case "back" -> at.command(AnswerCommand.BACK, judge);
      case "list" -> at.command(AnswerCommand.LIST, judge);
      case "?" -> at.command(AnswerCommand.EXPLAIN, judge);
      default -> at.typed(line, judge);
    };
  }

  private Turn heard(Talk at) throws BrokenOff {
    Optional<RecognisedPhrase> phrase = Optional.empty();
    while (phrase.isEmpty()) {
      try {
        phrase = ear.next(at.words(), PATIENCE_MILLIS);
      } catch (Ear.EndOfInput e) {
        throw new BrokenOff();
      }
    }
    out.println("  heard  " + phrase.get().text());
    out.flush();
    return at.hear(phrase.get(), judge);
  }

  private void say(Reply reply) {
    if (!reply.sentences().isEmpty()) {
      out.println("  reply  " + reply.text());
      out.flush();
      voice.say(reply.text());
      ear.forget();
    }
  }
}
