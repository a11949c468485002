package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.undercall.core.procedure.LayOut;
import org.undercall.port.Fault;

/**
 * A procedure with a first phase in which its new parts are ticked off: a step for each part, and
 * the fasteners that it is for come after it. A part that is put off, waiting for parts, stays in
 * every list of what is open, and never counts as new hardware.
 */
public final class PartsFirst {
  private static final String PHASES = "phases";
  private static final String STEPS = "steps";
  private static final String AFTER = "after";
  private static final int LONGEST = 300;
  private static final int LONGEST_ID = 50;

  private PartsFirst() {}

  /**
   * The procedure with its parts first; as it is if it needs no new parts.
   *
   * @throws Fault if what comes of it cannot be used, such as a file that gets too large
   */
  public static LoadedProcedure of(LoadedProcedure loaded) throws Fault {
    Map<String, LayOut.Part> parts = new LinkedHashMap<>();
    for (LayOut.Part part : LayOut.of(loaded.procedure()).newParts()) {
      parts.put(id(part, parts), part);
    }
    if (parts.isEmpty()) {
      return loaded;
    }
    String name = loaded.wholeName();
    Faults faults = new Faults(name);
    JsonNode root = LocatedJson.read(name, FileText.of(loaded.wholeBytes(), faults).text(), faults);
    ObjectNode whole = ((ObjectNode) root).deepCopy();
    ArrayNode phases = LocatedJson.NODES.arrayNode().add(first(parts));
    root.get(PHASES).forEach(phase -> phases.add(bound(phase.deepCopy(), parts)));
    whole.set(PHASES, phases);
    String json = name.replaceFirst("(?i)\\.(ya?ml|json)$", "") + "-parts.json";
    return ProcedureFile.of(Path.of(json), Assembled.written(whole));
  }

  private static String id(LayOut.Part part, Map<String, LayOut.Part> taken) {
    String plain = part.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String id = "new-" + plain.substring(0, Math.min(LONGEST_ID, plain.length()));
    id = id.replaceAll("-+$", "");
    int more = 2;
    String free = id;
    while (taken.containsKey(free)) {
      free = id + "-" + more;
      more++;
    }
    return free;
  }

  private static ObjectNode first(Map<String, LayOut.Part> parts) {
    ObjectNode phase = LocatedJson.NODES.objectNode().put("name", "parts").put("each", "car");
    ArrayNode steps = phase.putArray(STEPS);
    parts.forEach((id, part) -> steps.add(step(id, part)));
    return phase;
  }

  private static ObjectNode step(String id, LayOut.Part part) {
    String markings =
        part.markings().isEmpty() ? "" : ", head marking " + String.join(" or ", part.markings());
    String ofNut = part.nutClass().map(of -> ", nut class " + of).orElse("");
    String title =
        "Part there, new: "
            + part.name()
            + ", "
            + part.count()
            + ", "
            + part.thread()
            + markings
            + ofNut;
    return LocatedJson.NODES
        .objectNode()
        .put("id", id)
        .put("kind", "do")
        .put("title", title.substring(0, Math.min(LONGEST, title.length())));
  }

  private static JsonNode bound(JsonNode phase, Map<String, LayOut.Part> parts) {
    for (JsonNode step : phase.get(STEPS)) {
      JsonNode fastener = step.path("fastener");
      parts.forEach(
          (id, part) -> {
            boolean once = fastener.path("oneTimeUse").asBoolean() || fastener.has("renew");
            boolean is =
                fastener.path("name").asText().equals(part.name())
                    && fastener.path("thread").asText().equals(part.thread());
            if (once && is) {
              ((ObjectNode) step).withArray(AFTER).add(id);
            }
          });
    }
    return phase;
  }
}
