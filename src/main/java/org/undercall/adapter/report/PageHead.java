package org.undercall.adapter.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.undercall.text.Markup;
import org.undercall.text.Sha256;

/** The head of a page to print: its style sheet, and a policy that lets nothing else in. */
final class PageHead {
  private PageHead() {}

  /**
   * What stands at the edges of each printed page.
   *
   * @param head in large letters; blank for nothing
   * @param foot after the program's name
   */
  record Edges(String head, String foot) {}

  /**
   * Begins a page and writes its head.
   *
   * @param about one sentence on what the page is
   * @param paper {@code A4} or {@code letter}, with {@code landscape} after it if it lies on its
   *     side
   * @param edges what stands at the edges of each printed page
   */
  static void begin(Markup m, String title, String about, String paper, Edges edges) {
    String style = style(paper, edges);
    String policy =
        "default-src 'none'; style-src 'sha256-"
            + sum(style)
            + "'; media-src 'self' file:; base-uri 'none'; form-action 'none'";
    m.made("<!DOCTYPE html>\n");
    m.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
    m.open("head").empty("meta", "charset", "utf-8");
    m.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy);
    m.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    m.empty("meta", "name", "description", "content", about);
    m.empty("meta", "name", "subject", "content", about);
    m.empty("meta", "name", "author", "content", "Undercall");
    m.leaf("title", title);
    m.open("style").made(style).close().closeLine();
  }

  private static String style(String paper, Edges edges) {
    try (InputStream in = PageHead.class.getResourceAsStream("/org/undercall/report/report.css")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.replace("PAPER", paper)
          .replace("FOOT", edges.foot())
          .replace("HEAD", edges.head());
    } catch (IOException e) {
      throw new UncheckedIOException("the style sheet is part of the program", e);
    }
  }

  private static String sum(String style) {
    return Base64.getEncoder().encodeToString(Sha256.of(style.getBytes(StandardCharsets.UTF_8)));
  }
}
