package org.undercall.hearing;

import java.util.List;
import java.util.Set;
import org.undercall.EndOfSpeech;
import org.undercall.adapter.microphone.Frame;
import org.undercall.adapter.microphone.Frames;
import org.undercall.adapter.recogniser.Recogniser;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.SpokenSamples;

/**
 * Takes a phrase for ended when its words are whole and have not changed for a while: a short while
 * if nothing could follow them, a longer one if a number or a longer phrase could go on.
 */
final class EarlyEnd implements EndOfSpeech {
  private final Set<IntentKind> allowed;
  private final List<String> list;
  private final int shortMillis;
  private final int longMillis;
  private String words = "";
  private int sameMillis;

  EarlyEnd(Set<IntentKind> allowed, List<String> list, int shortMillis, int longMillis) {
    this.allowed = allowed;
    this.list = list;
    this.shortMillis = shortMillis;
    this.longMillis = longMillis;
  }

  @Override
  public void begin() {
    words = "";
    sameMillis = 0;
  }

  @Override
  public boolean ended(Frame frame, Recogniser recogniser) {
    String now = recogniser.partial();
    if (!now.equals(words)) {
      words = now;
      sameMillis = 0;
      return false;
    }
    sameMillis += frame.samples() * 1000 / Frames.RATE;
    return sameMillis >= shortMillis && isWhole() && sameMillis >= wait(words);
  }

  private boolean isWhole() {
    return !words.isEmpty()
        && Interpreter.interpret(RecognisedPhrase.typed(words), allowed, 0).kind()
            != IntentKind.UNCLEAR;
  }

  private int wait(String phrase) {
    String last = phrase.substring(phrase.lastIndexOf(' ') + 1);
    boolean goesOn =
        SpokenSamples.isNumberWord(last)
            || list.stream().anyMatch(longer -> longer.startsWith(phrase + " "));
    return goesOn ? longMillis : shortMillis;
  }
}
