package org.undercall.adapter.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The lines of text on each page of a PDF, without its foot, with how they are set. */
final class PdfLines extends PDFTextStripper {
  private static final float FOOT = 45;

  private final List<List<Line>> pages = new ArrayList<>();
  private float height;

  /**
   * A run of text on one line.
   *
   * @param text what it says
   * @param bottom how far its base line is from the top of the page, as a share of its height
   * @param bold whether all of it is set bold
   * @param italic whether all of it is set oblique
   */
  record Line(String text, float bottom, boolean bold, boolean italic) {}

  private PdfLines() {
    setSortByPosition(true);
  }

  static List<List<Line>> of(PDDocument document) throws IOException {
    PdfLines lines = new PdfLines();
    for (int i = 1; i <= document.getNumberOfPages(); i++) {
      lines.height = document.getPage(i - 1).getMediaBox().getHeight();
      lines.pages.add(new ArrayList<>());
      lines.setStartPage(i);
      lines.setEndPage(i);
      lines.getText(document);
    }
    return lines.pages;
  }

  @Override
  protected void writeString(String text, List<TextPosition> positions) {
    float y = positions.get(0).getYDirAdj();
    if (y < height - FOOT && !text.isBlank()) {
      Line line = new Line(text, y / height, all(positions, "Bold"), all(positions, "Oblique"));
      pages.get(pages.size() - 1).add(line);
    }
  }

  private static boolean all(List<TextPosition> positions, String style) {
    return positions.stream().allMatch(p -> p.getFont().getName().contains(style));
  }
}
