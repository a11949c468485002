package org.undercall.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A page of the documents in Markdown: its links and the anchors that others can link to, named as
 * the usual viewers name them.
 *
 * @param path from the root of the project
 * @param prose its text without blocks of code
 */
record Page(Path path, String prose) {
  private static final Pattern FENCED = Pattern.compile("(?ms)^```.*?^```\\s*?$");
  private static final Pattern INDENTED = Pattern.compile("(?m)^(?: {4}|\\t).*$");
  private static final Pattern LINK = Pattern.compile("\\[[^\\]]*]\\(([^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6} +(.+?) *$");

  static Page read(Path path) throws IOException {
    String text = FENCED.matcher(Files.readString(path)).replaceAll("");
    return new Page(path, INDENTED.matcher(text).replaceAll(""));
  }

  /** Where it links to within the project: a file, and after a hash an anchor, if one is named. */
  List<String> links() {
    String text = prose.replaceAll("`[^`\n]*`", "");
    return LINK.matcher(text).results().map(r -> r.group(1)).filter(l -> !l.contains(":")).toList();
  }

  /** The file of a link; the page itself if it names none. */
  Path target(String link) {
    String file = link.replaceFirst("#.*", "");
    return file.isEmpty() ? path : path.resolveSibling(file).normalize();
  }

  /** The anchors of its headings; of equal ones each further one has a number. */
  Set<String> anchors() {
    Map<String, Integer> counts = new HashMap<>();
    Set<String> anchors = new LinkedHashSet<>();
    for (MatchResult heading : HEADING.matcher(prose).results().toList()) {
      String shown = heading.group(1).replaceAll("\\[([^\\]]*)]\\([^)]*\\)", "$1");
      String anchor =
          shown.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}_ -]", "").replace(' ', '-');
      int before = counts.merge(anchor, 1, Integer::sum) - 1;
      anchors.add(before == 0 ? anchor : anchor + "-" + before);
    }
    return anchors;
  }
}
