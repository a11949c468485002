package org.undercall.core.intent;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.undercall.docs.Generated;

/** Keeps {@code docs/reference/phrases.md} the same as the phrasebook. */
class PhrasesDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/reference/phrases.md");

  @Test
  void theDocumentShowsTheTableAsItIs() throws IOException {
    Generated.same(DOCUMENT, document(), PhrasesDocumentTest.class);
  }

  private static String document() {
    StringBuilder text = new StringBuilder();
    text.append("# What can be said\n\n");
    text.append("Made from the phrase table; do not edit by hand.\n\n");
    text.append("A phrase counts only as a whole. `<...>` stands for the words listed below, ");
    text.append("`[...]` may be left out, `|` parts alternatives.\n\n");
    text.append("A number of one word, such as nine or fifteen, counts only with more words.\n\n");
    text.append("| Meaning | Say | Closes or confirms | Changes the state |\n");
    text.append("|---|---|---|---|\n");
    for (IntentKind kind : IntentKind.values()) {
      if (!Phrasebook.wordings(kind).isEmpty()) {
        text.append(row(kind));
      }
    }
    text.append("\n## Slots\n\n| Slot | Words |\n|---|---|\n");
    text.append("| `<number>` | 0 to 9999, up to three decimals: \"one seven five\", ");
    text.append("\"one seventy five\", \"a hundred and seventy five\", \"seven point five\" |\n");
    text.append("| `<step>` | a whole number from 1 |\n");
    slot(text, "side", SlotWords.SIDES.values().stream().collect(joined()));
    slot(text, "wheel side", SlotWords.SIDES.values().stream().limit(2).collect(joined()));
    slot(
        text,
        "marking",
        "a property class as a number, such as \"ten point nine\"; expected are "
            + String.join(", ", SlotWords.MARKINGS));
    slot(
        text,
        "reason",
        SlotWords.REASONS.values().stream().flatMap(r -> r.stream()).collect(joined()));
    text.append(
        "| `<number> minutes` | less than sixty after degrees, less than 300 alone; also \"one minute\" |\n");
    text.append("| `<minutes>` | a whole number from 1 to 180, also \"one minute\" |\n");
    slot(text, "timer", SlotWords.TIMERS.values().stream().collect(joined()));
    text.append("\nUnits: ");
    text.append(SlotWords.UNITS.values().stream().flatMap(u -> u.stream()).collect(joined()));
    text.append(".\n");
    return text.toString();
  }

  private static java.util.stream.Collector<CharSequence, ?, String> joined() {
    return Collectors.joining("\", \"", "\"", "\"");
  }

  private static void slot(StringBuilder text, String name, String words) {
    text.append("| `<").append(name).append(">` | ").append(words).append(" |\n");
  }

  private static String row(IntentKind kind) {
    String wordings =
        Phrasebook.wordings(kind).stream()
            .map(wording -> "`" + wording.replace("|", "\\|") + "`")
            .collect(Collectors.joining("<br>"));
    return "| %s | %s | %s | %s |%n"
        .formatted(
            kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
            wordings,
            kind.closes() ? "yes" : "",
            kind.changesState() ? "yes" : "")
        .replace(System.lineSeparator(), "\n");
  }
}
