package org.undercall.adapter.report;

import java.util.List;
import org.undercall.text.Markup;

/** A table with its caption and a head that is repeated on each page. */
final class Table {
  private static final int WIDE = 8;

  private final Markup m;

  private Table(Markup m) {
    this.m = m;
  }

  /** Begins a table; a column is its name and its share of the width, {@code Step|20}. */
  static Table begin(Markup m, String caption, List<String> columns) {
    head(m, caption, columns);
    m.open("tbody");
    return new Table(m);
  }

  /** Begins a table whose bodies follow; on a narrow screen it can be moved across. */
  static void head(Markup m, String caption, List<String> columns) {
    String wide = columns.size() >= WIDE ? "wide" : "narrow";
    m.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", caption);
    m.open("table", "class", wide);
    m.leaf("caption", caption);
    m.open("colgroup");
    for (String column : columns) {
      m.empty("col", "width", column.substring(column.indexOf('|') + 1) + "%");
    }
    m.close().open("thead").open("tr");
    for (String column : columns) {
      m.leaf("th", column.substring(0, column.indexOf('|')), "scope", "col");
    }
    m.close().close();
  }

  /** A row of texts. */
  Table row(String... cells) {
    m.open("tr");
    for (String cell : cells) {
      m.leaf("td", cell);
    }
    m.closeLine();
    return this;
  }

  void end() {
    m.close();
    end(m);
  }

  /** Ends a table after its last body. */
  static void end(Markup m) {
    m.close().closeLine();
  }
}
