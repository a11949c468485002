package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.event.Recorded;
import org.undercall.core.event.SessionEvent;
import org.undercall.core.procedure.Walk;
import org.undercall.core.review.Review;
import org.undercall.core.term.LoadChange;
import org.undercall.text.Markup;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

@DisplayName("The page of a report")
class ReportPageTest {
  private static final Set<String> ATTRIBUTES_WITH_ADDRESSES =
      Set.of("src", "href", "style", "action", "srcset", "xlink:href");

  @TempDir private Path folder;

  static Stream<String> payloads() {
    return Stream.of(
        "<script>alert(1)</script>",
        "</title><script src=//x></script>",
        "</style><img src=x onerror=alert(1)>",
        "</td></tr></table><h1>Complete</h1>",
        "\" onmouseover=\"alert(1)",
        "' autofocus onfocus='alert(1)",
        "javascript:alert(1)",
        "<svg onload=alert(1)><foreignObject>",
        "]]><!-- <![CDATA[ -->",
        "&lt;b&gt; &amp;nbsp; &#x3c;",
        "${7*7} {{7*7}} <%= 7 %>",
        "--> 1:02.000",
        "Ⅻ Ω Ж א ش 漢 🔧",
        "a" + "b".repeat(280));
  }

  private static Document parsed(String page) throws Exception {
    String xml = page.replaceFirst("<!DOCTYPE html>\n", "");
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)));
  }

  private static Set<String> names(Document page) {
    Set<String> names = new TreeSet<>();
    NodeList all = page.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      names.add(element.getTagName());
      for (int a = 0; a < element.getAttributes().getLength(); a++) {
        names.add("@" + element.getAttributes().item(a).getNodeName());
      }
    }
    return names;
  }

  private static String page(Dossier dossier) {
    return ReportPage.of(dossier, List.of(), List.of());
  }

  @ParameterizedTest
  @MethodSource("payloads")
  @DisplayName("shows hostile texts as they are and has no element or attribute more for them")
  void escaped(String payload) throws Exception {
    Document plain = parsed(page(ReportMaker.with("Plain words", folder)));
    Document hostile = parsed(page(ReportMaker.with(payload, folder)));
    assertEquals(names(plain), names(hostile));
    assertEquals(
        plain.getElementsByTagName("*").getLength(), hostile.getElementsByTagName("*").getLength());
    int shown = hostile.getDocumentElement().getTextContent().split("\\Q" + payload, -1).length - 1;
    assertTrue(shown >= 8, () -> "shown " + shown + " times");
  }

  @ParameterizedTest
  @ValueSource(ints = {0x0, 0x7, 0x1B, 0x7F, 0x85, 0x200B, 0x202E, 0x2066, 0x2028, 0xD800, 0xFEFF})
  @DisplayName("shows a character that hides or steers as a replacement")
  void steering(int character) {
    String text = new Markup().text("a" + Character.toString(character) + "b").toString();
    assertEquals("a\uFFFDb", text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-lateral-link.json", "light-van-rear-axle.json"})
  @DisplayName("needs no script, no style but its own and no other file")
  void alone(String file) throws Exception {
    String page = page(ReportMaker.of(file, Dossier.Paper.A4));
    Set<String> names = names(parsed(page));
    assertFalse(names.contains("script"));
    assertFalse(names.contains("link"));
    assertTrue(
        names.stream()
            .noneMatch(
                n -> n.startsWith("@") && ATTRIBUTES_WITH_ADDRESSES.contains(n.substring(1))));
    assertTrue(names.stream().noneMatch(n -> n.startsWith("@on")));
    assertTrue(page.contains("default-src &#39;none&#39;"));
    assertFalse(page.contains("url("));
  }

  @Test
  @DisplayName("says what was called, with what is specified, and that it was not measured")
  void values() throws Exception {
    Dossier dossier = ReportMaker.of("demo-lateral-link.json", Dossier.Paper.A4);
    Document page = parsed(page(dossier));
    String text = page.getDocumentElement().getTextContent();
    assertTrue(text.contains("62 lbf·ft ±3 lbf·ft"));
    assertTrue(text.contains("Values as called by the technician, not measured by this program."));
    assertTrue(text.contains("invented for demonstration"));
    assertTrue(text.contains(dossier.seal().sum()));
    assertTrue(text.contains("Lines: " + dossier.decisions().size()));
    assertTrue(text.contains("EVERY STEP CLOSED, NOT YET TO BE DRIVEN. Every step is closed"));
  }

  @Test
  @DisplayName("lists what was recorded together in its order")
  void order() throws Exception {
    Dossier dossier = ReportMaker.of("demo-lateral-link.json", Dossier.Paper.A4);
    List<Recorded> log = new ArrayList<>(dossier.decisions());
    SessionEvent closed =
        new SessionEvent.StepClosed(dossier.review().steps().get(0).place().ref());
    SessionEvent cancelled = new SessionEvent.LoadChanged(LoadChange.STEP_CHANGES_LOAD);
    Recorded last = log.get(log.size() - 1);
    log.add(
        new Recorded(last.seq() + 1, last.at(), Optional.empty(), List.of(closed, cancelled), ""));
    Review review = Review.of(Walk.of(dossier.procedure()), log);
    List<Course.Mark> marks =
        Course.of(new Dossier(review, dossier.procedure(), log, dossier.seal(), dossier.given()))
            .marks();
    assertSame(closed, marks.get(marks.size() - 2).event());
    assertSame(cancelled, marks.get(marks.size() - 1).event());
  }

  @Test
  @DisplayName("has each mark of the timeline in words too")
  void marksInWords() throws Exception {
    Dossier dossier = ReportMaker.with("A note", folder);
    Course course = Course.of(dossier);
    String page = page(dossier);
    String order = page.substring(page.indexOf("id=\"order\""));
    int rows = order.substring(0, order.indexOf("</table>")).split("<tr>", -1).length - 2;
    assertEquals(course.marks().size(), rows);
    int drawn = page.lines().filter(l -> l.contains("<svg")).mapToInt(ReportPageTest::shapes).sum();
    assertTrue(drawn >= course.marks().size() + Course.Kind.values().length);
  }

  private static int shapes(String line) {
    return line.split("<circle|<polygon", -1).length - 1;
  }
}
