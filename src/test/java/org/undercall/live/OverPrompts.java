package org.undercall.live;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;

/** A technician who answers while the program still speaks, and what came of it. */
final class OverPrompts {
  private static final String HEARD = "  heard  ";
  private static final int MOST_TURNS = 60;
  private static final int MOST_TRIES = 4;

  private final List<String> said = new ArrayList<>();
  private final List<String> wrong = new ArrayList<>();
  private int over;
  private int first;
  private int cut;
  private int mute;

  /** Phrases that close something, were heard, and were never said. */
  List<String> wrong() {
    return wrong;
  }

  /** How many replies were printed and not spoken. */
  int mute() {
    return mute;
  }

  /** Answers each reply once it sounds, up to the end of the work. */
  void talk(VirtualSound sound, Technician technician, SpeakerTap tap, Program program)
      throws IOException, InterruptedException {
    Optional<Program.Line> line = program.await(Program.Line::isReply, 20_000);
    for (int turn = 0; turn < MOST_TURNS && line.isPresent(); turn++) {
      String reply = line.get().text().substring(Program.REPLY.length());
      tap.from(line.get().nanos());
      mute += tap.awaitLoud(5_000) > 0 ? 0 : 1;
      if (reply.contains("Log closed.")) {
        return;
      }
      String answer = technician.answer(reply);
      said.add(answer);
      over++;
      sound.call(technician.said(answer, 600));
      long spoken = System.nanoTime();
      line = next(program, 2_500);
      if (line.isPresent()) {
        first++;
        cut += line.get().nanos() - spoken < 2_500_000_000L ? 1 : 0;
        continue;
      }
      for (int again = 0; again < MOST_TRIES && line.isEmpty(); again++) {
        tap.awaitQuiet(900);
        said.add(answer);
        sound.call(technician.said(answer, 600));
        line = next(program, 6_000);
      }
    }
  }

  /** The next reply; what is heard on the way must have been said. */
  private Optional<Program.Line> next(Program program, long millis) throws InterruptedException {
    Optional<Program.Line> line =
        program.await(l -> l.isReply() || l.text().startsWith(HEARD), millis);
    while (line.isPresent() && !line.get().isReply()) {
      String heard = line.get().text().substring(HEARD.length());
      if (!said.remove(heard) && closes(heard)) {
        wrong.add(heard);
      }
      line = program.await(l -> l.isReply() || l.text().startsWith(HEARD), millis);
    }
    return line;
  }

  private static boolean closes(String heard) {
    Set<IntentKind> all = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));
    return Interpreter.interpret(RecognisedPhrase.typed(heard), all, 0).kind().closes();
  }

  @Override
  public String toString() {
    return first
        + " of "
        + over
        + " answers over a prompt heard at the first try, voice cut short "
        + cut
        + " times, "
        + mute
        + " replies not spoken, closing and never said "
        + wrong;
  }
}
