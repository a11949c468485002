package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionLogFile;
import org.undercall.adapter.procedure.LoadedProcedure;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.command.App;
import org.undercall.core.event.Clip;
import org.undercall.core.event.Recorded;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.LogMaker;
import org.undercall.text.Sha256;

@DisplayName("The page of a report, in a browser")
@Timeout(180)
class ReportBrowserTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final Path SOUND =
      Path.of("src", "test", "resources", "sound", "one-seven-five.wav");

  @TempDir private static Path folder;
  private static Browser browser;
  private static Path pages;

  @BeforeAll
  static void openPage() throws Exception {
    assumeTrue(
        Browser.present(),
        "no " + Browser.CHROMIUM + " or no " + Browser.DRIVER + ": the page is not tried");
    SessionFolder session = session();
    Path clips = Files.createDirectory(session.path().resolve("clips"));
    Files.copy(SOUND, clips.resolve("000003.wav"));
    Path out = folder.resolve("out");
    String[] call = {
      "report", session.path() + "", "--out", out + "", "--customer", "<i>Name</i>", "--handover"
    };
    assertEquals(0, App.commandLine().execute(call));
    pages = out;
    browser =
        Browser.start(Files.createTempDirectory(Path.of("target"), "chromium").toAbsolutePath());
  }

  @BeforeEach
  void openReport() throws Exception {
    open("report.html");
  }

  private static void open(String page) throws Exception {
    browser.open(pages.resolve(page).toUri() + "");
    browser.until("document.readyState === 'complete' && location.href.endsWith('" + page + "')");
  }

  private static SessionFolder session() throws Exception {
    LoadedProcedure loaded = ProcedureFile.load(PROCEDURE);
    Clip sound = new Clip("000003.wav", Sha256.hex(Files.readAllBytes(SOUND)));
    List<Recorded> done = LogMaker.allDone(Walk.of(loaded.procedure()), loaded.sha256());
    List<Recorded> log = LogMaker.withClip(done, 3, sound);
    SessionFolder session =
        SessionFolder.create(folder, "demo", Files.readAllBytes(PROCEDURE), LogMaker.START);
    try (SessionLogFile open = SessionLogFile.open(session.log())) {
      for (Recorded decision : log) {
        open.append(decision);
      }
    }
    return session;
  }

  @AfterAll
  static void stopBrowser() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"report.html", "handover.html"})
  @DisplayName("has no finding of accessibility, nor has the sheet for the customer")
  void accessible(String page) throws Exception {
    open(page);
    try (InputStream in = getClass().getResourceAsStream("/axe.min.js")) {
      String axe =
          new String(Optional.ofNullable(in).orElseThrow().readAllBytes(), StandardCharsets.UTF_8);
      String version =
          browser.eval("(function () {" + axe + "\n; return axe.version; })()").asText();
      assertTrue(version.startsWith("4."), version);
    }
    browser.eval("(axe.run().then(r => { window.found = r; }), true)");
    browser.until("window.found !== undefined");
    JsonNode passed = browser.eval("window.found.passes.length");
    assertTrue(passed.asInt() > 10, "it was looked at: " + passed);
    JsonNode serious =
        browser.eval(
            "window.found.violations"
                + ".map(v => v.id + ': ' + v.nodes.map(n => n.html).join(' '))");
    assertEquals(0, serious.size(), serious::toPrettyString);
  }

  @Test
  @DisplayName("plays the sounds beside it under its own policy")
  void sounds() throws Exception {
    String sound = "document.querySelector('audio')";
    browser.eval(sound + ".load(), " + sound + ".preload = 'auto'");
    browser.until(sound + ".readyState >= 1 || " + sound + ".error !== null");
    assertTrue(browser.eval(sound + ".duration").asDouble() > 0.5);
  }

  @Test
  @DisplayName("has its style, fits across, and shows a name as it was given")
  void looks() throws Exception {
    String style = "getComputedStyle(document.querySelector('table')).tableLayout";
    assertEquals("fixed", browser.eval(style).asText());
    String root = "document.documentElement";
    assertTrue(browser.eval(root + ".scrollWidth <= " + root + ".clientWidth").asBoolean());
    String cut =
        "[...document.querySelectorAll('td, th')].filter(c => c.scrollWidth > c.clientWidth + 1)"
            + ".map(c => c.textContent)";
    assertEquals(0, browser.eval(cut).size(), () -> "cells with words beyond their edge");
    assertTrue(browser.eval("document.body.textContent.includes('<i>Name</i>')").asBoolean());
  }
}
