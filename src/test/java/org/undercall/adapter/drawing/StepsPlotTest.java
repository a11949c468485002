package org.undercall.adapter.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The picture of the times of steps")
class StepsPlotTest {
  private static final List<StepRow> ROWS =
      List.of(
          new StepRow(
              "wheel, left",
              Optional.of(400_000.0),
              Optional.of(new StepRow.Spread(7, 10_000, 20_000, 30_000, 40_000, 500_000)),
              true),
          new StepRow(
              "wheel, right",
              Optional.of(35_000.0),
              Optional.of(new StepRow.Spread(6, 500, 20_000, 30_000, 40_000, 50_000)),
              false),
          new StepRow("road test", Optional.of(60_000.0), Optional.empty(), false),
          new StepRow(
              "lower the car",
              Optional.empty(),
              Optional.of(new StepRow.Spread(1, 9_000, 9_000, 9_000, 9_000, 9_000)),
              false));
  private static final List<SidePair> PAIRS =
      List.of(new SidePair("wheel", 400_000, 35_000, "left 6:05 longer"));

  @Test
  @DisplayName("holds each number at its step, in seconds, at least one")
  void numbers() {
    List<String> rows = rows(StepsPlot.of("title", "", ROWS, PAIRS));
    assertTrue(rows.get(0).startsWith("wheel, left (7)<"), rows.get(0));
    assertTrue(rows.get(2).startsWith("road test<"), rows.get(2));
    assertTrue(rows.get(3).startsWith("lower the car (1)<"), rows.get(3));
    assertEquals(places(10, 20, 10, 30, 500), starts(rows.get(0)));
    assertEquals(places(1, 20, 1, 30, 50), starts(rows.get(1)));
    assertEquals(List.of(), starts(rows.get(2)));
    assertEquals(places(9, 9, 9, 9, 9), starts(rows.get(3)));
    assertTrue(marked(rows.get(0), Mark.SLOW, 400), rows.get(0));
    assertTrue(marked(rows.get(1), Mark.SESSION, 35), rows.get(1));
    assertTrue(marked(rows.get(2), Mark.SESSION, 60), rows.get(2));
    assertFalse(rows.get(3).contains("<polygon"), rows.get(3));
    assertTrue(marked(rows.get(4), Mark.LEFT, 400), rows.get(4));
    assertTrue(marked(rows.get(4), Mark.RIGHT, 35), rows.get(4));
  }

  @Test
  @DisplayName("has a scale on which the same distance is the same factor")
  void scale() {
    TimeAxis axis = StepsPlot.axis(ROWS, PAIRS);
    assertEquals(axis.at(20_000) - axis.at(10_000), axis.at(80_000) - axis.at(40_000), 1e-9);
    assertEquals(axis.at(1_000), axis.at(500));
    assertTrue(axis.at(500_000) < axis.right() && axis.at(500) > axis.left());
  }

  @Test
  @DisplayName("writes beside a mark whether it was slow and which side was longer")
  void words() {
    List<String> texts = texts(StepsPlot.of("title", "note", ROWS, PAIRS));
    assertEquals(1, texts.stream().filter("slow"::equals).count(), texts.toString());
    assertEquals(1, texts.stream().filter("left 6:05 longer"::equals).count(), texts.toString());
    assertTrue(texts.containsAll(List.of("wheel, left (7)", "road test", "10 min", "2 s", "note")));
  }

  @Test
  @DisplayName("tells marks apart by their shape")
  void shapes() {
    List<Mark> marks = List.of(Mark.SESSION, Mark.SLOW, Mark.LEFT, Mark.RIGHT);
    assertEquals(4, marks.stream().map(m -> Arrays.toString(m.corners())).distinct().count());
    assertNotEquals(Mark.LEFT.colour(), Mark.RIGHT.colour());
  }

  @Test
  @DisplayName("can be drawn with nothing in it, and without sides")
  void empty() {
    assertTrue(texts(StepsPlot.of("title", "", List.of(), List.of())).contains("title"));
    String without = StepsPlot.of("title", "", ROWS, List.of());
    assertFalse(texts(without).contains("left against right"));
    assertTrue(texts(StepsPlot.of("title", "", ROWS, PAIRS)).contains("left against right"));
  }

  /** What is drawn for each row: its name and all up to the next row. */
  private static List<String> rows(String svg) {
    String name = "<text [^>]*text-anchor=\"end\"[^>]*>(?!step \\(|left against)";
    String[] parts = svg.split(name);
    return Arrays.asList(parts).subList(1, parts.length);
  }

  private static List<String> places(int... seconds) {
    TimeAxis axis = StepsPlot.axis(ROWS, PAIRS);
    return Arrays.stream(seconds).mapToObj(s -> place(axis.at(1000.0 * s))).toList();
  }

  private static String place(double x) {
    return String.format(Locale.ROOT, "%.1f", x);
  }

  /** Where a row's line, box, least, median and most begin. */
  private static List<String> starts(String row) {
    String own = row.split("<rect[^>]*fill=\"none\"|stroke=\"#ccc\"", -1)[0];
    return Pattern.compile("<(?:line x1|rect x)=\"([^\"]*)\"")
        .matcher(own)
        .results()
        .map(found -> found.group(1))
        .limit(5)
        .toList();
  }

  private static boolean marked(String row, Mark mark, int seconds) {
    double x = StepsPlot.axis(ROWS, PAIRS).at(1000.0 * seconds) + mark.corners()[0];
    return row.contains("points=\"" + place(x) + ",") && row.contains(mark.colour());
  }

  private static List<String> texts(String svg) {
    return Pattern.compile("<text[^>]*>([^<]*)</text")
        .matcher(svg)
        .results()
        .map(found -> found.group(1))
        .toList();
  }
}
