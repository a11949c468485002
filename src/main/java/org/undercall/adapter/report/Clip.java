package org.undercall.adapter.report;

import java.util.List;
import org.undercall.core.event.Recorded;
import org.undercall.text.Markup;

/**
 * A sound kept of a decision.
 *
 * @param decision the decision it belongs to
 * @param address the file, as seen from the page
 */
public record Clip(Recorded decision, String address) {

  static void add(Markup m, Labels labels, List<Clip> clips) {
    if (clips.isEmpty()) {
      return;
    }
    m.leaf("h2", "Sound kept", "id", "sound");
    m.leaf("p", "The sounds are in a folder beside this page.");
    Table.head(
        m,
        "Sounds by line of the log",
        List.of("Line|6", "When|10", "Heard|28", "Said|28", "Sound|28"));
    m.open("tbody");
    for (Clip clip : clips) {
      Recorded decision = clip.decision();
      String heard = decision.heard().map(Recorded.Heard::text).orElse("–");
      m.open("tr").leaf("td", "" + decision.seq());
      m.leaf("td", labels.time(decision.at().wall()));
      m.leaf("td", heard).leaf("td", decision.said()).open("td");
      m.open("audio", "controls", "controls", "preload", "none", "src", clip.address());
      m.close().close().closeLine();
    }
    m.close();
    Table.end(m);
  }
}
