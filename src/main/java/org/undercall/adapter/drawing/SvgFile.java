package org.undercall.adapter.drawing;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
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

  private static final Pattern FONT = Pattern.compile("font-family=\"[^\"]*\"");

  private SvgFile() {}

  /** Writes a chart over whatever the file held; works without a screen. */
  public static void write(Path file, JFreeChart chart) throws IOException {
    write(file, chart, SIZE);
  }

  /** Writes a chart of another size, in pixels. */
  public static void write(Path file, JFreeChart chart, Dimension size) throws IOException {
    Files.writeString(file, DOCTYPE.matcher(drawn(chart, size, true)).replaceFirst(""));
  }

  /**
   * A chart as an element to stand in a page: no prologue, no style attributes, with a text in
   * place of the picture.
   */
  public static String element(JFreeChart chart, String meaning) throws IOException {
    String text = drawn(chart, SIZE, false);
    String box = "0 0 " + SIZE.width + " " + SIZE.height;
    String root = "<svg role=\"img\" viewBox=\"" + box + "\" aria-label=\"%s\" alt=\"%s\"";
    String words = meaning.replaceAll("[^\\p{L}\\p{N} .,:°±·-]", " ");
    return FONT.matcher(text.substring(text.indexOf("<svg")))
        .replaceAll("font-family=\"DejaVu Sans, Verdana, sans-serif\"")
        .replaceFirst("<svg", String.format(Locale.ROOT, root, words, words));
  }

  private static String drawn(JFreeChart chart, Dimension size, boolean styled) throws IOException {
    System.setProperty("java.awt.headless", "true");
    SVGGraphics2D graphics = new SVGGraphics2D(document());
    graphics.setSVGCanvasSize(size);
    chart.draw(graphics, new Rectangle(size));
    StringWriter text = new StringWriter();
    graphics.stream(text, styled);
    return text.toString();
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
