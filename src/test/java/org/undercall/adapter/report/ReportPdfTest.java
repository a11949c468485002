package org.undercall.adapter.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The report as PDF")
class ReportPdfTest {
  @TempDir private Path folder;

  private static byte[] pdf(Dossier dossier) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportPdf.write(ReportPage.of(dossier, List.of(), List.of()), out);
    return out.toByteArray();
  }

  @ParameterizedTest
  @CsvSource({
    "demo-lateral-link.json, A4, 595, 842",
    "demo-lateral-link.json, LETTER, 612, 792",
    "light-van-rear-axle.json, A4, 595, 842"
  })
  @DisplayName("conforms to PDF/A-2a, on the paper asked for, with page numbers")
  void conforms(String file, Dossier.Paper paper, int wide, int high) throws Exception {
    byte[] pdf = pdf(ReportMaker.of(file, paper));
    PdfA.requireConforming(pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int pages = document.getNumberOfPages();
      for (PDPage page : document.getPages()) {
        assertEquals(wide, Math.round(page.getMediaBox().getWidth()));
        assertEquals(high, Math.round(page.getMediaBox().getHeight()));
      }
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("Page " + pages + " of " + pages), text);
      assertTrue(text.contains("not measured by this program"));
    }
    ByteArrayOutputStream sheet = new ByteArrayOutputStream();
    ReportPdf.write(HandoverSheet.of(ReportMaker.of(file, paper)), sheet);
    PdfA.requireConforming(sheet.toByteArray());
  }

  @Test
  @DisplayName("conforms with hostile texts too")
  void hostile() throws Exception {
    String all = ReportPageTest.payloads().limit(13).collect(Collectors.joining(" "));
    PdfA.requireConforming(pdf(ReportMaker.with(all.substring(0, 290), folder)));
    Dossier end = ReportMaker.with(all.substring(all.length() - 120), folder);
    PdfA.requireConforming(pdf(end));
    ByteArrayOutputStream sheet = new ByteArrayOutputStream();
    ReportPdf.write(HandoverSheet.of(end), sheet);
    PdfA.requireConforming(sheet.toByteArray());
  }

  @Test
  @DisplayName("that is damaged does not conform: the check can fail")
  void damaged() throws Exception {
    byte[] pdf = pdf(ReportMaker.of("demo-lateral-link.json", Dossier.Paper.A4));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      document.getDocumentCatalog().setOutputIntents(List.of());
      document.save(out);
    }
    try {
      PdfA.requireConforming(out.toByteArray());
    } catch (AssertionError e) {
      return;
    }
    throw new AssertionError("a PDF without its colour space was taken for PDF/A");
  }
}
