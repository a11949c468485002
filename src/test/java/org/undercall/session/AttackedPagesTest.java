package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.event.Moment;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.port.Fault;

/** The texts of {@link Attacks} wherever a text can come from, in a real browser. */
@DisplayName("A text that tries to be a program")
@Timeout(600)
class AttackedPagesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Characters that a page shows as U+FFFD and a procedure may not hold. */
  private static final Pattern HIDDEN =
      Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Co}\\p{Cn}\\p{Zl}\\p{Zp}]");

  private static final List<String> TITLES =
      Attacks.ALL.stream().filter(text -> !HIDDEN.matcher(text).find()).toList();

  @TempDir private static Path folder;
  private static Browser browser;

  @BeforeAll
  static void startBrowser() throws Exception {
    assumeTrue(
        Browser.present(),
        "no " + Browser.CHROMIUM + " or no " + Browser.DRIVER + ": the pages are not tried");
    browser =
        Browser.start(Files.createTempDirectory(Path.of("target"), "chromium").toAbsolutePath());
  }

  @AfterAll
  static void stopBrowser() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  @DisplayName("does run where nothing guards against it")
  void unguarded() throws Exception {
    browser.open("about:blank");
    List<String> pages = new ArrayList<>();
    for (String text : Attacks.MADE) {
      pages.add("<body>" + text + "</body>");
      pages.add("<body><input value=\"" + text + "\"></body>");
      pages.add("<body><script>var x = \"" + text + "\"</script></body>");
    }
    browser.eval(
        "("
            + JSON.writeValueAsString(pages)
            + ".forEach(p => { const f = document.createElement('iframe'); f.srcdoc = p;"
            + " document.body.append(f); }), window.began = performance.now(), true)");
    browser.until("performance.now() - window.began > 3000");
    int run =
        browser
            .eval(
                "new Set([...document.querySelectorAll('iframe')].map((f, i) =>"
                    + " f.contentWindow && f.contentWindow.hit ? Math.floor(i / 3) : -1)"
                    + ".filter(i => i >= 0)).size")
            .asInt();
    System.out.printf("%d of %d texts run in an unguarded page%n", run, Attacks.MADE.size());
    assertTrue(run > 30, "only " + run + " do anything");
    assertTrue(Attacks.MADE.size() > 60);
  }

  @Test
  @DisplayName("with characters that cannot be read is no part of a procedure")
  void unreadable() throws Exception {
    for (String text : Attacks.ALL) {
      if (HIDDEN.matcher(text).find()) {
        List<String> titles = new ArrayList<>(TITLES);
        titles.set(3, text);
        Path file = Attacks.procedure(folder, "unreadable", titles);
        Fault faults = assertThrows(Fault.class, () -> ProcedureFile.load(file), text);
        assertTrue(
            faults.getMessage().lines().allMatch(l -> l.startsWith("PRO-017 ")),
            faults.getMessage());
      }
    }
  }

  @Test
  @DisplayName("is a text on the board: as a title, as a caution, as something heard")
  void board() throws Exception {
    try (BoardBay bay =
        BoardBay.of(ProcedureFile.load(Attacks.procedure(folder, "board", TITLES)).procedure())) {
      browser.open(bay.address());
      browser.until("document.body.dataset.link === 'open'");
      bay.says("cautions understood");
      for (String title : TITLES) {
        shows("title", title);
        bay.says("step completed");
      }
      shows("lead", "All steps are closed");
      String list = browser.eval("document.getElementById('steps').textContent").asText();
      TITLES.forEach(title -> assertTrue(list.contains(title), () -> title + " in " + list));
      for (String text : Attacks.ALL) {
        bay.hears(text);
        shows("heard-words", text);
      }
      inert("main, header, .more");
      assertEquals("Undercall board", browser.eval("document.title").asText());
      assertEquals(bay.address(), browser.eval("location.href").asText());
    }
    System.out.printf(
        "board: %d titles, %d heard, nothing run%n", TITLES.size(), Attacks.ALL.size());
  }

  private static void shows(String id, String text) throws Exception {
    browser.until(
        "document.getElementById('" + id + "').textContent === " + JSON.writeValueAsString(text));
  }

  /** Nothing has run, and no element is there that could run, load or style anything. */
  private static void inert(String where) throws Exception {
    assertTrue(browser.eval("typeof window.hit === 'undefined'").asBoolean(), "it ran");
    assertTrue(browser.eval("typeof ({}).hit === 'undefined'").asBoolean(), "a prototype");
    String strange =
        "[...document.querySelectorAll('"
            + where
            + "')].flatMap(w => [...w.querySelectorAll('*')]).filter(e => e.id !== 'job-what')"
            + ".filter(e =>"
            + "/^(script|img|iframe|object|embed|link|style|base|meta|video|source|marquee|template|"
            + "plaintext|textarea|math|a|animate|foreignObject|dialog|select)$/i.test(e.localName)"
            + " || [...e.attributes].some(a => /^on/i.test(a.name))).map(e => e.outerHTML)";
    assertEquals("[]", browser.eval(strange).toString());
  }

  /** A session in which every text was a title, was heard, and was noted. */
  private static SessionFolder session(Path file, List<String> texts) throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(file);
    Walk walk = Walk.of(loaded.procedure());
    List<Recorded> log = new ArrayList<>(LogMaker.allDone(walk, loaded.sha256()));
    Recorded last = log.remove(log.size() - 1);
    for (int i = 0; i < texts.size(); i++) {
      String text = texts.get(i);
      Moment at = new Moment(last.at().wall(), last.at().monotonicMillis());
      SessionEvent note =
          new SessionEvent.NoteKept(walk.places().get(i % walk.places().size()).ref(), text);
      Optional<Recorded.Heard> heard =
          Optional.of(new Recorded.Heard(text, "note-text", 1, "spoken"));
      log.add(new Recorded(log.size() + 1L, at, heard, List.of(note), text));
    }
    log.add(new Recorded(log.size() + 1L, last.at(), Optional.empty(), last.events(), last.said()));
    SessionFolder session =
        SessionFolder.create(
            folder.resolve("sessions"),
            file.getFileName().toString(),
            Files.readAllBytes(file),
            LogMaker.START);
    try (SessionLogFile open = SessionLogFile.open(session.log())) {
      for (Recorded decision : log) {
        open.append(decision);
      }
    }
    return session;
  }

  /** Every element of the report page by its name, in order. */
  private static String elements(Path page) throws Exception {
    browser.open(page.toUri().toString());
    browser.until("document.readyState === 'complete'");
    return browser
        .eval("[...document.querySelectorAll('*')].map(e => e.localName).join(' ')")
        .asText();
  }

  private static Path report(SessionFolder session, String name) {
    Path out = folder.resolve(name);
    String[] call = {
      "report",
      session.path() + "",
      "--out",
      out + "",
      "--vtt",
      "--ics",
      "--customer",
      name,
      "--technician",
      Attacks.ALL.get(0)
    };
    assertEquals(0, App.commandLine().execute(call));
    return out;
  }

  @Test
  @DisplayName("is a text in a report, and the page has the same elements as a harmless one")
  void report() throws Exception {
    List<String> plainTitles = TITLES.stream().map(t -> "plain words").toList();
    List<String> plainNotes = Attacks.ALL.stream().map(t -> "plain words").toList();
    Path plain =
        report(session(Attacks.procedure(folder, "plain", plainTitles), plainNotes), "plain");
    Path made =
        report(session(Attacks.procedure(folder, "made", TITLES), Attacks.ALL), "<b>made</b>");
    String expected = elements(plain.resolve("report.html"));
    assertEquals(expected, elements(made.resolve("report.html")));
    assertTrue(browser.eval("typeof window.hit === 'undefined'").asBoolean(), "it ran");
    String text = browser.eval("document.documentElement.textContent").asText();
    for (String attack : Attacks.ALL) {
      String shown = HIDDEN.matcher(attack).replaceAll("\uFFFD");
      assertTrue(text.contains(shown.strip()), () -> "not shown: " + shown);
    }
    assertEquals(
        lines(plain.resolve("report.ics"), "BEGIN:"), lines(made.resolve("report.ics"), "BEGIN:"));
    assertEquals(
        lines(plain.resolve("report.vtt"), "-->"), lines(made.resolve("report.vtt"), "-->"));
    assertFalse(Files.readString(made.resolve("report.vtt")).contains("<script"));
    System.out.printf("report: %d texts, nothing run%n", Attacks.ALL.size());
  }

  private static long lines(Path file, String mark) throws Exception {
    return Files.readAllLines(file).stream().filter(line -> line.contains(mark)).count();
  }
}
