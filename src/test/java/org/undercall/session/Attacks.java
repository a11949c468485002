package org.undercall.session;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Texts that try to become something else in a page, a stream or a file: tags, handlers, addresses,
 * drawings, styles, templates, encodings, marks of direction, line breaks, names of prototypes.
 * What one of them can run sets {@code hit}.
 */
final class Attacks {
  /** Made up here, one text a line. */
  static final List<String> MADE =
      List.of(
          "<script>window.hit=1</script>",
          "<SCRIPT>window.hit=1</SCRIPT>",
          "<scr<script>ipt>window.hit=1</scr</script>ipt>",
          "<script src=//invented.example/x.js></script>",
          "<script\t>window.hit=1</script\t>",
          "<script/x>window.hit=1</script>",
          "\"><script>window.hit=1</script>",
          "'><script>window.hit=1</script>",
          "</title><script>window.hit=1</script>",
          "</textarea><script>window.hit=1</script>",
          "</style><script>window.hit=1</script>",
          "</script><script>window.hit=1</script>",
          "--><script>window.hit=1</script>",
          "<!--<script>window.hit=1</script>",
          "<![CDATA[<script>window.hit=1</script>]]>",
          "<?xml version=\"1.0\"?><script>window.hit=1</script>",
          "<noscript><p title=\"</noscript><img src=x onerror=window.hit=1>\">",
          "<template><script>window.hit=1</script></template>",
          "<plaintext><script>window.hit=1</script>",
          "<img src=x onerror=window.hit=1>",
          "<img src=x onerror=\"window.hit=1\"",
          "<img/src=x/onerror=window.hit=1>",
          "<img src=x:x onerror\n=window.hit=1>",
          "<IMG \"\"\"><SCRIPT>window.hit=1</SCRIPT>\">",
          "<body onload=window.hit=1>",
          "<input autofocus onfocus=window.hit=1>",
          "<select autofocus onfocus=window.hit=1>",
          "<video src=x onerror=window.hit=1></video>",
          "<audio src=x onerror=window.hit=1></audio>",
          "<video><source onerror=window.hit=1></video>",
          "<details open ontoggle=window.hit=1>x</details>",
          "<marquee onstart=window.hit=1>x</marquee>",
          "<object data=x onerror=window.hit=1></object>",
          "<style onload=window.hit=1></style>",
          "<link rel=stylesheet href=x onerror=window.hit=1>",
          "<p onpointerover=window.hit=1 style=\"position:fixed;inset:0\">x</p>",
          "<div contenteditable autofocus tabindex=0 onfocus=window.hit=1>x</div>",
          "<iframe onload=window.hit=1></iframe>",
          "<dialog open oncancel=window.hit=1>x</dialog>",
          "\" onmouseover=\"window.hit=1",
          "\" autofocus onfocus=\"window.hit=1",
          "' autofocus onfocus='window.hit=1",
          "x onfocus=window.hit=1 autofocus",
          "\"/><img src=x onerror=window.hit=1>",
          "`onmouseover=window.hit=1",
          "\";window.hit=1;//",
          "';window.hit=1;//",
          "\\\";window.hit=1;//",
          "${window.hit=1}",
          "`;window.hit=1;//",
          "'-(window.hit=1)-'",
          "</script><img src=x onerror=window.hit=1>",
          "javascript:window.hit=1",
          "JaVaScRiPt:window.hit=1",
          "java\tscript:window.hit=1",
          "<a href=javascript:window.hit=1>x</a>",
          "<iframe src=javascript:parent.hit=1></iframe>",
          "<iframe srcdoc=\"<script>parent.hit=1</script>\"></iframe>",
          "<form action=javascript:window.hit=1><button>x</button></form>",
          "<base href=javascript:window.hit=1//>",
          "<meta http-equiv=refresh content=\"0;url=javascript:window.hit=1\">",
          "<meta http-equiv=\"Content-Security-Policy\" content=\"script-src *\">",
          "data:text/html,<script>window.hit=1</script>",
          "<embed src=\"data:text/html,<script>window.hit=1</script>\">",
          "vbscript:window.hit=1",
          "<svg onload=window.hit=1>",
          "<svg><script>window.hit=1</script></svg>",
          "<svg><animate onbegin=window.hit=1 attributeName=x dur=1s>",
          "<svg><a xlink:href=javascript:window.hit=1><text>x</text></a></svg>",
          "<svg><use href=\"data:image/svg+xml,<svg id=x><script>window.hit=1</script></svg>#x\"></use></svg>",
          "<svg><foreignObject><script>window.hit=1</script></foreignObject></svg>",
          "<math><mtext><img src=x onerror=window.hit=1></mtext></math>",
          "<math><a xlink:href=javascript:window.hit=1>x</a></math>",
          "<style>*{background:url(javascript:window.hit=1)}</style>",
          "<style>@import \"//invented.example/x.css\";</style>",
          "}*{display:none}",
          "expression(window.hit=1)",
          "<p style=\"width:expression(window.hit=1)\">",
          "{{constructor.constructor(\"window.hit=1\")()}}",
          "{{7*7}}",
          "${7*7}",
          "<%= 7*7 %>",
          "#{7*7}",
          "[[${7*7}]]",
          "{%raw%}<script>window.hit=1</script>{%endraw%}",
          "*{T(java.lang.Runtime)}",
          "&lt;script&gt;window.hit=1&lt;/script&gt;",
          "&amp;lt;script&amp;gt;window.hit=1&amp;lt;/script&amp;gt;",
          "&#60;script&#62;window.hit=1&#60;/script&#62;",
          "&#x3c;img src=x onerror=window.hit=1&#x3e;",
          "%3Cscript%3Ewindow.hit=1%3C/script%3E",
          "%253Cscript%253E",
          "\\u003cscript\\u003ewindow.hit=1\\u003c/script\\u003e",
          "\\x3cscript\\x3e",
          "+ADw-script+AD4-window.hit=1+ADw-/script+AD4-",
          "<\u0000script>window.hit=1</script>",
          "<scr\u0000ipt>window.hit=1</script>",
          "\uFF1Cscript\uFF1Ewindow.hit=1\uFF1C/script\uFF1E",
          "\u2039script\u203Awindow.hit=1",
          "\u3C00script\u3E00",
          "\uFEFF<script>window.hit=1</script>",
          "<\u00ADscript>window.hit=1</script>",
          "\u00BCscript\u00BEwindow.hit=1\u00BC/script\u00BE",
          "\u202Escript\u202C<img src=x onerror=window.hit=1>",
          "\u2066<b>\u2069",
          "\u200Bsafe\u200B",
          "x\u2028window.hit=1",
          "x\u2029window.hit=1",
          "x\u0085y",
          "x\r\ndata: {\"place\":{}}\r\n\r\n",
          "x\n\nevent: end\ndata: x\n\n",
          "id: 9999\n",
          "\",\"title\":\"window.hit=1",
          "\"}]}{\"title\":\"x\"}",
          "\\",
          "\\\"",
          "x\r\nSet-Cookie: a=b\r\n\r\n<script>window.hit=1</script>",
          "x\r\nEND:VCALENDAR",
          "00:00.000 --> 99:59.999",
          "__proto__",
          "constructor",
          "{\"__proto__\":{\"hit\":1}}",
          "toString",
          "hasOwnProperty");

