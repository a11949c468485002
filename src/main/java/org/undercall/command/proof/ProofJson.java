package org.undercall.command.proof;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.undercall.adapter.log.LogFinding;
import org.undercall.adapter.log.SessionProof;
import org.undercall.core.term.Kebab;

/** Proofs of sessions as JSON, with the same content as the text. */
final class ProofJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private ProofJson() {}

  /** One object, indented, ended with a line feed. */
  static String of(List<SessionProof> proofs) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("whole", proofs.stream().allMatch(SessionProof::whole));
    ArrayNode sessions = root.putArray("sessions");
    proofs.forEach(proof -> put(sessions.addObject(), proof));
    try {
      return MAPPER.writeValueAsString(root).replace("\r\n", "\n") + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree always has a text", e);
    }
  }

  private static void put(ObjectNode node, SessionProof.Stated stated) {
    stated.said().name().ifPresent(name -> node.put("name", name));
    node.put("at", stated.said().at().toString()).put("keySha256", stated.said().key());
    node.put("aboutThisLog", stated.sameLog());
  }

  private static void put(ObjectNode node, SessionProof proof) {
    node.put("session", proof.session()).put("whole", proof.whole());
    node.put("occasion", Kebab.of(proof.occasion()));
    node.put("lines", proof.lines()).put("tornLastLine", proof.torn());
    proof.covered().ifPresent(lines -> node.put("sumFileCovers", lines));
    node.put("logSha256", proof.sha256());
    node.put("signature", Kebab.of(proof.signature()));
    proof.statement().ifPresent(stated -> put(node.putObject("signerStates"), stated));
    ArrayNode findings = node.putArray("findings");
    for (LogFinding finding : proof.findings()) {
      ObjectNode one = findings.addObject().put("code", finding.code().id());
      one.put("meaning", finding.code().meaning()).put("file", finding.file());
      finding.line().ifPresent(line -> one.put("line", line));
      finding.seq().ifPresent(seq -> one.put("seq", seq));
      one.put("found", finding.found()).put("expected", finding.expected());
    }
  }
}
