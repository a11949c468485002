package org.undercall.command.work;

import static org.undercall.command.record.ReviewCommand.COMPLETE;
import static org.undercall.command.record.ReviewCommand.NOT_COMPLETE;

import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.undercall.adapter.speaker.PrintVoice;
import org.undercall.command.front.Chosen;
import org.undercall.command.option.BoardOptions;
import org.undercall.command.option.CalledOption;
import org.undercall.command.option.OwnWordsOption;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.Session;
import org.undercall.core.intent.OwnWords;
import org.undercall.core.term.Occasion;
import org.undercall.listen.KeyboardEar;
import org.undercall.listen.OwnWordsEar;
import org.undercall.port.Ear;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.session.Dialogue;
import org.undercall.session.PrintedState;
import org.undercall.session.Work;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Walks a procedure with typed phrases. */
@Command(
    name = "rehearse",
    description =
        "Walk a procedure with typed phrases in place of the microphone: for practice, no record.",
    mixinStandardHelpOptions = true,
    exitCodeList = {"0:the session is complete", "3:the session is not complete"})
public final class RehearseCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private WorkOptions options;
  @Mixin private CalledOption called;
  @Mixin private OwnWordsOption ownWords;
  @Mixin private BoardOptions boardOptions;

  /** Made by the command line reader. */
  public RehearseCommand() {}

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    Dialogue dialogue = new Dialogue(out);
    Runnable prompt =
        () -> {
          out.print("> ");
          out.flush();
        };
    OwnWords own = ownWords.load();
    Chosen chosen = options.choose(out, Occasion.REHEARSAL);
    try (BoardOptions.Opened board = boardOptions.open(out);
        Work work = options.open(chosen, out);
        Voice voice = new PrintVoice(dialogue::print);
        Ear keyboard =
            new KeyboardEar(new InputStreamReader(System.in, StandardCharsets.UTF_8), prompt);
        Ear typed = new OwnWordsEar(keyboard, own);
        Ear ear = new OwnWordsEar(board.of(called.of(typed, voice, Time.ofMachine())), own)) {
      Session left =
          work.run(
              ear,
              voice,
              Time.ofMachine(),
              options.remindAfter(),
              new PrintedState(dialogue, board.display()));
      options.keepTalk(left);
      return status(left);
    }
  }

  /** The exit status for a session as it was left. */
  static int status(Session session) {
    return session.phase() == Phase.ENDED && session.openSteps() == 0 ? COMPLETE : NOT_COMPLETE;
  }
}
