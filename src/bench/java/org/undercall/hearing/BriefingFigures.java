package org.undercall.hearing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.speaker.SpokenText;
import org.undercall.adapter.speaker.Synthesiser;
import org.undercall.adapter.speaker.Voices;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Habit;
import org.undercall.core.reply.Lesson;
import org.undercall.core.term.TalkLevel;
import org.undercall.sound.Pcm;

/** Measures how long the voice takes for the briefing of each example, whole and later on a day. */
final class BriefingFigures {
  private BriefingFigures() {}

  /** Prints a table. The first argument is a folder for the sound, which may be absent. */
  public static void main(String[] args) throws Exception {
    try (Synthesiser voice = Voices.synthesiser("mary", Path.of(args[0]));
        Stream<Path> files = Files.list(Path.of("shared", "procedures"))) {
      System.out.println("| example | first, words | s | later on a day, words | s |");
      System.out.println("|---|--:|--:|--:|--:|");
      for (Path file : files.filter(ProcedureFile::named).sorted().toList()) {
        Procedure procedure = ProcedureFile.load(file).procedure();
        List<String> first = spoken(procedure, Set.of(), Set.of());
        Set<Integer> all =
            IntStream.rangeClosed(1, procedure.cautions().size())
                .boxed()
                .collect(Collectors.toSet());
        List<String> later = spoken(procedure, Set.of(Lesson.CAUTIONS, Lesson.TITLES), all);
        System.out.printf(
            Locale.ROOT,
            "| %s | %d | %.1f | %d | %.1f |%n",
            file.getFileName().toString().replaceFirst("[.][a-z]+$", ""),
            words(first),
            seconds(voice, first),
            words(later),
            seconds(voice, later));
      }
    }
  }

  private static List<String> spoken(
      Procedure procedure, Set<Lesson> known, Set<Integer> confirmed) {
    return Ask.briefing(procedure, confirmed).in(new Habit(TalkLevel.NORMAL, known)).sentences();
  }

  private static int words(List<String> sentences) {
    return String.join(" ", sentences).split(" ", -1).length;
  }

  private static double seconds(Synthesiser voice, List<String> sentences) throws Exception {
    double seconds = 0;
    for (String sentence : sentences) {
      Pcm sound = voice.speak(SpokenText.plain(sentence));
      seconds += sound.samples().length / (double) sound.rate();
    }
    return seconds;
  }
}
