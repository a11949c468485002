package org.undercall.command.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.adapter.procedure.FilePlaces;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureCode;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.report.FindingsText;
import org.undercall.core.check.Finding;
import org.undercall.core.check.ProcedureCheck;
import org.undercall.core.decision.WalkThrough;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.procedure.Walk;
import org.undercall.core.term.StepRef;
import org.undercall.port.Fault;

/**
 * A text of a procedure as the reader of files and the check judge it: faults and findings as one
 * list, each at its place in the procedure's own file, and the walk if it can be walked.
 */
final class Judged {
  private static final Pattern LACKS = Pattern.compile("no \"([A-Za-z0-9-]+)\"");
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final ObjectNode json = NODES.objectNode();
  private final ArrayNode findings = json.putArray("findings");
  private final ArrayNode walk = json.putArray("walk");
  private final JsonNode tree;
  private Optional<Procedure> procedure = Optional.empty();

  private Judged(JsonNode tree) {
    this.tree = tree;
  }

  /**
   * Judges.
   *
   * @param file where it is to be written
   * @param text as it would be written
   * @param tree what the text holds
   */
  static Judged of(Path file, String text, JsonNode tree, LocalDate on) {
    Judged judged = new Judged(tree);
    try {
      judged.walked(ProcedureFile.of(file, text), on);
    } catch (Fault e) {
      String own = String.valueOf(file.getFileName());
      e.findings().forEach(finding -> judged.add(finding, own));
    }
    judged.json.put("usable", judged.procedure.isPresent());
    return judged;
  }

  /** The procedure; empty if there is a fault. */
  Optional<Procedure> procedure() {
    return procedure;
  }

  JsonNode json() {
    return json;
  }

  private void add(Fault.Finding fault, String own) {
    boolean elsewhere = !fault.place().name().equals(own);
    String pointer = elsewhere ? include(tree, "", fault.place().name()) : fault.place().pointer();
    Matcher lacks = LACKS.matcher(fault.found());
    if (!elsewhere && lacks.matches()) {
      boolean taken = fault.code() == ProcedureCode.BLOCK_LACKS;
      pointer = pointer + (taken ? "/with/" : "/") + lacks.group(1);
    }
    ObjectNode node = findings.addObject();
    node.put("code", fault.code().id()).put("severity", "fault").put("pointer", pointer);
    if (elsewhere) {
      node.put("file", fault.place().name());
    }
    node.put("meaning", fault.code().meaning())
        .put("found", fault.found())
        .put("expected", fault.expected());
  }

  /** The first include of a block; empty if only another block includes it. */
  private static String include(JsonNode node, String pointer, String block) {
    if (node.path("include").asText().equals(block)) {
      return pointer;
    }
    if (node.isObject()) {
      return node.properties().stream()
          .map(f -> include(f.getValue(), pointer + "/" + f.getKey(), block))
          .filter(found -> !found.isEmpty())
          .findFirst()
          .orElse("");
    }
    for (int i = 0; i < node.size(); i++) {
      String found = include(node.get(i), pointer + "/" + i, block);
      if (!found.isEmpty()) {
        return found;
      }
    }
    return "";
  }

  private void walked(LoadedProcedure loaded, LocalDate on) {
    procedure = Optional.of(loaded.procedure());
    for (Finding finding : ProcedureCheck.of(loaded.procedure(), on)) {
      findings
          .addObject()
          .put("code", finding.rule().code())
          .put("severity", FindingsText.word(finding.rule().severity()))
          .put("pointer", loaded.places().source(finding.pointer()))
          .put("meaning", finding.rule().meaning())
          .put("found", finding.found())
          .put("expected", finding.expected())
          .put("todo", finding.todo())
          .put("source", finding.rule().source());
    }
    tell(loaded);
  }

  private void tell(LoadedProcedure loaded) {
    Walk places = Walk.of(loaded.procedure());
    Map<String, String> written = written(loaded.procedure(), loaded.places());
    List<WalkThrough.Exchange> exchanges = WalkThrough.of(places);
    for (WalkThrough.Exchange exchange : exchanges) {
      StepRef ref = places.places().get(exchange.place()).ref();
      ObjectNode node =
          walk.addObject()
              .put("at", written.get(ref.id()))
              .put("id", ref.id())
              .put("side", ref.side().words())
              .put("hear", String.join(" ", exchange.heard()));
      exchange.answer().ifPresent(answer -> node.put("say", answer));
    }
  }

  /** Where each step is written, or the include that brings it, by the id of the step. */
  private static Map<String, String> written(Procedure procedure, FilePlaces places) {
    Map<String, String> written = new HashMap<>();
    for (int i = 0; i < procedure.phases().size(); i++) {
      for (int j = 0; j < procedure.phases().get(i).steps().size(); j++) {
        String id = procedure.phases().get(i).steps().get(j).head().id();
        written.put(id, places.source("/phases/" + i + "/steps/" + j));
      }
    }
    return written;
  }
}