  /** Those and, for trying a published list, the lines of the file named by undercall.attacks. */
  static final List<String> ALL = all();

  private Attacks() {}

  private static List<String> all() {
    List<String> all = new ArrayList<>(MADE);
    String more = System.getProperty("undercall.attacks", "");
    if (!more.isEmpty()) {
      try {
        Files.readAllLines(Path.of(more)).stream()
            .filter(line -> !line.isBlank())
            .map(String::strip)
            .forEach(all::add);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return List.copyOf(all);
  }

  /** A procedure of do steps with these titles; the first texts stand everywhere else, too. */
  static Path procedure(Path folder, String name, List<String> titles) throws IOException {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("$schema", "../schema/procedure.schema.json");
    root.put("title", titles.get(0)).put("vehicle", titles.get(1)).put("author", titles.get(2));
    root.put("revision", titles.get(3)).put("values", titles.get(4));
    ArrayNode cautions = root.putArray("cautions");
    titles.stream().skip(5).limit(20).forEach(cautions::add);
    ObjectNode tool = root.putArray("tools").addObject();
    tool.put("id", "wrench 1").put("least", 20).put("most", 100).put("unit", "N·m");
    tool.put("calibrated", "2026-03-03");
    ObjectNode phase = root.putArray("phases").addObject();
    phase.put("name", titles.get(6)).put("each", "car");
    ArrayNode steps = phase.putArray("steps");
    for (int i = 0; i < titles.size(); i++) {
      ObjectNode step = steps.addObject();
      step.put("id", "step-" + (i + 1)).put("kind", "do").put("title", titles.get(i));
    }
    return Files.writeString(folder.resolve(name + ".json"), root.toString());
  }
}
