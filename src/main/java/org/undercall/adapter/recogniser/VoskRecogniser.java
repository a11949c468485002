package org.undercall.adapter.recogniser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.sun.jna.Pointer;
import java.util.ArrayList;
import java.util.List;
import org.undercall.core.intent.Alternative;
import org.undercall.core.intent.RecognisedPhrase;

/**
 * A native recogniser behind guards: the library checks neither threads, nor lengths, nor whether
 * it was freed, and ends the process instead of reporting.
 */
final class VoskRecogniser implements Recogniser {
  private static final JsonMapper JSON = new JsonMapper();

  private final Vosk vosk;
  private final Thread owner = Thread.currentThread();
  private final double startSeconds;
  private Pointer recogniser;

  VoskRecogniser(Vosk vosk, Pointer recogniser, double startSeconds) {
    this.vosk = vosk;
    this.recogniser = recogniser;
    this.startSeconds = startSeconds;
    vosk.vosk_recognizer_set_words(recogniser, 1);
  }

  @Override
  public boolean accept(byte[] sound, int length) {
    requireMine();
    if (length < 0 || length > sound.length || length % 2 != 0) {
      throw new IllegalArgumentException(
          "found a length of " + length + " bytes, expected an even one up to " + sound.length);
    }
    int answer = vosk.vosk_recognizer_accept_waveform(recogniser, sound, length);
    if (answer < 0) {
      throw new IllegalStateException("the recogniser failed on a block of sound");
    }
    return answer > 0;
  }

  @Override
  public RecognisedPhrase result() {
    requireMine();
    return phrase(vosk.vosk_recognizer_result(recogniser));
  }

  @Override
  public RecognisedPhrase finalResult() {
    requireMine();
    return phrase(vosk.vosk_recognizer_final_result(recogniser));
  }

  @Override
  public String partial() {
    requireMine();
    return parse(vosk.vosk_recognizer_partial_result(recogniser)).path("partial").asText("");
  }

  /** Hears all the sound at once; nothing else may be asked of this recogniser then. */
  List<Alternative> alternatives(int most, byte[] sound) {
    requireMine();
    vosk.vosk_recognizer_set_max_alternatives(recogniser, most);
    accept(sound, sound.length);
    var alternatives = new ArrayList<Alternative>();
    for (JsonNode one : parse(vosk.vosk_recognizer_final_result(recogniser)).path("alternatives")) {
      List<RecognisedPhrase.Word> words = words(one.path("result"), 1);
      if (!words.isEmpty()) {
        alternatives.add(new Alternative(words, one.path("confidence").asDouble()));
      }
    }
    return alternatives;
  }

  @Override
  public void close() {
    requireOwner();
    if (recogniser != null) {
      vosk.vosk_recognizer_free(recogniser);
      recogniser = null;
    }
  }

  private void requireMine() {
    requireOwner();
    if (recogniser == null) {
      throw new IllegalStateException("the recogniser is closed");
    }
  }

  private void requireOwner() {
    if (Thread.currentThread() != owner) {
      throw new IllegalStateException(
          "found thread "
              + Thread.currentThread().getName()
              + ", expected "
              + owner.getName()
              + ", which made the recogniser");
    }
  }

  private RecognisedPhrase phrase(String json) {
    return new RecognisedPhrase(words(parse(json).path("result"), 0));
  }

  private List<RecognisedPhrase.Word> words(JsonNode result, double confidence) {
    var words = new ArrayList<RecognisedPhrase.Word>();
    for (JsonNode word : result) {
      words.add(
          new RecognisedPhrase.Word(
              word.path("word").asText(),
              Math.max(0, Math.min(1, word.path("conf").asDouble(confidence))),
              seconds(word.path("start")),
              seconds(word.path("end"))));
    }
    return words;
  }

  private double seconds(JsonNode time) {
    return Math.max(0, Math.round(1000 * (startSeconds + time.asDouble())) / 1000.0);
  }

  private static JsonNode parse(String json) {
    try {
      return JSON.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the recogniser answered what is no JSON: " + json, e);
    }
  }
}
