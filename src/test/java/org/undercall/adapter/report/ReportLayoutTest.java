package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The pages of a report")
class ReportLayoutTest {
  private static final long SEED = Long.getLong("undercall.seed", 20_261_130);
  private static final int RUNS = Integer.getInteger("undercall.layouts", 20);
  private static final double LEAST = 0.25;
  private static final float LARGEST_TEXT = 9.2f;
  private static final Pattern HEAD =
      Pattern.compile("<th scope=\"(?:col|rowgroup\" colspan=\"\\d)\">([^<]*)<");

  static Stream<String> examples() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("shared", "procedures"))) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(".json"))
          .filter(name -> !name.contains("blocks"))
          .sorted()
          .toList()
          .stream();
    }
  }

  private static List<PdfLines.Page> pages(String page) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportPdf.write(page, out);
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      return PdfLines.of(document);
    }
  }

  private static List<PdfLines.Page> wellSet(String page, String what) throws Exception {
    List<PdfLines.Page> pages = pages(page);
    List<String> heads = HEAD.matcher(page).results().map(found -> found.group(1)).toList();
    assertTrue(heads.size() > 5, what);
    for (int i = 0; i < pages.size(); i++) {
      PdfLines.Page one = pages.get(i);
      String where = what + ", page " + (i + 1) + " of " + pages.size();
      assertTrue(one.filled() > LEAST, () -> where + " is filled to " + one.filled());
      if (!one.lines().isEmpty()) {
        PdfLines.Line last = one.lines().get(one.lines().size() - 1);
        assertFalse(isHeading(last, heads), () -> where + " ends with a heading: " + last.text());
        assertFalse(last.italic(), () -> where + " ends with a caption: " + last.text());
      }
    }
    return pages;
  }

  /** A heading is larger than the text; the heads of a table and of a group of rows are not. */
  private static boolean isHeading(PdfLines.Line line, List<String> heads) {
    String text = line.text().strip();
    boolean head = heads.stream().anyMatch(one -> one.contains(text));
    return line.bold() && (line.size() > LARGEST_TEXT || head);
  }

  @ParameterizedTest
  @MethodSource("examples")
  @DisplayName("of each example have no heading last, a filled last page, a summary on the first")
  void examplesWellSet(String file) throws Exception {
    Dossier dossier = ReportMaker.of(file, Dossier.Paper.A4);
    List<PdfLines.Page> pages = wellSet(ReportPage.of(dossier, List.of(), List.of()), file);
    List<String> first = pages.get(0).lines().stream().map(PdfLines.Line::text).toList();
    assertTrue(first.contains("Torques and angles"), first::toString);
    assertTrue(first.contains("Cautions"), first::toString);
    int steps = dossier.review().steps().size();
    assertTrue(pages.size() <= 4 + steps / 12, () -> steps + " steps on pages: " + pages.size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "LETTER"})
  @DisplayName("of random sessions of 1 to 60 steps are set as well")
  void randomWellSet(Dossier.Paper paper) throws Exception {
    for (int run = 0; run < RUNS; run++) {
      Dossier dossier = ReportMaker.random(SEED + run, 1 + 3 * run % 60, paper);
      String what = "seed " + (SEED + run) + ", steps " + dossier.review().steps().size();
      wellSet(ReportPage.of(dossier, List.of(), List.of()), what);
    }
  }

  @Test
  @DisplayName("of the demonstration, 15 steps, are three")
  void few() throws Exception {
    Dossier dossier = ReportMaker.of("demo-lateral-link.json", Dossier.Paper.A4);
    assertEquals(3, pages(ReportPage.of(dossier, List.of(), List.of())).size());
  }

  @Test
  @DisplayName("are found wanting where they are: the check can fail")
  void canFail() throws Exception {
    String page =
        ReportPage.of(
            ReportMaker.of("demo-lateral-link.json", Dossier.Paper.A4), List.of(), List.of());
    String lost = page.replace("</main>", "<h2>A heading alone</h2></main>");
    assertThrows(AssertionError.class, () -> wellSet(lost, "with a heading last"));
    String thin =
        page.replace("</main>", "<p style=\"page-break-before: always\">Alone.</p></main>");
    assertThrows(AssertionError.class, () -> wellSet(thin, "with a thin page"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "LETTER"})
  @DisplayName("of a hand-over sheet are one, however much there is to say")
  void oneSheet(Dossier.Paper paper) throws Exception {
    List<String> wrong = new ArrayList<>();
    for (int run = 0; run < RUNS; run++) {
      String sheet = HandoverSheet.of(ReportMaker.random(SEED + run, 1 + 3 * run % 60, paper));
      int pages = pages(sheet).size();
      if (pages != 1) {
        wrong.add("seed " + (SEED + run) + ": " + pages);
      }
    }
    assertEquals(List.of(), wrong);
  }
}
