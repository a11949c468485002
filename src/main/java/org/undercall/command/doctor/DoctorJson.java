package org.undercall.command.doctor;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Results as JSON, with the same content as the text. */
final class DoctorJson {
  private DoctorJson() {}

  static String of(List<Doctor.Result> results) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("ready", Doctor.ready(results));
    ArrayNode checks = root.putArray("checks");
    for (Doctor.Result result : results) {
      checks
          .addObject()
          .put("check", result.name())
          .put("state", result.found().state().word())
          .put("found", result.found().found())
          .put("remedy", result.found().remedy());
    }
    return root.toPrettyString() + "\n";
  }
}
