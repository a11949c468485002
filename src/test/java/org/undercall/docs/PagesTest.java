package org.undercall.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The pages of the documents")
class PagesTest {
  private static final Path README = Path.of("README.md");
  private static final Path INDEX = Path.of("docs/index.md");
  private static final Path DOCS = Path.of("docs");
  private static final Path PICTURES = Path.of("docs/pictures");
  private static final int LONGEST_README = 90;
  private static final Pattern NAMED = Pattern.compile("\\bdocs/[\\w/-]+\\.(?:md|svg|png)\\b");

  private static Map<Path, Page> pages() throws IOException {
    List<Path> files = new ArrayList<>(List.of(README, Path.of("DEVELOPERS.md")));
    files.add(Path.of("models/README.md"));
    files.addAll(below(DOCS, ".*\\.md"));
    Map<Path, Page> pages = new TreeMap<>();
    for (Path file : files) {
      pages.put(file, Page.read(file));
    }
    assertTrue(pages.size() > 30, pages.size() + " pages found");
    return pages;
  }

  private static List<Path> below(Path folder, String pattern) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .filter(file -> file.toString().matches(pattern))
          .sorted()
          .toList();
    }
  }

  @Test
  @DisplayName("link to files and anchors that are there")
  void links() throws IOException {
    Map<Path, Page> pages = pages();
    List<String> broken = new ArrayList<>();
    int count = 0;
    for (Page page : pages.values()) {
      for (String link : page.links()) {
        count++;
        if (!leadsSomewhere(page, link, pages)) {
          broken.add(page.path() + ": " + link);
        }
      }
    }
    assertTrue(count > 150, count + " links found");
    assertEquals(List.of(), broken);
  }

  private static boolean leadsSomewhere(Page page, String link, Map<Path, Page> pages) {
    Path target = page.target(link);
    int hash = link.indexOf('#');
    return hash < 0
        ? Files.exists(target)
        : pages.containsKey(target)
            && pages.get(target).anchors().contains(link.substring(hash + 1));
  }

  @Test
  @DisplayName("can all be reached from the index, and the index from the README")
  void reached() throws IOException {
    Map<Path, Page> pages = pages();
    assertTrue(pages.get(README).links().contains(INDEX.toString()));
    Set<Path> reached = new TreeSet<>(Set.of(INDEX));
    Deque<Path> next = new ArrayDeque<>(reached);
    while (!next.isEmpty()) {
      Page page = pages.get(next.remove());
      page.links().stream()
          .map(page::target)
          .filter(pages::containsKey)
          .filter(reached::add)
          .forEach(next::add);
    }
    assertEquals(pages.keySet(), reached);
  }

  @Test
  @DisplayName("are named by the index itself, those of the folders")
  void indexed() throws IOException {
    Page index = Page.read(INDEX);
    NavigableSet<Path> missing = new TreeSet<>(below(DOCS, ".*\\.md"));
    missing.remove(INDEX);
    index.links().forEach(link -> missing.remove(index.target(link)));
    assertEquals(new TreeSet<>(), missing);
  }

  @Test
  @DisplayName("have their pictures in one folder, each shown by a page")
  void pictures() throws IOException {
    NavigableSet<Path> shown = new TreeSet<>();
    for (Page page : pages().values()) {
      page.links().stream().map(page::target).filter(t -> !pagesName(t)).forEach(shown::add);
    }
    List<Path> kept = below(DOCS, ".*\\.(?!md$)\\w+");
    assertEquals(List.of(), kept.stream().filter(file -> !file.startsWith(PICTURES)).toList());
    assertEquals(List.of(), kept.stream().filter(file -> !shown.contains(file)).toList());
  }

  private static boolean pagesName(Path file) {
    return file.toString().endsWith(".md");
  }

  @Test
  @DisplayName("have the paths by which sources, examples and pages name them")
  void named() throws IOException {
    List<Path> files = new ArrayList<>(pages().keySet());
    for (Path folder : List.of(Path.of("src"), Path.of("shared"), Path.of(".ci"))) {
      files.addAll(below(folder, ".*(\\.(java|json|ya?ml|css|js|html|sql|md|xml|sh)|/\\w+)"));
    }
    List<String> wrong = new ArrayList<>();
    for (Path file : files) {
      String text = Files.readString(file, StandardCharsets.ISO_8859_1);
      NAMED
          .matcher(text)
          .results()
          .filter(named -> !Files.exists(Path.of(named.group())))
          .forEach(named -> wrong.add(file + ": " + named.group()));
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  @DisplayName("begin with a README of at most 90 lines")
  void shortReadme() throws IOException {
    int lines = Files.readAllLines(README).size();
    assertTrue(lines <= LONGEST_README, lines + " lines");
  }
}
