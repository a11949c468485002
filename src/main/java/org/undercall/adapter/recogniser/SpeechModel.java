package org.undercall.adapter.recogniser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.sun.jna.Pointer;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.port.Fault;
import org.undercall.sound.Frames;

/**
 * A loaded speech model. Any thread may use it.
 *
 * <p>Loading takes about half a second and 200 MB; making a recogniser takes about a millisecond.
 */
public final class SpeechModel implements RecogniserMaker {
  private static final JsonMapper JSON = new JsonMapper();

  private static final int MOST_ALTERNATIVES = 20;

  private final Vosk vosk;
  private Pointer model;

  private SpeechModel(Vosk vosk, Pointer model) {
    this.vosk = vosk;
    this.model = model;
  }

  /**
   * Loads a checked model.
   *
   * @throws Fault MOD-009 without a library for this system, MOD-010 if the library refuses the
   *     model
   */
  public static SpeechModel load(ModelFolder folder) throws Fault {
    Vosk vosk = Vosk.load();
    Pointer model = vosk.vosk_model_new(folder.path().toString());
    if (model == null) {
      throw new Fault(
          ModelCode.REFUSED,
          folder.path().toString(),
          "the recogniser could not load the model; use a model made for Vosk 0.3.45");
    }
    return new SpeechModel(vosk, model);
  }

  /**
   * Loads the recogniser's library without a model.
   *
   * @throws Fault MOD-009 without a library for this system
   */
  public static void requireLibrary() throws Fault {
    Vosk.load();
  }

  /**
   * The words that the model does not know, so that they can never be heard; in order, once each.
   */
  public synchronized List<String> unknownWords(Collection<String> words) {
    requireOpen();
    return words.stream()
        .filter(word -> !word.equals(RecognisedPhrase.UNKNOWN))
        .filter(word -> vosk.vosk_model_find_word(model, word) < 0)
        .distinct()
        .toList();
  }

  /** A warning, one line with the code MOD-011, that these words can never be heard. */
  public static String unknownWordsWarning(List<String> words) {
    return new Fault.Finding(
            ModelCode.UNKNOWN_WORDS,
            "word list",
            "the model does not know " + String.join(", ", words),
            "")
        .toString();
  }

  /**
   * {@inheritDoc}
   *
   * @throws IllegalArgumentException if the list is empty, or a phrase is blank or not lower case:
   *     the library would end the process
   */
  @Override
  public synchronized Recogniser withWordList(List<String> phrases, double startSeconds) {
    return listening(phrases, startSeconds);
  }

  @Override
  public void giveBack() {
    NativeMemory.giveBack();
  }

  @Override
  public List<Alternative> alternatives(List<String> phrases, byte[] sound, double startSeconds) {
    try (VoskRecogniser recogniser = listening(phrases, startSeconds)) {
      return recogniser.alternatives(MOST_ALTERNATIVES, sound);
    }
  }

  @Override
  public synchronized Recogniser free(double startSeconds) {
    requireOpen();
    return new VoskRecogniser(
        vosk, made(vosk.vosk_recognizer_new(model, Frames.RATE)), startSeconds);
  }

  @Override
  public synchronized void close() {
    if (model != null) {
      vosk.vosk_model_free(model);
      model = null;
    }
  }

  private synchronized VoskRecogniser listening(List<String> phrases, double startSeconds) {
    requireOpen();
    String grammar = grammar(phrases);
    return new VoskRecogniser(
        vosk, made(vosk.vosk_recognizer_new_grm(model, Frames.RATE, grammar)), startSeconds);
  }

  private void requireOpen() {
    if (model == null) {
      throw new IllegalStateException("the speech model is closed");
    }
  }

  private static Pointer made(Pointer recogniser) {
    if (recogniser == null) {
      throw new IllegalStateException("the library made no recogniser");
    }
    return recogniser;
  }

  private static String grammar(List<String> phrases) {
    if (phrases.isEmpty()) {
      throw new IllegalArgumentException("the word list is empty");
    }
    for (String phrase : phrases) {
      if (phrase.isBlank() || !phrase.equals(phrase.strip().toLowerCase(Locale.ROOT))) {
        throw new IllegalArgumentException(
            "found \"" + phrase + "\" in the word list, expected lower case words");
      }
    }
    try {
      return JSON.writeValueAsString(phrases);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a list of strings can be written", e);
    }
  }
}
