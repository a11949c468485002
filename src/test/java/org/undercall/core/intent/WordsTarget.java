package org.undercall.core.intent;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Any text as what was typed or heard: it means something that is allowed, or it is unclear. */
public final class WordsTarget {
  private static final Set<IntentKind> ALL = EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT));
  private static final Set<IntentKind> NOTE = EnumSet.of(IntentKind.NOTE_TEXT);

  private WordsTarget() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] data) {
    String text = new String(data, UTF_8);
    RecognisedPhrase phrase = RecognisedPhrase.typed(text);
    Intent intent = Interpreter.interpret(phrase, ALL, 0.6);
    if (!(intent instanceof Intent.Unclear) && !ALL.contains(intent.kind())) {
      throw new AssertionError("not allowed: " + intent);
    }
    Interpreter.interpret(phrase, NOTE, 0.6);
    List<String> words = Arrays.asList(text.toLowerCase(Locale.ROOT).split(" ", -1));
    bounded(SpokenNumbers.read(words));
    Continuations.of(text, ALL);
    SecondLook.phrases(phrase, ALL, 0.6);
    StopPhrases.in(text, StopPhrases.over("stop now"));
    Meanings.likeliest(List.of(new Alternative(phrase.words(), -1)), ALL);
  }

  private static void bounded(NumberReading reading) {
    if (reading instanceof NumberReading.Read read) {
      double value = read.number().value().doubleValue();
      if (value < 0 || value >= 10_000 || read.number().value().scale() > 3) {
        throw new AssertionError("out of range: " + read);
      }
    }
  }
}
