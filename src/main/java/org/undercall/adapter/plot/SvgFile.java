package org.undercall.adapter.plot;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Document;

/** Writes charts as SVG files, with text kept as text. */
public final class SvgFile {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final Dimension SIZE = new Dimension(800, 500);

  /** Left out, so that no reader of the file asks the network for it. */
  private static final Pattern DOCTYPE = Pattern.compile("<!DOCTYPE[^>]*>\\s*");

  private SvgFile() {}

  /** Writes a chart over whatever the file held; works without a screen. */
  public static void write(Path file, JFreeChart chart) throws IOException {
    System.setProperty("java.awt.headless", "true");
    SVGGraphics2D graphics = new SVGGraphics2D(document());
    graphics.setSVGCanvasSize(SIZE);
    chart.draw(graphics, new Rectangle(SIZE));
    StringWriter text = new StringWriter();
    graphics.stream(text, true);
    Files.writeString(file, DOCTYPE.matcher(text.toString()).replaceFirst(""));
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("every Java platform makes XML documents", e);
    }
  }
}
