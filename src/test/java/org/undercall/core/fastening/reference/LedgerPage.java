package org.undercall.core.fastening.reference;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The parts of the page that account for every row: examples, rows, and what is misprinted. */
final class LedgerPage {
  private static final String EXAMPLES =
      """

      ## Worked examples, from the inputs to every printed result

      Whole: every result that the source prints is computed by the classes of this program from the
      inputs; a formula's own steps that the program does not show are not counted. The others are
      not whole, and why is told below among the rows not used.

      | example | results | computed | whole | worst | source |
      |---|---:|---:|---|---:|---|
      """;

  private static final String ROWS =
      """

      ## What became of the rows

      Of these tables no row is left out silently. An input is what a value beside it was computed
      from. A joint judged is put before the rules of `check`, which must find no error in it.

      | table | rows | checked | inputs | judged | wrong | not used |
      |---|---:|---:|---:|---:|---:|---:|
      """;

  private static final String WRONG =
      """

      Found in the tables whose rows are accounted for:

      | what | published | ours | off by | what is wrong | source |
      |---|---:|---:|---:|---|---|
      """;

  private static final String WORDS =
      """

      Found while the tables were put together, by comparing sources:

      | what | published | right | verdict | source |
      |---|---|---|---|---|
      """;

  private LedgerPage() {}

  static String examples() {
    List<Examples> all = Examples.all();
    long whole = all.stream().filter(Examples::whole).count();
    return EXAMPLES
        + all.stream().map(LedgerPage::example).collect(Collectors.joining())
        + String.format(Locale.ROOT, "\n%d of %d are whole.\n", whole, all.size());
  }

  private static String example(Examples example) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %s | %+.3f %% | %s |\n",
        example.id(),
        example.results().size(),
        example.checked(),
        example.whole() ? "yes" : "no",
        example.worst(),
        example.source());
  }

  static String rows() {
    StringBuilder page = new StringBuilder(ROWS);
    Ledger.all().forEach((table, uses) -> page.append(row(table, uses)));
    page.append(row("**all**", Ledger.all().values().stream().flatMap(List::stream).toList()));
    page.append("\nNot used, by reason:\n\n");
    Map<String, Long> reasons =
        Ledger.uses(RowUse.Fate.LEFT)
            .collect(Collectors.groupingBy(RowUse::reason, TreeMap::new, Collectors.counting()));
    reasons.forEach((reason, count) -> page.append("- ").append(count + ": " + reason + ".\n"));
    return page.toString();
  }

  private static String row(String table, List<RowUse> uses) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d | %d |\n",
        table,
        uses.size(),
        count(uses, RowUse.Fate.CHECKED),
        count(uses, RowUse.Fate.INPUT),
        count(uses, RowUse.Fate.JUDGED),
        count(uses, RowUse.Fate.WRONG),
        count(uses, RowUse.Fate.LEFT));
  }

  private static long count(List<RowUse> uses, RowUse.Fate fate) {
    return uses.stream().filter(use -> use.fate() == fate).count();
  }

  static String wrong() {
    return WRONG
        + Ledger.uses(RowUse.Fate.WRONG).map(LedgerPage::wrong).collect(Collectors.joining())
        + WORDS
        + Rows.of("00b_known_bad_joint_values").stream()
            .map(
                row ->
                    String.join(
                        " | ",
                        "| " + row.get("item"),
                        row.get("published_value"),
                        row.get("correct_or_calculated"),
                        row.get("verdict"),
                        row.get("source") + " |\n"))
            .collect(Collectors.joining());
  }

  private static String wrong(RowUse use) {
    Check check = use.checks().get(0);
    return String.format(
        Locale.ROOT,
        "| %s | %s | %.4g | %+.1f %% | %s | %s |\n",
        check.what(),
        check.published(),
        check.ours(),
        check.deviation(),
        use.reason(),
        check.citation().source());
  }
}
