package org.undercall.hearing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.core.decision.Phase;
import org.undercall.core.decision.PhaseWords;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Fault;

/**
 * Every phrase of a list by every plain synthetic speaker, clean, in the word list of its phase:
 * prints a row for each phrase with what was heard instead, and by whom. No recordings are needed.
 *
 * <p>Arguments: a file with a line for each phrase, such as {@code HARDWARE used twice}, and how
 * many speakers of each group at most. With a third argument every speaker is printed, the right
 * ones too.
 */
final class HeardByEach {
  private final Listener listener;
  private final List<Speaker> speakers;
  private final boolean all;

  /** What one speaker came to. */
  private record Trial(Result result, String line) {}

  private HeardByEach(Listener listener, List<Speaker> speakers, boolean all) {
    this.listener = listener;
    this.speakers = speakers;
    this.all = all;
  }

  /** Runs it. */
  public static void main(String[] args) throws IOException, Fault {
    List<Speaker> speakers = Speakers.find().plain(Integer.parseInt(args[1]));
    try (SpeechModel model = SpeechModel.load(ModelFolder.verify(ModelFolder.standard()))) {
      HeardByEach each = new HeardByEach(Listener.standard(model), speakers, args.length > 2);
      System.out.println("| phase | said | right | asked | cut | silent | wrong | instead |");
      System.out.println("|---|---|--:|--:|--:|--:|--:|---|");
      for (String line : Files.readAllLines(Path.of(args[0]))) {
        String[] parts = line.split(" ", 2);
        each.row(Phase.valueOf(parts[0]), parts[1]);
      }
    }
  }

  private void row(Phase phase, String words) {
    List<Trial> trials =
        new Trials(2, 1).run(speakers.size(), 1, (i, r) -> trial(phase, words, speakers.get(i)));
    List<String> counts = new ArrayList<>();
    for (Result result :
        List.of(Result.RIGHT, Result.ASKED, Result.CUT, Result.SILENT, Result.WRONG)) {
      counts.add(String.valueOf(trials.stream().filter(t -> t.result() == result).count()));
    }
    String instead =
        trials.stream()
            .filter(t -> all || t.result() != Result.RIGHT)
            .map(Trial::line)
            .distinct()
            .collect(Collectors.joining("; "));
    System.out.println(
        "| " + phase + " | " + words + " | " + String.join(" | ", counts) + " | " + instead + " |");
  }

  private Trial trial(Phase phase, String words, Speaker speaker) {
    Intent meant = Interpreter.interpret(RecognisedPhrase.typed(words), PhaseWords.heard(phase), 0);
    Mixing.Clip clip = Conditions.clean().clip(speaker.say(words), null, new Random(1));
    List<Listener.Heard> heard = listener.hear(clip.sound(), PhaseWords.heard(phase));
    Result result = Listener.result(heard, intent -> PhraseFigures.same(intent, meant));
    String what =
        heard.stream()
            .map(
                h ->
                    h.phrase().text()
                        + String.format(Locale.ROOT, " %.2f", h.phrase().confidence()))
            .collect(Collectors.joining(" / "));
    return new Trial(result, speaker.name() + ": " + what);
  }
}
