package org.undercall.adapter.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Computes, from the style sheet itself, how large and how clear the board is. */
@DisplayName("The looks of the board")
class BoardLooksTest {
  /** Visual angle below which a capital should not be, in minutes of arc. */
  private static final double LEAST_ARCMIN = 16;

  /** A margin for dirt, glare and a slanting view, in minutes of arc; a proposal, no source. */
  private static final double MARGIN_ARCMIN = 30;

  private static final double DISTANCE_MM = 3000;

  /** Height of a capital over the font size: the smallest of the usual sans-serif fonts. */
  private static final double CAP_HEIGHT = 0.7;

  private static final String CSS = text("/org/undercall/web/colours.css") + text("board.css");

  static String text(String file) {
    try (InputStream in = Router.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** The custom properties of the blocks of a selector. */
  private static Map<String, String> properties(String selector) {
    int at = CSS.indexOf(selector + " {");
    assertTrue(at >= 0, selector);
    Map<String, String> found = new TreeMap<>();
    for (; at >= 0; at = CSS.indexOf(selector + " {", at + 1)) {
      Matcher each =
          Pattern.compile("--([a-z]+): ([^;]+);").matcher(CSS.substring(at, CSS.indexOf('}', at)));
      while (each.find()) {
        found.putIfAbsent(each.group(1), each.group(2));
      }
    }
    return found;
  }

  /** NUREG-0700 1.3.1-4: height = 6.283 D MA / 21600, in the unit of the distance. */
  private static double capHeight(double distance, double arcmin) {
    return 6.283 * distance * arcmin / 21_600;
  }

  @Nested
  @DisplayName("can be read from the floor because")
  class Size {
    @ParameterizedTest(name = "{0} m, {1} minutes of arc")
    @CsvFileSource(resources = "/reference/09d_character_height.csv", numLinesToSkip = 1)
    @DisplayName("the rule gives the published heights")
    void rule(double metres, double arcmin, double exact, double nureg) {
      assertEquals(nureg, capHeight(metres * 1000, arcmin), 0.006);
      assertEquals(exact, 2 * metres * 1000 * Math.tan(Math.toRadians(arcmin / 60) / 2), 0.006);
    }

    @ParameterizedTest(name = "{0} inches, {1} by {2}")
    @CsvSource({"24, 1920, 1080", "27, 2560, 1440", "32, 3840, 2160", "43, 1920, 1080"})
    @DisplayName("its capitals are as high as 3 m ask for, on common screens")
    void screens(double inches, double across, double down) {
      double pixel = inches * 25.4 / Math.hypot(across, down);
      double unit = Math.min(down / 100, 0.005625 * across);
      assertTrue(capital("digits", unit * pixel) >= capHeight(DISTANCE_MM, MARGIN_ARCMIN));
      assertTrue(capital("unit", unit * pixel) >= capHeight(DISTANCE_MM, LEAST_ARCMIN));
      assertTrue(capital("floor", unit * pixel) >= capHeight(DISTANCE_MM, LEAST_ARCMIN));
    }

    private static double capital(String size, double millimetres) {
      return Double.parseDouble(properties(":root").get(size)) * millimetres * CAP_HEIGHT;
    }

    @Test
    @DisplayName("a hundredth of the height of a 16:9 screen is the unit of every size")
    void unit() {
      assertEquals("min(1vh, 0.5625vw)", properties(":root").get("u"));
    }

    @ParameterizedTest
    @CsvSource({".digits, digits", ".unit, unit", ".count b, floor", ".verdict, floor"})
    @DisplayName("what must be read from there has its size")
    void uses(String selector, String size) {
      int at = CSS.indexOf("\n" + selector + " {");
      assertTrue(at >= 0, selector);
      String rule = CSS.substring(at, CSS.indexOf('}', at));
      assertTrue(rule.contains("calc(var(--u) * var(--" + size + "))"), rule);
    }
  }

  @Nested
  @DisplayName("are clear because")
  class Contrast {
    static Stream<List<String>> pairs() {
      return Stream.of(":root", ":root[data-theme=\"dark\"]")
          .flatMap(
              theme ->
                  Stream.of("paper", "plate")
                      .flatMap(
                          ground ->
                              Stream.of("ink", "soft", "done", "bad", "wait")
                                  .map(colour -> List.of(theme, ground, colour))));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    @DisplayName("every text has a contrast of at least 7 to 1 (WCAG 2, 1.4.6)")
    void texts(List<String> pair) {
      assertTrue(contrast(pair) >= 7, pair + " " + contrast(pair));
    }

    @ParameterizedTest
    @CsvSource({"line, paper", "line, plate", "focus, paper", "focus, plate"})
    @DisplayName("every line and the focus have at least 3 to 1 (WCAG 2, 1.4.11)")
    void lines(String colour, String ground) {
      for (String theme : List.of(":root", ":root[data-theme=\"dark\"]")) {
        double found = contrast(List.of(theme, ground, colour));
        assertTrue(found >= 3, theme + " " + found);
      }
    }

    @Test
    @DisplayName("the computation gives 21 to 1 for black on white")
    void extremes() {
      assertEquals(21, ratio(luminance("#000000"), luminance("#ffffff")), 1e-9);
      assertEquals(4.48, ratio(luminance("#777777"), luminance("#ffffff")), 0.005);
    }

    private static double contrast(List<String> pair) {
      Map<String, String> theme = properties(pair.get(0));
      return ratio(luminance(theme.get(pair.get(1))), luminance(theme.get(pair.get(2))));
    }

    private static double ratio(double one, double other) {
      return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double luminance(String colour) {
      double[] parts =
          DoubleStream.of(1, 3, 5)
              .map(i -> Integer.parseInt(colour.substring((int) i, (int) i + 2), 16) / 255.0)
              .map(c -> c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4))
              .toArray();
      return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }
  }

  @Nested
  @DisplayName("do without")
  class Without {
    @Test
    @DisplayName("markup made from texts, inline scripts and styles, and anything from elsewhere")
    void inert() {
      for (String file :
          List.of(
              "board.js",
              "draw.js",
              "shapes.js",
              "words.js",
              "press.js",
              "/org/undercall/web/theme.js",
              "code.js")) {
        String script = text(file);
        for (String bad : List.of("innerHTML", "outerHTML", "insertAdjacent", "eval(", "write(")) {
          assertFalse(script.contains(bad), file + " " + bad);
        }
      }
      for (String file : List.of("board.html", "code.html", "board.css")) {
        String page = text(file);
        assertFalse(
            Pattern.compile("https?://|//[a-z]|style=| on[a-z]+=").matcher(page).find(), file);
        assertFalse(page.contains("<script>"), file);
      }
    }

    @Test
    @DisplayName("motion where little of it is wanted")
    void motion() {
      String reduced = CSS.substring(CSS.indexOf("prefers-reduced-motion: reduce"));
      assertTrue(reduced.contains("button[data-armed]::after { animation: none; }"));
      assertEquals(1, CSS.split("animation: fade", -1).length - 1);
      assertFalse(CSS.contains("transition"));
    }
  }
}
