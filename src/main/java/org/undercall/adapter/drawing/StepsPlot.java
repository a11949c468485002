package org.undercall.adapter.drawing;

import java.awt.Color;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedRangeCategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.BoxAndWhiskerRenderer;
import org.jfree.chart.renderer.category.CategoryItemRenderer;
import org.jfree.chart.renderer.category.IntervalBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.category.DefaultIntervalCategoryDataset;
import org.jfree.data.statistics.BoxAndWhiskerItem;
import org.jfree.data.statistics.DefaultBoxAndWhiskerCategoryDataset;

/**
 * Draws the time at work on each step: the median, quartiles and ends of many sessions as a box
 * (Tukey, Exploratory Data Analysis, 1977), one session as a mark on it, and left against right.
 */
public final class StepsPlot {
  private static final int ROW = 26;
  private static final int AROUND = 220;
  private static final int WIDTH = 1000;
  private static final Color BOX = new Color(0xC9D6EA);

  private StepsPlot() {}

  /**
   * The plot.
   *
   * @param title may have several lines
   * @param note words under the title; may be blank
   * @param rows from top to bottom
   * @param pairs from top to bottom; if there are none, left against right is not drawn
   */
  public static JFreeChart of(String title, String note, List<StepRow> rows, List<SidePair> pairs) {
    double[] all = times(rows, pairs).toArray();
    TimeAxis axis =
        new TimeAxis(
            "time at work, on a logarithmic scale",
            DoubleStream.of(all).min().orElse(1),
            DoubleStream.of(all).max().orElse(1));
    CombinedRangeCategoryPlot both = new CombinedRangeCategoryPlot(axis);
    both.setOrientation(PlotOrientation.HORIZONTAL);
    both.setGap(40);
    both.add(steps(rows), Math.max(1, rows.size()));
    if (!pairs.isEmpty()) {
      both.add(sides(pairs), pairs.size());
    }
    return Looks.chart(title, note, both);
  }

  /** How large it is to be drawn, so that every row has room. */
  public static Dimension size(List<StepRow> rows, List<SidePair> pairs) {
    return new Dimension(WIDTH, AROUND + ROW * (rows.size() + pairs.size()));
  }

  private static DoubleStream times(List<StepRow> rows, List<SidePair> pairs) {
    Stream<Double> steps =
        rows.stream()
            .flatMap(
                row ->
                    Stream.concat(
                        row.millis().stream(),
                        row.spread().stream().flatMap(s -> Stream.of(s.least(), s.most()))));
    Stream<Double> sides = pairs.stream().flatMap(pair -> Stream.of(pair.left(), pair.right()));
    return Stream.concat(steps, sides).mapToDouble(TimeAxis::drawn);
  }

  private static CategoryPlot steps(List<StepRow> rows) {
    DefaultBoxAndWhiskerCategoryDataset boxes = new DefaultBoxAndWhiskerCategoryDataset();
    DefaultCategoryDataset marks = new DefaultCategoryDataset();
    for (StepRow row : rows) {
      String name = row.name() + row.spread().map(s -> " (" + s.sessions() + ")").orElse("");
      boxes.add(row.spread().map(StepsPlot::item).orElse(none()), "sessions held against", name);
      Double time = row.millis().map(TimeAxis::drawn).orElse(null);
      marks.addValue(row.slow() ? null : time, "this session", name);
      marks.addValue(row.slow() ? time : null, "this session, slow", name);
    }
    BoxAndWhiskerRenderer box = new BoxAndWhiskerRenderer();
    box.setMeanVisible(false);
    box.setUseOutlinePaintForWhiskers(true);
    box.setSeriesPaint(0, BOX);
    box.setSeriesOutlinePaint(0, Color.BLACK);
    box.setItemMargin(0);
    box.setMaximumBarWidth(0.6 / Math.max(1, rows.size()));
    CategoryPlot plot = plot(boxes, box, "step (sessions that closed it)");
    plot.setDataset(1, marks);
    plot.setRenderer(1, new MarkRenderer(List.of(Mark.session(), Mark.slow()), List.of()));
    return plot;
  }

  private static BoxAndWhiskerItem item(StepRow.Spread s) {
    double least = TimeAxis.drawn(s.least());
    double most = TimeAxis.drawn(s.most());
    return new BoxAndWhiskerItem(
        null,
        TimeAxis.drawn(s.median()),
        TimeAxis.drawn(s.lower()),
        TimeAxis.drawn(s.upper()),
        least,
        most,
        least,
        most,
        List.of());
  }

  private static BoxAndWhiskerItem none() {
    return new BoxAndWhiskerItem(null, null, null, null, null, null, null, null, List.of());
  }

  private static CategoryPlot sides(List<SidePair> pairs) {
    DefaultCategoryDataset marks = new DefaultCategoryDataset();
    Number[][] low = new Number[1][pairs.size()];
    Number[][] high = new Number[1][pairs.size()];
    List<String> words = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      SidePair pair = pairs.get(i);
      double left = TimeAxis.drawn(pair.left());
      double right = TimeAxis.drawn(pair.right());
      marks.addValue(left, "left", pair.step());
      marks.addValue(right, "right", pair.step());
      low[0][i] = Math.min(left, right);
      high[0][i] = Math.max(left, right);
      words.add(pair.words());
    }
    String[] steps = pairs.stream().map(SidePair::step).toArray(String[]::new);
    IntervalBarRenderer between = new IntervalBarRenderer();
    between.setBarPainter(new StandardBarPainter());
    between.setShadowVisible(false);
    between.setMaximumBarWidth(0.1 / pairs.size());
    between.setSeriesPaint(0, Color.LIGHT_GRAY);
    between.setSeriesVisibleInLegend(0, false);
    CategoryPlot plot =
        plot(
            new DefaultIntervalCategoryDataset(new String[] {"difference"}, steps, low, high),
            between,
            "left against right");
    plot.setDataset(1, marks);
    plot.setRenderer(1, new MarkRenderer(List.of(Mark.left(), Mark.right()), words));
    return plot;
  }

  private static CategoryPlot plot(CategoryDataset data, CategoryItemRenderer under, String label) {
    CategoryAxis domain = new CategoryAxis(label);
    domain.setTickLabelFont(Looks.SMALL);
    domain.setLabelFont(Looks.SMALL);
    domain.setMaximumCategoryLabelWidthRatio(4);
    domain.setMaximumCategoryLabelLines(2);
    domain.setLowerMargin(0);
    domain.setUpperMargin(0);
    domain.setCategoryMargin(0.2);
    CategoryPlot plot = new CategoryPlot(data, domain, null, under);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(Color.LIGHT_GRAY);
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    return plot;
  }
}
