package org.undercall.command.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercall.command.desk.DeskHand.CONTROL;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the page of the desk has, for eyes, ears and the keyboard. */
@DisplayName("The page of the desk")
@Timeout(300)
class DeskLooksTest extends DeskSeat {
  @ParameterizedTest
  @ValueSource(strings = {"light", "dark"})
  @DisplayName("axe-core finds nothing, and the tabulator goes around without a trap")
  void accessible(String scheme) throws Exception {
    browser.prefers("prefers-color-scheme", scheme);
    try (ServedDesk desk = ServedDesk.of(copy("trailing-arm-from-blocks.json"))) {
      hand.open(desk);
      hand.accessible("the head");
      for (String item : new String[] {"/phases/2", "/phases/3/steps/0"}) {
        browser.eval("document.querySelector('[data-item=\"" + item + "\"]').click()");
        browser.eval("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        hand.accessible(item);
      }
      leave();
    }
    try (ServedDesk desk = ServedDesk.of(copy("demo-lateral-link.json"))) {
      hand.open(desk);
      browser.eval(
          "[...document.querySelectorAll('[data-item]')].find(e => e.textContent.includes('fasten')).click()");
      browser.eval("document.querySelectorAll('details').forEach(d => { d.open = true; })");
      hand.accessible("a fastener");
      browser.eval("(document.body.tabIndex = -1, document.body.focus(), window.gone = 0, 1)");
      hand.to("#save");
      hand.to("#phrase, #begin");
      hand.to("body, #save");
      leave();
    }
  }

  @Test
  @DisplayName("the form has every field that the schema has")
  void everyField() throws Exception {
    Path file = folder.resolve("every.json");
    Files.writeString(file, EVERYTHING);
    try (ServedDesk desk = ServedDesk.of(file)) {
      hand.open(desk);
      Set<String> shown = new TreeSet<>();
      int items = browser.eval("document.querySelectorAll('[data-item]').length").asInt();
      for (int i = 0; i < items; i++) {
        browser.eval("(document.querySelectorAll('[data-item]')[" + i + "].click(), 1)");
        browser
            .eval("[...document.querySelectorAll('#form [data-at]')].map(e => e.dataset.at)")
            .forEach(at -> shown.add(at.asText().replaceAll(".*/", "")));
      }
      Set<String> wanted = new TreeSet<>();
      JsonNode schema =
          new ObjectMapper()
              .readTree(
                  Files.readString(
                      Path.of(
                          "src/main/resources/org/undercall/schema/whole-procedure.schema.json")));
      collect(schema, wanted);
      wanted.removeAll(Set.of("phases", "steps"));
      assertTrue(wanted.size() > 90, wanted.toString());
      wanted.removeAll(shown);
      assertEquals(Set.of(), wanted);
      leave();
    }
  }

  private static void collect(JsonNode schema, Set<String> names) {
    boolean word = schema.path("properties").path("kind").has("const");
    if (!word) {
      schema.path("properties").fieldNames().forEachRemaining(names::add);
    }
    schema.forEach(inner -> collect(inner, names));
  }

  /** Something of every kind, with next to nothing in it. */
  private static final String EVERYTHING =
      """
      { "assembledFrom": [{ "block": {} }], "cautions": [{ "text": "a" }], "rideHeight": { "arm": {} },
        "tools": [{}],
        "phases": [{ "steps": [
          { "kind": "do" }, { "kind": "measure" }, { "kind": "wait" }, { "kind": "load" },
          { "kind": "hand-over" },
          { "kind": "fasten", "fastener": {
              "renew": [{}], "clamped": {}, "seat": {}, "friction": { "thread": {}, "seat": {} },
              "stages": [{ "torque": "", "adaptor": {} }, { "angle": "", "finalTorque": {} }, { "backOff": "" }],
              "variants": [{ "stages": [] }] } }] }] }
      """;

  @Test
  @DisplayName("the findings are those of what was typed last, however fast it was typed")
  void last() throws Exception {
    try (ServedDesk desk = ServedDesk.of(copy("light-van-rear-axle.json"))) {
      hand.open(desk);
      browser.eval(
          "(window.times = [], new MutationObserver(() => times.push(performance.now())).observe("
              + "document.body, { attributeFilter: ['data-judged'] }),"
              + "addEventListener('input', () => { window.key = performance.now(); }, true), 1)");
      hand.fill("/tools/0/least", "7000 Nm");
      hand.found("PRO-010", true);
      browser.chord(CONTROL, "a");
      browser.type("2");
      hand.found("PRO-", false);
      browser.type("0,5");
      hand.found("PRO-010", true);
      long millis = Math.round(browser.eval("times.at(-1) - window.key").asDouble());
      System.out.println("desk: from the last key to its findings " + millis + " ms");
      leave();
    }
  }
}
