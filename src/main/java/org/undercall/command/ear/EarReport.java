package org.undercall.command.ear;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.undercall.core.intent.SoundLevels;
import org.undercall.core.term.Kebab;

/** The result of a check of the ear as text and as JSON. */
final class EarReport {
  private static final JsonMapper JSON = new JsonMapper();

  private EarReport() {}

  /** Plain text: a line a phrase, the levels, what to change, the verdict. */
  static List<String> text(EarVerdict verdict) {
    List<String> lines = new ArrayList<>();
    for (CheckedPhrase phrase : verdict.phrases()) {
      lines.add(line(phrase));
    }
    lines.add("");
    lines.add(
        String.format(
            Locale.ROOT,
            "Heard right: %d of %d. Taken for something else: %d.",
            verdict.count(CheckedPhrase.Result.RIGHT),
            verdict.phrases().size(),
            verdict.count(CheckedPhrase.Result.OTHER)));
    verdict
        .speech()
        .ifPresent(
            speech ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "Voice %.0f dBFS, noise %.0f dBFS, clipped %.1f %%.",
                        speech,
                        verdict.noise().orElseThrow(),
                        100 * verdict.clipped().orElseThrow())));
    lines.addAll(verdict.advice());
    lines.add(
        verdict.usable() ? "Verdict: usable." : "Verdict: not usable as it is. Do not rely on it.");
    return lines;
  }

  private static String line(CheckedPhrase phrase) {
    String levels =
        phrase
            .levels()
            .map(l -> String.format(Locale.ROOT, ", %.0f dB above noise", l.distance()))
            .orElse("");
    String heard =
        phrase.result() == CheckedPhrase.Result.RIGHT || phrase.heard().isEmpty()
            ? ""
            : " (" + phrase.heard() + ")";
    return String.format(
        Locale.ROOT,
        "%-30s %s%s%s%s",
        phrase.phrase().words(),
        name(phrase.result()).replace('-', ' '),
        heard,
        phrase.tries() > 1 ? ", try " + phrase.tries() : "",
        levels);
  }

  /** One JSON object. Levels are in dBFS, the clipped part is a share from 0 to 1. */
  static String json(EarVerdict verdict) {
    ObjectNode object = JSON.createObjectNode();
    object.put("usable", verdict.usable());
    object.put("right", verdict.count(CheckedPhrase.Result.RIGHT));
    object.put("other", verdict.count(CheckedPhrase.Result.OTHER));
    verdict.advice().forEach(object.putArray("advice")::add);
    ArrayNode phrases = object.putArray("phrases");
    for (CheckedPhrase phrase : verdict.phrases()) {
      ObjectNode node = phrases.addObject();
      node.put("phrase", phrase.phrase().words());
      node.put("result", name(phrase.result()));
      node.put("tries", phrase.tries());
      node.put("heard", phrase.heard());
      phrase.levels().ifPresent(levels -> put(node, levels));
    }
    return object.toString();
  }

  private static void put(ObjectNode node, SoundLevels levels) {
    node.put("speech", rounded(levels.speech()));
    node.put("noise", rounded(levels.noise()));
    node.put("distance", rounded(levels.distance()));
    node.put("clipped", levels.clipped());
  }

  private static double rounded(double decibels) {
    return Math.round(decibels * 10) / 10.0;
  }

  private static String name(CheckedPhrase.Result result) {
    return Kebab.of(result);
  }
}
