package org.undercall.adapter.log;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.undercall.core.event.EventKind;
import org.undercall.core.term.Kebab;

/** Writes {@code docs/reference/events.md} from the code. */
final class EventDictionaryPage {
  private static final String HEAD =
      """
      # The log and its events

      Generated from the code; `mvn test -Dtest=EventDictionaryTest -Dundercall.regenerate=true` rewrites it.

      A session is a folder with `log.jsonl`, `log.jsonl.sha256` (its checksum, for `sha256sum -c`), `procedure.json` or `procedure.yaml` (the
      procedure file, byte for byte; if it has blocks, the whole procedure as JSON), the folder `clips` and `log.jsonl.lock`, which is locked while a program works on the session; with
      `log.jsonl.sig` if it was signed. The log is JSON Lines in UTF-8: one line for each decision, on the disk before its
      reply is spoken. `shared/schema/log-line.schema.json` is the JSON Schema (2020-12) of a line.

      | member | what it is |
      |---|---|
      | `seq` | number of the decision, from 1, without a gap |
      | `at` | date, time and offset |
      | `mono` | milliseconds of a clock that is never set; it starts anew with `session-resumed` |
      | `heard` | `text`, `intent`, `confidence` (0 to 1) and `how` (spoken, typed, pressed); left out for the program's own acts. It may have `clip`: `file`, the name of the sound in the folder `clips`, and `sha256`, the hash of that file |
      | `events` | what happened, in order |
      | `said` | the reply, as spoken |
      | `prev` | `sum` of the line before; 64 zeros in the first line |
      | `sum` | SHA-256, in lower-case hex, of the bytes of the line before `,"sum"`; always the last member |

      The sums form a chain: a line that was changed, removed, doubled or moved is found. Whole lines cut off the end are
      found by the checksum beside the log. Whoever writes all sums and the checksum anew is found only by a signature.
      They cover the hash of a clip, not its sound: a clip may be deleted ([clips.md](../how-to/clips.md)).
      `undercall verify` checks all of it: [proof.md](../how-to/proof.md). A torn last line (power cut) is reported, and cut off before
      the next one is written.

      ## Rules that keep old logs readable
      An id is never used for anything else. The id decides which event it is; the name is for the eye. A member that is
      not known is passed over. A field that is added later is one that may be left out. An event that this version does not know is a fault
      (`LOG-007`), because the session cannot be told without it.

      ## Events
      | id | event | fields | what happened |
      |---|---|---|---|
      """;

  private EventDictionaryPage() {}

  static String text() {
    StringBuilder page = new StringBuilder(HEAD);
    for (EventKind kind : EventKind.values()) {
      String fields =
          Arrays.stream(kind.type().getRecordComponents())
              .map(EventDictionaryPage::field)
              .collect(Collectors.joining("<br>"));
      page.append(
          "| %s | `%s` | %s | %s |%n"
              .formatted(kind.id(), Kebab.of(kind), fields, kind.sentence()));
    }
    page.append("\n## Faults\n| code | what is wrong |\n|---|---|\n");
    for (LogCode code : LogCode.values()) {
      page.append("| %s | %s |%n".formatted(code.id(), code.meaning()));
    }
    return page.toString().replace("\r\n", "\n");
  }

  private static String field(RecordComponent field) {
    return "`" + field.getName() + "`: " + EventField.of(field).shape().replace("|", "\\|");
  }
}
