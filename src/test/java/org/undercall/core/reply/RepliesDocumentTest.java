package org.undercall.core.reply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.undercall.core.term.TalkLevel;
import org.undercall.docs.Generated;

/** Keeps {@code docs/reference/replies.md} the same as what the program says. */
@DisplayName("The page of replies")
class RepliesDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/reference/replies.md");
  private static final Path SOURCES = Path.of("src/main/java/org/undercall/core/reply");

  /**
   * That a step is completed is also said of what is handed over; and "noted" is the beginning of
   * other sentences too.
   */
  private static final Set<Lesson> ALSO_SAID_ELSEWHERE = EnumSet.of(Lesson.TIME_OVER, Lesson.NOTED);

  private static final List<Class<?>> TALK =
      List.of(
          Ask.class,
          Say.class,
          Refuse.class,
          Tell.class,
          Timing.class,
          JobTalk.class,
          ShiftTalk.class,
          WitnessTalk.class,
          Renew.class,
          FinalTorque.class,
          AskToWrite.class);

  @Test
  @DisplayName("shows each reply whole, known and short, as it is said")
  void notStale() throws Exception {
    Generated.same(DOCUMENT, document(), RepliesDocumentTest.class);
  }

  @ParameterizedTest
  @EnumSource(
      value = Lesson.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"CAUTIONS", "TITLES"})
  @DisplayName("a lesson is learned from a whole sentence and from no brief one")
  void learned(Lesson lesson) throws Exception {
    List<Sentence> taught =
        replies().values().stream()
            .flatMap(Set::stream)
            .flatMap(reply -> reply.parts().stream())
            .filter(part -> part.lesson().filter(lesson::equals).isPresent())
            .toList();
    assertTrue(
        taught.stream().anyMatch(part -> Lesson.in(part.whole()).contains(lesson)),
        () -> "learned from none of " + taught);
    for (Sentence part : taught) {
      assertFalse(Lesson.in(part.known()).contains(lesson), part::known);
      assertFalse(Lesson.in(part.brief()).contains(lesson), part::brief);
    }
  }

  @Test
  @DisplayName("a lesson is learned from no reply that teaches another thing")
  void apart() throws Exception {
    for (Set<Reply> said : replies().values()) {
      for (Sentence part : said.stream().flatMap(reply -> reply.parts().stream()).toList()) {
        Set<Lesson> learned = Lesson.in(part.whole());
        learned.removeAll(ALSO_SAID_ELSEWHERE);
        part.lesson().ifPresent(learned::remove);
        assertEquals(Set.of(), learned, part::toString);
      }
    }
  }

  @Test
  @DisplayName(
      "cautions and titles are learned by no sentence: they are confirmed, or worked to the end")
  void notByHearing() throws Exception {
    for (Set<Reply> said : replies().values()) {
      for (Reply reply : said) {
        Set<Lesson> learned = Lesson.in(reply.text());
        assertFalse(
            learned.contains(Lesson.CAUTIONS) || learned.contains(Lesson.TITLES), reply::text);
      }
    }
  }

  @Test
  @DisplayName("what refuses is said whole whatever was heard and wanted")
  void refusals() throws Exception {
    Habit least = new Habit(TalkLevel.SHORT, EnumSet.allOf(Lesson.class));
    for (Method method : methods(Refuse.class)) {
      for (Reply reply : Samples.of(method)) {
        assertEquals(reply.text(), reply.in(least).text(), method.getName());
      }
    }
  }

  @Test
  @DisplayName("full talk shortens nothing; in brief nothing grows but by the stage that follows")
  void shorter() throws Exception {
    Habit full = new Habit(TalkLevel.FULL, EnumSet.allOf(Lesson.class));
    for (Set<Reply> said : replies().values()) {
      for (Reply reply : said) {
        assertEquals(reply.text(), reply.in(full).text());
        for (Sentence part : reply.parts()) {
          boolean follows = part.lesson().filter(Lesson.STAGE::equals).isPresent();
          assertTrue(follows || part.known().length() <= part.whole().length(), part::toString);
          assertTrue(follows || part.brief().length() <= part.whole().length(), part::toString);
        }
      }
    }
  }

  private static String document() throws Exception {
    Habit known = new Habit(TalkLevel.NORMAL, EnumSet.allOf(Lesson.class));
    Habit brief = new Habit(TalkLevel.SHORT, Set.of());
    StringBuilder page =
        new StringBuilder(
            """
            # What is said

            Made from the replies themselves; do not edit by hand. All values are samples.

            Whole, as it is said to whom it is new and in full talk; in normal talk once it was heard before in the job; in short talk. An
            empty cell is as the one before it; `-` is left out. What refuses, cancels or warns is never shortened.
            """);
    Class<?> room = null;
    for (Map.Entry<Method, Set<Reply>> each : replies().entrySet()) {
      if (!each.getKey().getDeclaringClass().equals(room)) {
        room = each.getKey().getDeclaringClass();
        page.append("\n## ").append(title(room)).append("\n\n");
        page.append("| when | whole | heard before | short |\n|---|---|---|---|\n");
      }
      String when = meaning(each.getKey());
      for (Reply reply : each.getValue()) {
        String whole = reply.text();
        String later = reply.in(known).text();
        String least = reply.in(brief).text();
        page.append("| ").append(when).append(" | ").append(whole).append(" | ");
        page.append(cell(later, whole)).append(" | ").append(cell(least, later)).append(" |\n");
        when = "";
      }
    }
    return page.toString();
  }

  private static String cell(String words, String before) {
    return words.isBlank() && !before.isBlank() ? "-" : words.equals(before) ? "" : words;
  }

  private static String title(Class<?> room) {
    return switch (room.getSimpleName()) {
      case "Ask" -> "Asking";
      case "Say" -> "What was done";
      case "Refuse" -> "Refusing";
      case "Tell" -> "Answers, notes and devices";
      case "Timing" -> "Times and timers";
      case "JobTalk" -> "The job";
      case "ShiftTalk" -> "The shift changes";
      case "WitnessTalk" -> "A second person";
      case "Renew" -> "New parts and used ones";
      case "FinalTorque" -> "The torque after the angle";
      case "AskToWrite" -> "Writing a procedure";
      default -> throw new IllegalStateException("no title for " + room);
    };
  }

  /** What is said for each method, with one parameter after the other varied. */
  private static Map<Method, Set<Reply>> replies() throws Exception {
    Map<Method, Set<Reply>> replies = new LinkedHashMap<>();
    for (Class<?> room : TALK) {
      for (Method method : methods(room)) {
        Set<Reply> said = new LinkedHashSet<>(Samples.of(method));
        said.removeIf(reply -> reply.text().isBlank());
        replies.put(method, said);
      }
    }
    return replies;
  }

  /** In the order of the source. */
  private static List<Method> methods(Class<?> room) throws Exception {
    String source = Files.readString(SOURCES.resolve(room.getSimpleName() + ".java"));
    List<Method> methods = new ArrayList<>();
    for (Method method : room.getDeclaredMethods()) {
      boolean reply =
          Modifier.isPublic(method.getModifiers()) && method.getReturnType() == Reply.class;
      if (reply) {
        methods.add(method);
      }
    }
    methods.sort(
        java.util.Comparator.<Method>comparingInt(
                m -> source.indexOf("public static Reply " + m.getName() + "("))
            .thenComparing(m -> Arrays.toString(m.getParameterTypes())));
    return methods;
  }

  /** The first sentence of what the source says of a method. */
  private static String meaning(Method method) throws Exception {
    String source =
        Files.readString(SOURCES.resolve(method.getDeclaringClass().getSimpleName() + ".java"));
    var found =
        Pattern.compile(
                "/\\*\\*((?:(?!\\*/).)*?)\\*/\\s+public static Reply " + method.getName() + "\\(",
                Pattern.DOTALL)
            .matcher(source);
    assertTrue(found.find(), method::toString);
    String told = found.group(1).replaceAll("\\s*\\n\\s*\\* ?", " ").strip();
    return told.replaceAll("(?s)@.*", "").replaceAll("(?<=[a-z0-9])\\. .*|\\.$", "").strip();
  }
}
