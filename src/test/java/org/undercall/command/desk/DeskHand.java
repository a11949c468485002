package org.undercall.command.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import org.undercall.session.Browser;

/** Somebody at the page with a keyboard and nothing else. */
final class DeskHand {
  static final String TAB = "\uE004";
  static final String ENTER = "\uE007";
  static final String DOWN = "\uE015";
  static final String DELETE = "\uE017";
  static final String ESCAPE = "\uE00C";
  static final String SHIFT = "\uE008";
  static final String CONTROL = "\uE009";
  static final String ALT = "\uE00A";
  static final String F6 = "\uE036";
  static final String F8 = "\uE038";

  private static final int MOST_TABS = 400;

  /** How many stops lie between the focus and the next element of a kind; 0 if there is none. */
  private static final String AWAY =
      "(() => { const all = [...document.querySelectorAll('button, input, select, textarea, summary,"
          + " [tabindex=\"0\"]')].filter(e => !e.disabled && e.offsetParent !== null);"
          + " const now = document.activeElement;"
          + " let from = all.indexOf(now);"
          + " if (from < 0) from = all.findIndex(e => now.compareDocumentPosition(e) & 4 "
          + "&& !now.contains(e)) - 1;"
          + " const to = all.findIndex((e, i) => i > from && (IS)(e));"
          + " return to < 0 ? 0 : to - from; })()";

  final Browser browser;

  DeskHand(Browser browser) {
    this.browser = browser;
  }

  /** Opens a desk and waits until the file was judged. */
  void open(ServedDesk desk) throws Exception {
    browser.open(desk.address());
    browser.until("document.body.dataset.judged !== undefined");
  }

  /** Goes on with the tabulator until the focus is at an element. */
  void to(String selector) throws Exception {
    go("e => e.matches(" + quoted(selector) + ")", selector);
  }

  /**
   * Presses the tabulator as often as it should take, all at once, and then one by one if the page
   * leads another way.
   */
  private void go(String is, String what) throws Exception {
    String here = "(" + is + ")(document.activeElement)";
    if (!browser.eval(here).asBoolean()) {
      int away = browser.eval(AWAY.replace("IS", is)).asInt();
      browser.keys(Collections.nCopies(Math.max(0, away), TAB).toArray(String[]::new));
    }
    for (int i = 0; i < MOST_TABS; i++) {
      if (browser.eval(here).asBoolean()) {
        return;
      }
      browser.keys(TAB);
    }
    throw new AssertionError("the keyboard does not lead to " + what);
  }

  boolean at(String selector) throws Exception {
    return browser.eval("document.activeElement.matches(" + quoted(selector) + ")").asBoolean();
  }

  /** Types a text into the field of a place. */
  void fill(String pointer, String text) throws Exception {
    to(field(pointer));
    browser.type(text);
  }

  static String field(String pointer) {
    return "#form [data-at=\"" + pointer + "\"] :is(input, select, textarea)";
  }

  /** Presses the button that is called so. */
  void press(String name) throws Exception {
    go("e => e.tagName === 'BUTTON' && e.textContent === " + quoted(name), name);
    browser.keys(ENTER);
  }

  /** Waits until a code is among the findings, or until it is not. */
  void found(String code, boolean there) throws Exception {
    String has = "document.getElementById('findings').textContent.includes(" + quoted(code) + ")";
    browser.until(there ? has : "!" + has);
  }

  void says(String words) throws Exception {
    browser.until("document.getElementById('status').textContent.includes(" + quoted(words) + ")");
  }

  /** Waits for the question of this name. */
  void asked(String name) throws Exception {
    browser.until(
        "document.getElementById('ask').open && document.getElementById('ask-name').textContent === "
            + quoted(name));
  }

  String value(String pointer) throws Exception {
    return browser.eval("document.querySelector(" + quoted(field(pointer)) + ").value").asText();
  }

  private static String quoted(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }

  /** Nothing that axe-core finds, in the page as it stands. */
  void accessible(String what) throws Exception {
    try (InputStream in = DeskHand.class.getResourceAsStream("/axe.min.js")) {
      String axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      browser.eval("(function () {" + axe + "\n; return axe.version; })()");
    }
    browser.eval("(window.seen = undefined, axe.run().then(r => { window.seen = r; }), true)");
    browser.until("window.seen !== undefined");
    assertTrue(browser.eval("window.seen.passes.length").asInt() > 10, what);
    JsonNode wrong =
        browser.eval(
            "window.seen.violations.map(v => v.id + ': ' + v.nodes.map(n => n.html).join(' '))");
    assertEquals("[]", wrong.toString(), what);
  }
}
