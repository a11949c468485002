package org.undercall;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.MethodCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The packages")
class ArchitectureTest {
  private static final String ROOT = "org.undercall";
  private static final String CORE = ROOT + ".core";
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  /** Classes of the Java library that ask the machine for something. */
  private static final Set<String> MACHINE =
      Set.of(
          "java.lang.System",
          "java.lang.Thread",
          "java.lang.ThreadLocal",
          "java.lang.Runtime",
          "java.lang.ProcessBuilder",
          "java.lang.ClassLoader",
          "java.time.Clock",
          "java.util.Calendar",
          "java.util.Date",
          "java.util.Properties",
          "java.util.Random",
          "java.util.Scanner",
          "java.util.SplittableRandom",
          "java.util.ServiceLoader",
          "java.util.Timer",
          "java.util.TimeZone",
          "java.util.UUID");

  /** Calls that ask the machine for something, as class and method. */
  private static final Set<String> ASKING =
      Set.of(
          "Boolean.getBoolean",
          "Class.forName",
          "Class.getResource",
          "Class.getResourceAsStream",
          "Integer.getInteger",
          "List.parallelStream",
          "Collection.parallelStream",
          "Locale.getDefault",
          "Locale.setDefault",
          "Long.getLong",
          "Math.random",
          "Object.wait",
          "Object.notify",
          "ZoneId.systemDefault",
          "DateTimeFormatter.ofPattern");

  /** Calls that use the locale of the machine unless one is named. */
  private static final Set<String> NAMING_A_LOCALE =
      Set.of("String.toLowerCase", "String.toUpperCase", "String.format");

  @Nested
  @DisplayName("of the core")
  class Core {
    @Test
    @DisplayName("use the plain Java library and each other, nothing else")
    void plainJava() {
      classes()
          .that()
          .resideInAPackage(CORE + "..")
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  CORE + "..",
                  "java.lang",
                  "java.lang.invoke",
                  "java.lang.runtime",
                  "java.util",
                  "java.util.function",
                  "java.util.stream",
                  "java.util.regex",
                  "java.time..",
                  "java.math"))
          .check(CLASSES);
    }

    @Test
    @DisplayName("never meet a clock, a random source, a thread or the machine")
    void noMachine() {
      noClasses()
          .that()
          .resideInAPackage(CORE + "..")
          .should()
          .dependOnClassesThat(
              describe("ask the machine", (JavaClass c) -> MACHINE.contains(c.getFullName())))
          .check(CLASSES);
    }

    @Test
    @DisplayName("never ask for the time, chance, a property, or the locale or zone of the machine")
    void noAsking() {
      noClasses()
          .that()
          .resideInAPackage(CORE + "..")
          .should()
          .callMethodWhere(asksTheMachine())
          .check(CLASSES);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource({
      "term, ''",
      "procedure, term",
      "intent, term",
      "event, term",
      "fastening, term procedure",
      "check, term procedure fastening",
      "difference, term procedure",
      "reply, term procedure",
      "decision, term procedure intent event fastening check reply",
      "review, term procedure event decision fastening",
      "writing, term procedure intent fastening reply",
      "board, term procedure intent event decision reply"
    })
    @DisplayName("point only the way the arrows go")
    void arrows(String part, String uses) {
      List<String> allowed =
          Stream.concat(Stream.of(part), Stream.of(uses.split(" ")))
              .filter(p -> !p.isEmpty())
              .map(p -> CORE + "." + p)
              .toList();
      classes()
          .that()
          .resideInAPackage(CORE + "." + part)
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage("java..").or(resideInAnyPackage(allowed.toArray(String[]::new))))
          .check(CLASSES);
    }

    @Test
    @DisplayName("have no cycle")
    void noCycle() {
      slices().matching(CORE + ".(*)..").should().beFreeOfCycles().check(CLASSES);
    }
  }

  @Nested
  @DisplayName("of the whole house")
  class House {
    @Test
    @DisplayName("have no cycle anywhere")
    void noCycle() {
      slices().matching(ROOT + ".(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource({
      "core, ''",
      "text, core",
      "port, core text",
      "sound, core text port",
      "web, core text port",
      "adapter, core text port sound web",
      "listen, core text port sound adapter",
      "session, core text port sound adapter listen",
      "demo, core text port sound adapter listen session",
      "command, core text port sound adapter listen session demo"
    })
    @DisplayName("are rooms on floors: each uses only those below it")
    void floors(String room, String below) {
      classes()
          .that()
          .resideInAPackage(ROOT + "." + room + "..")
          .should()
          .onlyDependOnClassesThat(only(room + " " + below))
          .check(CLASSES);
    }

    @Test
    @DisplayName("are all named above, and the root itself is empty")
    void everyRoom() {
      classes()
          .should()
          .resideInAnyPackage(
              rooms("core text port sound web adapter listen session demo command")
                  .toArray(String[]::new))
          .check(CLASSES);
    }

    @Test
    @DisplayName("that are adapters never use each other")
    void adapters() {
      slices().matching(ROOT + ".adapter.(*)..").should().notDependOnEachOther().check(CLASSES);
    }
  }

  private static Stream<String> rooms(String names) {
    return Stream.of(names.split(" ")).filter(n -> !n.isEmpty()).map(n -> ROOT + "." + n + "..");
  }

  private static DescribedPredicate<JavaClass> only(String names) {
    return resideInAnyPackage(rooms(names).toArray(String[]::new))
        .or(describe("foreign", c -> !c.getPackageName().startsWith(ROOT)));
  }

  private static DescribedPredicate<JavaMethodCall> asksTheMachine() {
    return describe(
        "asks the machine",
        (JavaMethodCall call) -> {
          MethodCallTarget target = call.getTarget();
          String name = target.getOwner().getSimpleName() + "." + target.getName();
          boolean now =
              target.getName().equals("now")
                  && target.getOwner().getPackageName().startsWith("java.time");
          return now
              || ASKING.contains(name)
              || name.equals("String.formatted")
              || (NAMING_A_LOCALE.contains(name) && !namesLocale(call));
        });
  }

  private static boolean namesLocale(JavaCall<?> call) {
    return call.getTarget().getRawParameterTypes().stream()
        .anyMatch(type -> type.isEquivalentTo(Locale.class));
  }
}
