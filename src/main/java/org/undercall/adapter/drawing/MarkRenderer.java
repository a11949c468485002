package org.undercall.adapter.drawing;

import java.text.NumberFormat;
import java.util.List;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;

/** Draws a mark for each value, and words beside what needs them. */
final class MarkRenderer extends LineAndShapeRenderer {
  private static final long serialVersionUID = 1L;
  private static final double BESIDE = 10;

  /**
   * Made for one plot.
   *
   * @param marks one for each series
   * @param words one for each category, beside its greatest value; may be none
   */
  MarkRenderer(List<Mark> marks, List<String> words) {
    super(false, true);
    setItemLabelInsets(new RectangleInsets(0, BESIDE, 0, BESIDE));
    for (int i = 0; i < marks.size(); i++) {
      Mark mark = marks.get(i);
      setSeriesShape(i, mark.shape());
      setSeriesPaint(i, mark.colour());
      if (!mark.words().isEmpty()) {
        say(
            i,
            new StandardCategoryItemLabelGenerator(mark.words(), NumberFormat.getInstance()),
            TextAnchor.BOTTOM_LEFT);
      } else if (!words.isEmpty()) {
        say(i, new Beside(words), TextAnchor.CENTER_LEFT);
      }
    }
  }

  private void say(int series, CategoryItemLabelGenerator words, TextAnchor anchor) {
    setSeriesItemLabelGenerator(series, words);
    setSeriesItemLabelsVisible(series, true);
    setSeriesItemLabelFont(series, Looks.SMALL);
    setSeriesPositiveItemLabelPosition(
        series, new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, anchor));
  }

  /** Words beside the greatest value of a category. */
  private static final class Beside extends StandardCategoryItemLabelGenerator {
    private static final long serialVersionUID = 1L;
    private final List<String> words;

    Beside(List<String> words) {
      this.words = List.copyOf(words);
    }

    @Override
    public String generateLabel(CategoryDataset data, int row, int column) {
      double own = data.getValue(row, column).doubleValue();
      double other = data.getValue(1 - row, column).doubleValue();
      boolean last = own > other || (own == other && row == 1);
      return last ? words.get(column) : null;
    }
  }
}
