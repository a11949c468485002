package org.undercall.adapter.report;

import java.util.List;
import java.util.Optional;
import org.undercall.text.Markup;

/**
 * A figure as a page of HTML to print, file and sign. It needs nothing but itself, is well formed
 * as XML too, and the PDF is made from it.
 */
public final class FigureSheet {
  private static final int ACROSS = 3;
  private static final String LINE = "______________________";

  private FigureSheet() {}

  /**
   * What only the asker of the sheet knows.
   *
   * @param title what is worked out
   * @param date the day it is worked out, as given; empty leaves a blank to fill in
   * @param note where the values come from; may be blank
   * @param letter whether the paper is Letter rather than A4
   */
  public record Cover(String title, Optional<String> date, String note, boolean letter) {}

  /** The page. */
  public static String of(Cover cover, Figure figure, List<Sketch> pictures) {
    Markup m = new Markup();
    String paper = cover.letter() ? "letter" : "A4";
    PageHead.begin(
        m,
        cover.title(),
        "Computed sheet of a joint or tool",
        paper,
        new PageHead.Edges("", "computed sheet"));
    m.open("body", "class", "figure").open("main");
    head(m, cover, figure);
    m.leaf("h2", "Inputs", "id", "inputs");
    inputs(m, figure.inputs());
    m.leaf("h2", "Results", "id", "results");
    results(m, figure.parts());
    pictures(m, pictures, figure.unseen());
    signature(m);
    m.close().close().closeLine();
    return m.toString();
  }

  private static void head(Markup m, Cover cover, Figure figure) {
    m.leaf("h1", cover.title());
    String note = cover.note().isBlank() ? "" : cover.note() + ".";
    m.open("p").text("Date: " + cover.date().orElse(LINE) + ". ").leaf("strong", note).closeLine();
    String caution = figure.caution();
    m.leaf(
        "p",
        caution.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + caution.substring(1),
        "class",
        "warning");
  }

  /** Three inputs in a row, since they are short. */
  private static void inputs(Markup m, List<Figure.Item> items) {
    Table table =
        Table.begin(
            m,
            "What went in",
            List.of("Input|15", "Value|18", "Input|15", "Value|18", "Input|15", "Value|19"));
    int rows = (items.size() + ACROSS - 1) / ACROSS;
    for (int row = 0; row < rows; row++) {
      String[] cells = new String[2 * ACROSS];
      for (int i = 0; i < ACROSS; i++) {
        int at = row + i * rows;
        cells[2 * i] = at < items.size() ? items.get(at).name() : "";
        cells[2 * i + 1] = at < items.size() ? items.get(at).text() : "";
      }
      table.row(cells);
    }
    table.end();
  }

  private static void results(Markup m, List<Figure.Part> parts) {
    Table.head(m, "What came out, and how", List.of("Result|27", "Value|27", "How and whence|46"));
    parts.forEach(part -> part(m, part));
    Table.end(m);
  }

  private static void part(Markup m, Figure.Part part) {
    m.open("tbody", "class", "keep");
    if (!part.heading().isBlank()) {
      m.open("tr").leaf("th", part.heading(), "colspan", "3", "scope", "rowgroup").closeLine();
    }
    boolean first = true;
    for (Figure.Item item : part.results()) {
      m.open("tr").leaf("td", item.name()).leaf("td", item.text(), "class", "strong");
      if (first) {
        m.open("td", "rowspan", part.results().size() + "", "class", "how");
        how(m, part);
        m.close();
      }
      first = false;
      m.closeLine();
    }
    m.closeLine();
  }

  private static void how(Markup m, Figure.Part part) {
    m.leaf("p", part.formula(), "class", "formula");
    m.leaf("p", "Source: " + part.source());
    if (!part.assumption().isBlank()) {
      m.leaf("p", "Assumed: " + part.assumption());
    }
  }

  /** Pictures two by two, then what is to be minded beside the last one. */
  private static void pictures(Markup m, List<Sketch> pictures, List<String> points) {
    if (!pictures.isEmpty()) {
      m.leaf("h2", "Pictures, computed and not measured", "id", "pictures");
    }
    m.open("div", "class", "pictures");
    for (Sketch picture : pictures) {
      m.open("div", "class", "half");
      m.leaf("h3", picture.about()).made(picture.svg()).closeLine();
    }
    m.open("div", "class", pictures.size() % 2 == 1 ? "half" : "whole-width");
    list(m, "What cannot be seen", "unseen", points);
    list(m, "Cautions", "cautions", EndSections.CAUTIONS);
    m.closeLine().closeLine();
  }

  private static void list(Markup m, String heading, String id, List<String> points) {
    if (!points.isEmpty()) {
      m.leaf("h2", heading, "id", id).open("ul");
      points.forEach(point -> m.leaf("li", point));
      m.closeLine();
    }
  }

  private static void signature(Markup m) {
    m.open("div", "class", "keep sign").leaf("h2", "Signature", "id", "signature");
    m.leaf("p", "Worked out by (name) " + LINE + "  Signature " + LINE + "  Date ______________");
    m.leaf("p", "Checked by (name) " + LINE + "  Signature " + LINE + "  Date ______________");
    m.closeLine();
  }
}
