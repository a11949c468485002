package org.undercall.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.core.board.DeviceNews;

@DisplayName("The page of the board, in a browser")
@Timeout(180)
class BoardPageTest {
  private static final Path PROCEDURE = Path.of("shared", "procedures", "demo-lateral-link.json");
  private static final String ATTACK = "<img src=x onerror='window.hit=1'>";
  private static final String ENTER = "\uE007";
  private static final String TAB = "\uE004";

  @TempDir Path folder;

  private static Browser browser;
  private BoardBay bay;

  @BeforeAll
  static void startBrowser() throws Exception {
    assumeTrue(
        Browser.present(),
        "no " + Browser.CHROMIUM + " or no " + Browser.DRIVER + ": the page is not tried");
    browser =
        Browser.start(Files.createTempDirectory(Path.of("target"), "chromium").toAbsolutePath());
  }

  @AfterAll
  static void stopBrowser() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void openBoard() throws Exception {
    Path file = folder.resolve("procedure.json");
    String text = Files.readString(PROCEDURE);
    Files.writeString(file, text.replace("Tighten the joint nut", "Tighten " + ATTACK));
    bay = BoardBay.of(ProcedureFile.load(file).procedure());
    browser.open(bay.address());
    browser.until("document.body.dataset.link === 'open'");
  }

  @AfterEach
  void closeBoard() throws Exception {
    bay.close();
  }

  private void says(String... phrases) {
    for (String phrase : phrases) {
      bay.says(phrase);
    }
  }

  private static void untilText(String id, String text) throws Exception {
    browser.until("document.getElementById('" + id + "').textContent === `" + text + "`");
  }

  private static String text(String id) throws Exception {
    return browser.eval("document.getElementById('" + id + "').textContent").asText();
  }

  private static void focus(String phrase) throws Exception {
    String button = "[...document.querySelectorAll('button')].find(b => b.dataset.phrase === '";
    browser.until(button + phrase + "')");
    browser.eval(button + phrase + "').focus()");
  }

  private void toTheJointNut() throws Exception {
    says("cautions understood", "382", "that is correct", "step completed");
    says("check passed", "step completed", "new nut fitted");
    untilText("digits", "62");
  }

  @Test
  @DisplayName("follows a session: side, stage, value, what was heard, whether it counted, reply")
  void follows() throws Exception {
    toTheJointNut();
    assertEquals("Left", text("side"));
    assertEquals("lbf·ft", text("unit"));
    assertEquals("Torque, stage 1 of 1", text("headline"));
    assertEquals("4", text("number"));
    says("63");
    untilText("verdict", "Refused");
    assertEquals("six three", text("heard-words"));
    assertEquals(bay.recorded.get(bay.recorded.size() - 1).said(), text("said"));
    says("torque reached 62 foot pounds");
    untilText("title", "Tighten the bush bolt");
    assertEquals("not confirmed", text("load-holds"));
    assertEquals("Counted", text("verdict"));
  }

  @Test
  @DisplayName("shows a microphone that is gone, and its return until something is heard")
  void devices() throws Exception {
    bay.tells(DeviceNews.MICROPHONE_GONE);
    untilText("devices", "The microphone is gone. I cannot hear you. Nothing is lost.");
    assertEquals("false", browser.eval("document.getElementById('devices').hidden").asText());
    bay.tells(DeviceNews.MICROPHONE_BACK);
    untilText("devices", "The microphone is back.");
    says("cautions understood");
    untilText("devices", "");
    assertEquals("true", browser.eval("document.getElementById('devices').hidden").asText());
  }

  @Test
  @DisplayName("counts no time before the cautions are understood, and shows it after")
  void times() throws Exception {
    untilText("work-time", "0:00");
    says("cautions understood");
    untilText("work-time", "0:01");
  }

  @Test
  @DisplayName("is the same after a reload")
  void reloaded() throws Exception {
    toTheJointNut();
    browser.reload();
    untilText("digits", "62");
    assertEquals("new nut fitted", text("heard-words"));
  }

  @Test
  @DisplayName("shows markup in a title, a note or a phrase as text, and runs nothing of it")
  void inert() throws Exception {
    toTheJointNut();
    assertEquals("Tighten " + ATTACK, text("title"));
    says("take a note", "<script>window.hit=2</script>");
    untilText("heard-words", "<script>window.hit=2</script>");
    assertTrue(browser.eval("typeof window.hit === 'undefined'").asBoolean());
    assertEquals(
        0, browser.eval("document.querySelectorAll('main img, main script').length").asInt());
  }

