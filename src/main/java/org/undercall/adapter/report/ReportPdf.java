package org.undercall.adapter.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.util.EnumSet;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * The page of a report as PDF/A-2a (ISO 19005-2), for keeping: tagged, with its font and its colour
 * space inside. Right-to-left words are set letter by letter as they stand in the text.
 */
public final class ReportPdf {
  private static final String FONTS = "/org/undercall/report/dejavu/";
  private static final String DOCTYPE = "<!DOCTYPE html>";
  private static final int REGULAR = 400;
  private static final int BOLD = 700;

  private ReportPdf() {}

  /**
   * Writes a page without sounds as PDF.
   *
   * @param page what {@link ReportPage} made
   * @throws IOException if it cannot be written
   */
  public static void write(String page, OutputStream out) throws IOException {
    System.setProperty("java.awt.headless", "true");
    XRLog.setLoggingEnabled(false);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withW3cDocument(document(page), null);
    builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_A);
    builder.usePdfUaAccessibility(true);
    builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
    builder.useExternalResourceAccessControl(
        (uri, type) -> false,
        com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority
            .RUN_BEFORE_RESOLVING_URI);
    font(builder, "DejaVuSans.ttf", "DejaVu Sans", REGULAR, FontStyle.NORMAL);
    font(builder, "DejaVuSans-Bold.ttf", "DejaVu Sans", BOLD, FontStyle.NORMAL);
    font(builder, "DejaVuSans-Oblique.ttf", "DejaVu Sans", REGULAR, FontStyle.ITALIC);
    font(builder, "DejaVuSansMono.ttf", "DejaVu Sans Mono", REGULAR, FontStyle.NORMAL);
    builder.withProducer("Undercall");
    builder.toStream(out);
    try (BatikSVGDrawer pictures = new BatikSVGDrawer()) {
      builder.useSVGDrawer(pictures);
      builder.run();
    }
  }

  private static void font(
      PdfRendererBuilder builder, String file, String family, int weight, FontStyle style) {
    builder.useFont(
        () -> ReportPdf.class.getResourceAsStream(FONTS + file),
        family,
        weight,
        style,
        true,
        EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG));
  }

  private static Document document(String page) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      String xml = page.replaceFirst(DOCTYPE, "");
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml.strip())));
    } catch (ParserConfigurationException | SAXException e) {
      throw new IllegalStateException("a page is always well formed", e);
    }
  }
}
