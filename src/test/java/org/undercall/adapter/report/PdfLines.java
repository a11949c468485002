package org.undercall.adapter.report;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The pages of a PDF without their foot: lines of text with how they are set, and how full. */
final class PdfLines extends PDFTextStripper {
  private static final float FOOT = 45;

  private static final int DPI = 20;
  private static final int WHITE = 0xF0;

  private final List<Line> lines = new ArrayList<>();
  private float height;

  /**
   * A page.
   *
   * @param lines its lines of text, from above
   * @param filled how far down there is anything, as a share of its height
   */
  record Page(List<Line> lines, double filled) {}

  /**
   * A run of text on one line.
   *
   * @param text what it says
   * @param size how large, in points
   * @param bold whether all of it is set bold
   * @param italic whether all of it is set oblique
   */
  record Line(String text, float size, boolean bold, boolean italic) {}

  private PdfLines() {
    setSortByPosition(true);
  }

  static List<Page> of(PDDocument document) throws IOException {
    PDFRenderer renderer = new PDFRenderer(document);
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < document.getNumberOfPages(); i++) {
      PdfLines page = new PdfLines();
      page.height = document.getPage(i).getMediaBox().getHeight();
      page.setStartPage(i + 1);
      page.setEndPage(i + 1);
      page.getText(document);
      BufferedImage picture = renderer.renderImageWithDPI(i, DPI, ImageType.GRAY);
      pages.add(new Page(List.copyOf(page.lines), filled(picture)));
    }
    return pages;
  }

  private static double filled(BufferedImage picture) {
    int y = picture.getHeight() - (int) Math.ceil(FOOT * DPI / 72);
    while (y > 0 && white(picture, y)) {
      y--;
    }
    return (double) y / picture.getHeight();
  }

  private static boolean white(BufferedImage picture, int y) {
    return IntStream.range(0, picture.getWidth())
        .allMatch(x -> (picture.getRGB(x, y) & 0xFF) > WHITE);
  }

  @Override
  protected void writeString(String text, List<TextPosition> positions) {
    float y = positions.get(0).getYDirAdj();
    if (y < height - FOOT && !text.isBlank()) {
      float size = positions.get(0).getFontSizeInPt();
      lines.add(new Line(text, size, all(positions, "Bold"), all(positions, "Oblique")));
    }
  }

  private static boolean all(List<TextPosition> positions, String style) {
    return positions.stream().allMatch(p -> p.getFont().getName().contains(style));
  }
}
