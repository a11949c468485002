package org.undercall.command.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;

@DisplayName("The commands that prove a log")
class ProofCommandsTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");

  @TempDir private Path folder;
  private SessionFolder session;
  private String key;
  private String open;
  private String out;
  private String err;

  @BeforeEach
  void written() throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(PROCEDURE);
    byte[] procedure = Files.readAllBytes(PROCEDURE);
    session = SessionFolder.create(folder.resolve("s"), "demo", procedure, LogMaker.START);
    List<Recorded> log = LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256());
    try (SessionLogFile file = SessionLogFile.open(session.log())) {
      for (Recorded decision : log) {
        file.append(decision);
      }
    }
    key = folder.resolve("shop.pem").toString();
    open = folder.resolve("shop.pub.pem").toString();
  }

  private int run(String... args) {
    StringWriter printed = new StringWriter();
    StringWriter faults = new StringWriter();
    int status =
        App.commandLine()
            .setOut(new PrintWriter(printed))
            .setErr(new PrintWriter(faults))
            .execute(args);
    out = printed.toString();
    err = faults.toString();
    return status;
  }

  private String path() {
    return session.path().toString();
  }

  private void change(Path file, String from, String to) throws Exception {
    String text = Files.readString(file);
    assertTrue(text.contains(from));
    Files.writeString(file, text.replace(from, to));
  }

  @Test
  @DisplayName("end with 0 for a session that is whole, and say what was looked at")
  void whole() {
    assertEquals(0, run("verify", path()), () -> out + err);
    assertTrue(out.contains(": whole\n"), out);
    assertTrue(out.contains("  sum file: up to the last line\n"), out);
    assertTrue(out.contains("  signature: none\n"), out);
  }

  @Test
  @DisplayName("end with 1 and name line, seq, found and expected for each of several sessions")
  void changed() throws Exception {
    List<String> lines = Files.readAllLines(session.log());
    lines.set(6, lines.get(6).replace("\"mono\":", "\"mono\":1"));
    Files.write(session.log(), lines);
    assertEquals(1, run("verify", path(), path(), "--json"), () -> out + err);
    JsonNode json = new ObjectMapper().readTree(out);
    assertFalse(json.get("whole").booleanValue());
    assertEquals(2, json.get("sessions").size());
    JsonNode first = json.get("sessions").get(0).get("findings").get(0);
    assertEquals("LOG-004", first.get("code").textValue());
    assertEquals(7, first.get("line").intValue());
    assertEquals(7, first.get("seq").intValue());
    assertFalse(first.get("found").textValue().isBlank());
    assertEquals(1, run("verify", path()));
    assertTrue(out.contains("LOG-004 log.jsonl line 7 (seq 7): found bytes"), out);
  }

  @Test
  @DisplayName("find a changed procedure, and take a torn last line for what it is")
  void procedureAndTorn() throws Exception {
    Files.writeString(session.log(), "{\"seq\":", java.nio.file.StandardOpenOption.APPEND);
    assertEquals(0, run("verify", path()), () -> out + err);
    assertTrue(out.contains("  torn last line: one after them"), out);
    change(session.procedure(), "75", "57");
    assertEquals(1, run("verify", path()));
    assertTrue(out.contains("LOG-011 procedure.json: found SHA-256 "), out);
  }

  @Test
  @DisplayName("make keys that only the owner reads, and never replace one")
  void keys() throws Exception {
    assertEquals(0, run("key", key), () -> err);
    if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
      assertEquals(
          "rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(Path.of(key))));
    }
    String before = Files.readString(Path.of(key));
    assertEquals(1, run("key", key));
    assertTrue(err.startsWith("LOG-025 "), err);
    assertEquals(before, Files.readString(Path.of(key)));
  }

  @Test
  @DisplayName("sign a whole session; the signature holds for this log and this key alone")
  void signed() throws Exception {
    assertEquals(0, run("key", key));
    assertEquals(1, run("verify", path(), "--key", open), "no signature yet");
    assertTrue(out.contains("LOG-026 log.jsonl.sig: found no signature"), out);
    assertEquals(0, run("sign", path(), "--key", key), () -> err);
    assertEquals(0, run("verify", path(), "--key", open), () -> out + err);
    assertTrue(out.contains("  signature: good, by the holder of this key\n"), out);
    String other = folder.resolve("other.pem").toString();
    assertEquals(0, run("key", other));
    assertEquals(1, run("verify", path(), "--key", folder.resolve("other.pub.pem").toString()));
    assertTrue(out.contains("LOG-026 "), out);
    byte[] signature = Files.readAllBytes(session.path().resolve("log.jsonl.sig"));
    assertEquals(64, signature.length);
    for (int i = 0; i < signature.length; i++) {
      byte[] bad = signature.clone();
      bad[i] ^= 1;
      Files.write(session.path().resolve("log.jsonl.sig"), bad);
      assertEquals(1, run("verify", path(), "--key", open), "byte " + i);
    }
  }

  @Test
  @DisplayName("do not sign a session that is not whole")
  void notSigned() throws Exception {
    assertEquals(0, run("key", key));
    List<String> lines = Files.readAllLines(session.log());
    Files.write(session.log(), lines.subList(0, lines.size() - 1));
    assertEquals(1, run("sign", path(), "--key", key));
    assertTrue(err.startsWith("LOG-020 log.jsonl line " + lines.size()), err);
    assertFalse(Files.exists(session.path().resolve("log.jsonl.sig")));
  }

  @Test
  @DisplayName("say in one coded line what is wrong with a key file")
  void badKeys() throws Exception {
    assertEquals(1, run("sign", path(), "--key", key));
    assertTrue(err.startsWith("LOG-024 shop.pem: found no such file"), err);
    assertEquals(0, run("key", key));
    assertEquals(1, run("verify", path(), "--key", key));
    assertTrue(err.startsWith("LOG-024 shop.pem: found no block BEGIN PUBLIC KEY"), err);
    Files.writeString(
        Path.of(open), "-----BEGIN PUBLIC KEY-----\nAAAA\n-----END PUBLIC KEY-----\n");
    assertEquals(1, run("verify", path(), "--key", open));
    assertTrue(err.startsWith("LOG-024 shop.pub.pem: found another kind of key"), err);
    assertEquals(1, err.lines().count());
  }

  @Test
  @DisplayName("agree with sha256sum and openssl where they are there")
  void otherPrograms() throws Exception {
    Path sum = StandardTools.sha256sum();
    Path openssl = StandardTools.openssl();
    assertEquals(0, run("key", key));
    assertEquals(0, run("sign", path(), "--key", key));
    assertEquals(0, call(sum + " -c log.jsonl.sha256"));
    String verify =
        openssl
            + " pkeyutl -verify -pubin -inkey "
            + open
            + " -rawin -in log.jsonl -sigfile log.jsonl.sig";
    assertEquals(0, call(verify));
    change(session.log(), "\"seq\":3,", "\"seq\":4,");
    assertEquals(1, call(sum + " -c log.jsonl.sha256"));
    assertEquals(1, call(verify));
  }

  private int call(String command) throws Exception {
    Process process =
        new ProcessBuilder(command.split(" "))
            .directory(session.path().toFile())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    return process.exitValue();
  }
}
