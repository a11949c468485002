package org.undercall.command.option;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.core.intent.RecognisedPhrase.Word;

/** A phrase and its meaning as text. */
public final class HeardText {
  private static final JsonMapper JSON = new JsonMapper();

  private HeardText() {}

  /** One line: from and to in seconds, confidence, words, meaning. */
  public static String line(RecognisedPhrase phrase, Intent intent) {
    Word first = phrase.words().get(0);
    Word last = phrase.words().get(phrase.words().size() - 1);
    return String.format(
        Locale.ROOT,
        "%8.2f %8.2f  %.2f  %s -> %s",
        first.start(),
        last.end(),
        phrase.confidence(),
        phrase.text(),
        meaning(intent));
  }

  /** One JSON object; it has either {@code intent} or {@code refused}. Times are in seconds. */
  public static String json(RecognisedPhrase phrase, Intent intent) {
    ObjectNode object = JSON.createObjectNode();
    object.put("text", phrase.text());
    object.put("confidence", phrase.confidence());
    for (Word word : phrase.words()) {
      object
          .withArray("words")
          .addObject()
          .put("word", word.text())
          .put("confidence", word.confidence())
          .put("start", word.start())
          .put("end", word.end());
    }
    if (intent instanceof Intent.Unclear unclear) {
      object.put("refused", unclear.reason().name());
    } else {
      object.put("intent", intent.kind().name());
      details(object, intent);
    }
    return object.toString();
  }

  private static void details(ObjectNode object, Intent intent) {
    if (intent instanceof Intent.OfNumber number) {
      object.put("number", number.number().value());
      object.put("style", number.number().style().name());
      number.unit().ifPresent(unit -> object.put("unit", unit.name()));
    } else if (intent instanceof Intent.OfStep step) {
      object.put("step", step.number());
    } else if (intent instanceof Intent.OfSide side) {
      object.put("side", side.side().name());
    } else if (intent instanceof Intent.Marking marking) {
      object.put("marking", marking.marking().toString());
    } else if (intent instanceof Intent.PutOff putOff) {
      object.put("reason", putOff.reason().name());
    }
  }

  private static String meaning(Intent intent) {
    if (intent instanceof Intent.Unclear unclear) {
      return "refused: " + unclear.reason().name();
    }
    ObjectNode details = JSON.createObjectNode();
    details(details, intent);
    return details.isEmpty() ? intent.kind().name() : intent.kind().name() + " " + details;
  }
}
