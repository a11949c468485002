package org.undercall.adapter.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedRangeCategoryPlot;
import org.jfree.data.statistics.BoxAndWhiskerCategoryDataset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
    CategoryPlot steps = subplot(StepsPlot.of("title", "", ROWS, PAIRS), 0);
    BoxAndWhiskerCategoryDataset boxes = (BoxAndWhiskerCategoryDataset) steps.getDataset(0);
    assertEquals(
        List.of("wheel, left (7)", "wheel, right (6)", "road test", "lower the car (1)"),
        boxes.getColumnKeys());
    assertEquals(30.0, boxes.getMedianValue(0, 0));
    assertEquals(20.0, boxes.getQ1Value(0, 1));
    assertEquals(40.0, boxes.getQ3Value(0, 1));
    assertEquals(1.0, boxes.getMinRegularValue(0, 1));
    assertEquals(500.0, boxes.getMaxRegularValue(0, 0));
    assertNull(boxes.getMedianValue(0, 2));
    assertEquals(35.0, steps.getDataset(1).getValue("this session", "wheel, right (6)"));
    assertEquals(400.0, steps.getDataset(1).getValue("this session, slow", "wheel, left (7)"));
    assertNull(steps.getDataset(1).getValue("this session", "wheel, left (7)"));
  }

  @Test
  @DisplayName("writes beside a mark whether it was slow and which side was longer")
  void words(@TempDir Path folder) throws Exception {
    List<String> texts = texts(folder, StepsPlot.of("title", "note", ROWS, PAIRS));
    assertEquals(1, texts.stream().filter("slow"::equals).count(), texts.toString());
    assertEquals(1, texts.stream().filter("left 6:05 longer"::equals).count(), texts.toString());
    assertTrue(texts.containsAll(List.of("wheel, left (7)", "road test", "10 min", "2 s", "note")));
  }

  @Test
  @DisplayName("tells marks apart by their shape")
  void shapes() {
    List<Mark> marks = List.of(Mark.session(), Mark.slow(), Mark.left(), Mark.right());
    List<java.awt.Rectangle> bounds = marks.stream().map(m -> m.shape().getBounds()).toList();
    assertEquals(4, bounds.stream().distinct().count(), bounds.toString());
    assertNotEquals(Mark.left().colour(), Mark.right().colour());
  }

  @Test
  @DisplayName("can be drawn with nothing in it, and without sides")
  void empty(@TempDir Path folder) throws Exception {
    assertTrue(texts(folder, StepsPlot.of("title", "", List.of(), List.of())).contains("title"));
    JFreeChart chart = StepsPlot.of("title", "", ROWS, List.of());
    assertEquals(1, ((CombinedRangeCategoryPlot) chart.getPlot()).getSubplots().size());
  }

  private static CategoryPlot subplot(JFreeChart chart, int which) {
    return (CategoryPlot) ((CombinedRangeCategoryPlot) chart.getPlot()).getSubplots().get(which);
  }

  private static List<String> texts(Path folder, JFreeChart chart) throws Exception {
    Path file = folder.resolve("steps.svg");
    SvgFile.write(file, chart, StepsPlot.size(ROWS, PAIRS));
    List<String> texts = new ArrayList<>();
    Matcher matcher = Pattern.compile("<text[^>]*>([^<]*)</text").matcher(Files.readString(file));
    while (matcher.find()) {
      texts.add(matcher.group(1).strip());
    }
    return texts;
  }
}
