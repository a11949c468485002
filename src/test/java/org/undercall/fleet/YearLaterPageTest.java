package org.undercall.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.WrittenLog;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.decision.YearOldWork;
import org.undercall.docs.Generated;
import org.undercall.session.TypedTechnician;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

@DisplayName("The page of what is asked a year later")
class YearLaterPageTest {
  private static final Path PAGE = Path.of("docs", "explanation", "a-year-later.md");
  private static final Path PROCEDURES = Path.of("shared", "procedures");
  private static final String NO_ANSWER = "(no answer)";
  private static final String NAME = "rear-axle-4711";
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir static Path folder;
  private static Path sessions;
  private static Document report;
  private static Duck duck;

  @BeforeAll
  static void work() throws Exception {
    sessions = Files.createDirectory(folder.resolve("sessions"));
    Path file = folder.resolve("procedure.json");
    Path blocks = Files.createDirectory(folder.resolve("blocks"));
    try (Stream<Path> all = Files.list(PROCEDURES.resolve("blocks"))) {
      for (Path block : all.toList()) {
        Files.copy(block, blocks.resolve(block.getFileName()));
      }
    }
    String plain = Files.readString(PROCEDURES.resolve("light-van-rear-axle.json"));
    String dated =
        plain.replace("\"least\": 40,", "\"calibrated\": \"2026-01-12\", \"least\": 40,");
    Files.writeString(file, dated);
    LoadedProcedure loaded = ProcedureFile.load(file);
    WrittenLog.write(
        sessions.resolve(NAME),
        loaded.wholeBytes(),
        YearOldWork.of(loaded.procedure(), loaded.sha256()));
    Path other = PROCEDURES.resolve("demo-lateral-link.json");
    LoadedProcedure short1 = ProcedureFile.load(other);
    WrittenLog.write(
        sessions.resolve("lateral-link-4650"),
        Files.readAllBytes(other),
        TypedTechnician.wholeWork(short1.procedure(), short1.sha256()));
    String key = folder.resolve("shop.pem").toString();
    call("key", key);
    call("sign", sessions.resolve(NAME).toString(), "--key", key, "--name", "Invented Workshop");
    call("report", sessions.resolve(NAME).toString());
    Path page = sessions.resolve(NAME).resolve("report").resolve("report.html");
    String xml = Files.readString(page).replaceFirst("<!DOCTYPE html>\n", "");
    report =
        DocumentBuilderFactory.newDefaultInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(xml)));
    duck = new Duck();
    for (String table : List.of("fasteners", "events")) {
      String csv = call("review", sessions.resolve(NAME).toString(), "--csv", table);
      Files.writeString(folder.resolve(table + ".csv"), csv);
      duck.script(
          "CREATE VIEW "
              + table
              + " AS FROM read_csv('FOLDER/"
              + table
              + ".csv',"
              + " all_varchar = true)",
          folder);
    }
  }

  @AfterAll
  static void close() throws Exception {
    duck.close();
  }

  private static String call(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        App.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err)).execute(words);
    assertTrue(status == 0 || status == 3, () -> String.join(" ", words) + ": " + err);
    return out.toString();
  }

  @Test
  @DisplayName("shows what its commands, its SQL and the report really say, for ten questions")
  void real() throws Exception {
    String page = Files.readString(PAGE);
    List<String> made = new ArrayList<>();
    boolean output = false;
    int asked = 0;
    for (String line : page.split("\n", -1)) {
      String code = line.startsWith("    ") ? line.substring(4) : "";
      List<String> answer = answer(code);
      output = answer != null || (output && !code.isEmpty());
      if (answer != null) {
        asked++;
        made.add(line);
        answer.forEach(row -> made.add("    " + row));
      } else if (!output) {
        made.add(line);
      }
    }
    Generated.same(PAGE, String.join("\n", made), getClass());
    assertFalse(made.contains("    " + NO_ANSWER));
    assertEquals(10, page.lines().filter(line -> line.matches("## \\d+\\. .*\\?")).count());
    assertTrue(asked >= 19, "asked " + asked);
  }

  /** What a line of the page gives; null if it is none that asks. */
  private static List<String> answer(String line) throws Exception {
    List<String> rows = new ArrayList<>();
    if (line.startsWith("$ undercall ")) {
      List<String> words = new ArrayList<>();
      Matcher word = WORD.matcher(line.substring(12));
      while (word.find()) {
        words.add(word.group(1) == null ? word.group(2) : word.group(1));
      }
      words.replaceAll(w -> w.equals("shop.pub.pem") ? folder.resolve(w).toString() : w);
      words.addAll(List.of("--sessions", sessions.toString()));
      call(words.toArray(String[]::new)).lines().forEach(rows::add);
    } else if (line.startsWith("sql> ")) {
      for (List<Object> row : duck.rows(line.substring(5))) {
        rows.add(
            row.stream().map(v -> v == null ? "-" : "" + v).collect(Collectors.joining(" | ")));
      }
    } else if (line.startsWith("report> ")) {
      rows.addAll(told(line.substring(8)));
    } else {
      return null;
    }
    if (rows.isEmpty()) {
      rows.add(NO_ANSWER);
    }
    rows.replaceAll(row -> masked(row).stripTrailing());
    return rows;
  }

  /** What no two runs have alike: sums that hang on a key, and when it signed. */
  private static String masked(String row) {
    return row.replaceAll("[0-9a-f]{64}", "...")
        .replaceAll("key [0-9a-f]{16}", "key ...")
        .replaceAll("(signed at: )\\S+,", "$1...,")
        .replaceAll("(Workshop(?:,| at) )\\S+ \\S+ [+-]\\d\\d:\\d\\d", "$1...");
  }

  /** The rows and items of the report that hold these words. */
  private static List<String> told(String words) {
    List<String> told = new ArrayList<>();
    for (String element : List.of("tr", "li", "p")) {
      NodeList all = report.getElementsByTagName(element);
      for (int i = 0; i < all.getLength(); i++) {
        String text = cells(all.item(i));
        if (text.contains(words)) {
          told.add(text);
        }
      }
    }
    return told;
  }

  private static String cells(Node row) {
    NodeList children = row.getChildNodes();
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < children.getLength(); i++) {
      cells.add(children.item(i).getTextContent().strip());
    }
    return String.join(row.getNodeName().equals("tr") ? " | " : " ", cells);
  }
}