  @Test
  @DisplayName("takes a press by keyboard, a second time for what closes, and logs it as pressed")
  void pressed() throws Exception {
    focus("cautions understood");
    browser.until("performance.now() > 3000");
    browser.keys(ENTER);
    browser.until("document.querySelector('[data-armed]')");
    assertEquals(1, bay.recorded.size());
    assertEquals(
        "I understand the cautions press again",
        browser.eval("document.activeElement.textContent").asText());
    browser.eval("window.since = performance.now()");
    browser.until("performance.now() - window.since > 600");
    browser.keys(ENTER);
    untilText("headline", "To measure");
    assertEquals("pressed", bay.lastHeard().how());
    assertEquals("cautions understood", bay.lastHeard().text());
    assertEquals("pressed", text("how"));
  }

  @Test
  @DisplayName("takes a phrase from the field, and logs it as typed")
  void typed() throws Exception {
    says("cautions understood");
    untilText("headline", "To measure");
    browser.eval("document.getElementById('phrase').focus()");
    browser.keys("3", "8", "2", ENTER);
    untilText("digits", "382");
    assertEquals("typed", bay.lastHeard().how());
    browser.until("document.getElementById('phrase').value === ''");
  }

  @Test
  @DisplayName("has a form for the job before the cautions, and reads it back")
  void job() throws Exception {
    browser.until("!document.getElementById('job').hidden");
    browser.eval("document.getElementById('job-text').focus()");
    browser.keys("I", "N", "V", "1", ENTER);
    browser.until("document.getElementById('said').textContent.includes('india november')");
    assertEquals("registration india november victor one", bay.lastHeard().text());
    assertEquals("typed", bay.lastHeard().how());
    browser.until("document.getElementById('job-text').value === ''");
    browser.eval("document.getElementById('job-what').value = 'odometer'");
    says("that is correct");
    says("cautions understood");
    untilText("headline", "To measure");
    browser.until("document.getElementById('job').hidden");
  }

  @Test
  @DisplayName("names every control and region, and the keyboard reaches what can be pressed")
  void names() throws Exception {
    toTheJointNut();
    String unnamed =
        "[...document.querySelectorAll('button, input, select, summary, section, ol[tabindex]')].filter(e =>"
            + "!(e.textContent.trim() || e.ariaLabel || e.getAttribute('aria-labelledby')"
            + " || e.labels?.length)).map(e => e.outerHTML).join()";
    assertEquals("", browser.eval(unnamed).asText());
    String ids = "[...document.querySelectorAll('[id]')].map(e => e.id)";
    assertTrue(browser.eval("new Set(" + ids + ").size === " + ids + ".length").asBoolean());
    assertEquals("en", browser.eval("document.documentElement.lang").asText());
    assertEquals(1, browser.eval("document.querySelectorAll('h1').length").asInt());
    assertEquals(1, browser.eval("document.querySelectorAll('main').length").asInt());
    browser.eval("document.activeElement.blur()");
    browser.keys(TAB);
    assertEquals("torque reached", browser.eval("document.activeElement.dataset.phrase").asText());
    browser.eval("document.getElementById('steps').focus()");
    browser.keys(TAB);
    assertEquals("SUMMARY", browser.eval("document.activeElement.tagName").asText());
  }

  @Test
  @DisplayName("can be made light or dark, and stays so")
  void theme() throws Exception {
    String paper = "getComputedStyle(document.body).backgroundColor";
    String before = browser.eval(paper).asText();
    browser.eval("document.getElementById('theme').click()");
    String after = browser.eval(paper).asText();
    assertTrue(!after.equals(before), after);
    browser.reload();
    browser.until("document.body.dataset.link === 'open'");
    assertEquals(after, browser.eval(paper).asText());
  }

  @Test
  @DisplayName("says so when the program has ended")
  void ended() throws Exception {
    bay.close();
    browser.until("!document.getElementById('lost').hidden");
    assertTrue(text("lost-words").startsWith("The program has ended."), text("lost-words"));
    bay = BoardBay.of(ProcedureFile.load(PROCEDURE).procedure());
  }

  @Test
  @DisplayName("keeps the digits, the side and the verdict inside a full screen")
  void fits() throws Exception {
    toTheJointNut();
    for (String id : new String[] {"digits", "side", "load", "verdict", "stages", "gear", "said"}) {
      String box = "document.getElementById('" + id + "').getBoundingClientRect()";
      assertTrue(browser.eval(box + ".bottom <= innerHeight").asBoolean(), id);
      assertTrue(browser.eval(box + ".right <= innerWidth").asBoolean(), id);
    }
    assertTrue(browser.eval("document.documentElement.scrollWidth <= innerWidth").asBoolean());
  }
}
