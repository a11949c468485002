package org.undercall.command.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;

@DisplayName("A stranger with the report, the session and the public key")
class StrangerTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final Path PAGE = Path.of("docs", "how-to", "proof.md");
  private static final Pattern BLOCK =
      Pattern.compile("<!-- by a stranger: (\\S+) -->\\n\\n((?: {4}.*\\n)+)");

  @TempDir private Path folder;
  private Path session;
  private Path report;

  @BeforeEach
  void signed() throws Exception {
    StandardTools.sha256sum();
    StandardTools.openssl();
    LoadedProcedure loaded = ProcedureFile.load(PROCEDURE);
    List<Recorded> log = LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256());
    session = folder.resolve("sessions").resolve("one");
    WrittenLog.write(session, Files.readAllBytes(PROCEDURE), log);
    String key = folder.resolve("shop.pem").toString();
    run("key", key);
    String[] who = {"--name", "Invented Workshop"};
    String out = run("sign", session.toString(), "--key", key, who[0], who[1]);
    assertTrue(out.contains("signed by: Invented Workshop"), out);
    run("report", session.toString(), "--sign", key, who[0], who[1], "--handover");
    report = session.resolve("report");
    for (Path place : List.of(session, report)) {
      Files.copy(folder.resolve("shop.pub.pem"), place.resolve("shop.pub.pem"));
    }
  }

  private static String run(String... words) {
    StringWriter out = new StringWriter();
    int status =
        App.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(out)).execute(words);
    assertEquals(0, status, out::toString);
    return out.toString();
  }

  /** Every line that the page tells a stranger, in the folder that it names. */
  private List<String> told() throws Exception {
    List<String> answers = new java.util.ArrayList<>();
    Matcher block = BLOCK.matcher(Files.readString(PAGE));
    while (block.find()) {
      Path place = block.group(1).equals("report") ? report : session;
      for (String line : block.group(2).strip().lines().toList()) {
        answers.add(StandardTools.shell(place, line.strip()));
      }
    }
    assertEquals(6, answers.size(), "lines on the page");
    return answers;
  }

  @Test
  @DisplayName("checks log and report with what the page tells, and finds name, key and sum in it")
  void checks() throws Exception {
    List<String> answers = told();
    answers.forEach(answer -> assertTrue(answer.startsWith("0: "), answer));
    assertTrue(answers.contains("0: Signature Verified Successfully"), answers::toString);
    String page = Files.readString(report.resolve("report.html"));
    assertTrue(page.contains("by Invented Workshop"), page);
    String sum = StandardTools.shell(session, "sha256sum log.jsonl").substring(3, 67);
    assertTrue(page.contains(sum), "the sum of the log is in the report");
    String key =
        StandardTools.shell(
                session, "openssl pkey -pubin -in shop.pub.pem -outform DER | sha256sum")
            .substring(3, 67);
    assertTrue(page.contains(key), "the short name of the key is in the report");
    assertTrue(Files.readString(session.resolve("log.jsonl.signed")).contains("# key: " + key));
  }

  @Test
  @DisplayName("sees a change of the log, of the report, of the name and of the time")
  void sees() throws Exception {
    change(session.resolve("log.jsonl"), "\"seq\":3,", "\"seq\":4,");
    assertTrue(told().stream().anyMatch(answer -> answer.startsWith("1: ")), "the log");
    change(session.resolve("log.jsonl"), "\"seq\":4,", "\"seq\":3,");
    for (String[] change :
        new String[][] {
          {"log.jsonl.signed", "Invented", "Another"},
          {"log.jsonl.signed", "# at: 20", "# at: 19"},
          {"report/report.signed", "Invented", "Another"},
          {"report/report.html", "EVERY STEP CLOSED", "EVERY STEP OPEN"}
        }) {
      Path file = session.resolve(change[0]);
      byte[] before = Files.readAllBytes(file);
      change(file, change[1], change[2]);
      assertTrue(told().stream().anyMatch(answer -> answer.startsWith("1: ")), change[0]);
      Files.write(file, before);
    }
    assertFalse(told().stream().anyMatch(answer -> answer.startsWith("1: ")), "as it was");
  }

  @Test
  @DisplayName("takes a key made by OpenSSL as well, and its public half is the right one")
  void otherKey() throws Exception {
    Path key = folder.resolve("own.pem");
    StandardTools.shell(folder, "openssl genpkey -algorithm ed25519 -out own.pem");
    StandardTools.shell(folder, "openssl pkey -in own.pem -pubout -out own.pub.pem");
    run("sign", session.toString(), "--key", key.toString());
    String printed =
        run("verify", session.toString(), "--key", folder.resolve("own.pub.pem").toString());
    assertTrue(printed.contains("  signed by: nobody named\n"), printed);
    String sum =
        StandardTools.shell(folder, "openssl pkey -in own.pem -pubout -outform DER | sha256sum");
    assertTrue(printed.contains(sum.substring(3, 67)), printed);
  }

  @Test
  @DisplayName("a log that went on after it was signed is no signed log, in verify and report")
  void wentOn() throws Exception {
    SessionFolder open = new SessionFolder(session);
    byte[] all = Files.readAllBytes(open.log());
    String text = new String(all, StandardCharsets.UTF_8);
    int cut = text.lastIndexOf('\n', text.length() - 2) + 1;
    Files.writeString(open.log(), text.substring(0, cut));
    run("report", session.toString());
    String page = Files.readString(report.resolve("report.html"));
    assertTrue(page.contains("THAT WAS ANOTHER STATE OF THE LOG"), page);
    assertTrue(page.contains("an earlier state of the log, not this one"), page);
    StringWriter out = new StringWriter();
    String key = folder.resolve("shop.pub.pem").toString();
    int status =
        App.commandLine()
            .setOut(new PrintWriter(out))
            .execute("verify", session.toString(), "--key", key);
    assertEquals(1, status);
    assertTrue(out.toString().contains("LOG-026 log.jsonl.signed: found the sum of another log"));
  }

  private static void change(Path file, String from, String to) throws Exception {
    String text = Files.readString(file);
    assertTrue(text.contains(from), from);
    Files.writeString(file, text.replaceFirst(Pattern.quote(from), to));
  }
}
