package org.undercall.adapter.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.undercall.core.procedure.Step;
import org.undercall.core.review.BeforeAfter;
import org.undercall.core.review.Review;
import org.undercall.core.term.Measure;
import org.undercall.core.term.MeasureUnit;
import org.undercall.text.Markup;

/** Readings before and after the work, side by side: as text, JSON, CSV and a table of a report. */
public final class BeforeAfterTable {
  private static final BigDecimal MINUTES = BigDecimal.valueOf(60);
  private static final String NONE = "not read";

  private BeforeAfterTable() {}

  /** A row for each pair, as CSV; values in the unit of the procedure. */
  public static String csv(Review review) {
    CsvText csv =
        new CsvText(
            List.of(
                "reading", "side", "unit", "before", "after", "change", "least", "most", "within"));
    for (BeforeAfter pair : BeforeAfter.of(review)) {
      csv.row(
          Optional.of(pair.name()),
          Optional.of(ReviewWords.plain(pair.side())),
          pair.before().or(pair::after).map(m -> m.unit().symbol()),
          pair.before().map(BeforeAfterTable::plain),
          pair.after().map(BeforeAfterTable::plain),
          pair.change().map(BigDecimal::toPlainString),
          pair.limits().flatMap(Step.Limits::least).map(BigDecimal::toPlainString),
          pair.limits().flatMap(Step.Limits::most).map(BigDecimal::toPlainString),
          pair.within().map(in -> in ? "yes" : "no"));
    }
    return csv.toString();
  }

  /** The lines of the written review. */
  static List<String> lines(Review review) {
    return BeforeAfter.of(review).stream()
        .map(
            pair ->
                pair.name()
                    + ", "
                    + ReviewWords.plain(pair.side())
                    + ": before "
                    + shown(pair.before())
                    + ", after "
                    + shown(pair.after())
                    + pair.change().map(c -> ", change " + signed(c)).orElse("")
                    + limits(pair))
        .toList();
  }

  static void put(ArrayNode list, Review review) {
    for (BeforeAfter pair : BeforeAfter.of(review)) {
      ObjectNode node = list.addObject().put("reading", pair.name());
      node.put("side", ReviewWords.plain(pair.side()));
      pair.before().ifPresent(m -> node.put("before", m.toString()));
      pair.after().ifPresent(m -> node.put("after", m.toString()));
      pair.change().ifPresent(c -> node.put("change", c));
      pair.within().ifPresent(in -> node.put("withinLimits", in));
    }
  }

  /** One block of a report; nothing if there is no such reading. */
  static void add(Markup m, Review review) {
    List<BeforeAfter> pairs = BeforeAfter.of(review);
    if (pairs.isEmpty()) {
      return;
    }
    m.leaf("h2", "Before and after", "id", "before-after");
    Table table =
        Table.begin(
            m,
            "Readings before and after the work",
            List.of("Reading|24", "Side|14", "Before|17", "After|17", "Change|10", "Limits|18"));
    for (BeforeAfter pair : pairs) {
      table.row(
          pair.name(),
          Labels.side(pair.side()),
          shown(pair.before()),
          shown(pair.after()),
          pair.change().map(BeforeAfterTable::signed).orElse(""),
          limits(pair).replaceFirst("^, ", ""));
    }
    table.end();
    m.leaf("p", ReviewWords.CALLED_NOT_MEASURED);
  }

  private static String plain(Measure value) {
    return value.amount().toPlainString();
  }

  /** A value, an angle in degrees and minutes too. */
  private static String shown(Optional<Measure> value) {
    return value
        .map(m -> m.unit() == MeasureUnit.DEGREE ? m + " (" + minutes(m.amount()) + ")" : "" + m)
        .orElse(NONE);
  }

  private static String minutes(BigDecimal degrees) {
    long all = degrees.abs().multiply(MINUTES).setScale(0, RoundingMode.HALF_UP).longValueExact();
    return (degrees.signum() < 0 && all > 0 ? "-" : "") + all / 60 + "°" + all % 60 + "′";
  }

  private static String signed(BigDecimal change) {
    return (change.signum() > 0 ? "+" : "") + change.toPlainString();
  }

  private static String limits(BeforeAfter pair) {
    return pair.limits()
        .map(
            l ->
                ", limits "
                    + l.least().map(BigDecimal::toPlainString).orElse("none")
                    + " to "
                    + l.most().map(BigDecimal::toPlainString).orElse("none")
                    + pair.within().map(in -> in ? ", within" : ", OUTSIDE").orElse(""))
        .orElse("");
  }
}
