package org.undercall.adapter.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Optional;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.port.Fault;

/** What was heard, as a member of a log line. */
final class HeardJson {
  private HeardJson() {}

  static ObjectNode write(Recorded.Heard heard) {
    ObjectNode node = LogJson.object();
    node.put("text", heard.text()).put("intent", heard.intent());
    node.put("confidence", heard.confidence()).put("how", heard.how());
    heard
        .clip()
        .ifPresent(c -> node.putObject("clip").put("file", c.file()).put("sha256", c.sha256()));
    return node;
  }

  /** What a line has; empty if the program acted by itself. */
  static Optional<Recorded.Heard> read(JsonNode line) throws Fault {
    JsonNode heard = line.get("heard");
    if (heard == null) {
      return Optional.empty();
    }
    return Optional.of(
        new Recorded.Heard(
            LogLine.member(heard, "text", String.class),
            LogLine.member(heard, "intent", String.class),
            LogLine.member(heard, "confidence", BigDecimal.class).doubleValue(),
            LogLine.member(heard, "how", String.class),
            clip(heard)));
  }

  private static Optional<Clip> clip(JsonNode heard) throws Fault {
    JsonNode clip = heard.get("clip");
    if (clip == null) {
      return Optional.empty();
    }
    String file = LogLine.member(clip, "file", String.class);
    if (!Clip.isFile(file)) {
      throw new Fault(LogCode.BAD_MEMBER, "member file", file, Clip.FILE_FORM);
    }
    String sha256 = LogLine.member(clip, "sha256", String.class);
    if (!Clip.isHash(sha256)) {
      throw new Fault(LogCode.BAD_MEMBER, "member sha256", sha256, Clip.HASH_FORM);
    }
    return Optional.of(new Clip(file, sha256));
  }
}
