package org.undercall.docs;

import java.io.IOException;
import java.lang.reflect.AccessibleObject;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The codes of faults that the program can print: those of its enums, however they state them, and
 * those written out in the sources, the resources and the launchers.
 */
final class CodesInUse {
  private static final Path CLASSES = Path.of("target/classes");

  /** Three letters and a number of three digits, but not the name of a hash. */
  private static final Pattern CODE = Pattern.compile("\\b(?!SHA-)[A-Z]{3}-[0-9]{3}\\b");

  private CodesInUse() {}

  /** Each code with what it means as the code states it, or an empty text if it states nothing. */
  static NavigableMap<String, String> all() throws IOException, ReflectiveOperationException {
    NavigableMap<String, String> all = new TreeMap<>();
    for (Path file : sources()) {
      Matcher found = CODE.matcher(Files.readString(file));
      while (found.find()) {
        all.put(found.group(), "");
      }
    }
    for (Object constant : constants()) {
      List<String> texts = texts(constant);
      Optional<String> code = texts.stream().filter(CODE.asMatchPredicate()).findFirst();
      code.ifPresent(c -> all.put(c, sentence(texts)));
    }
    return all;
  }

  private static List<Path> sources() throws IOException {
    List<Path> files = new ArrayList<>(List.of(Path.of("undercall"), Path.of("undercall.cmd")));
    for (String folder : List.of("src/main", "src/dist")) {
      try (Stream<Path> below = Files.walk(Path.of(folder))) {
        below
            .filter(f -> f.toString().matches(".*(\\.(java|json|sql|cmd)|/undercall)"))
            .sorted()
            .filter(Files::isRegularFile)
            .forEach(files::add);
      }
    }
    return files;
  }

  private static List<Object> constants() throws IOException, ReflectiveOperationException {
    List<Object> constants = new ArrayList<>();
    try (Stream<Path> below = Files.walk(CLASSES)) {
      for (Path file : below.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
        String path =
            CLASSES.relativize(file).toString().replace(file.getFileSystem().getSeparator(), ".");
        Class<?> type =
            Class.forName(
                path.substring(0, path.length() - ".class".length()),
                false,
                CodesInUse.class.getClassLoader());
        if (type.isEnum()) {
          constants.addAll(List.of(type.getEnumConstants()));
        }
      }
    }
    return constants;
  }

  /** What a constant holds or tells as text, apart from its name. */
  private static List<String> texts(Object constant) throws ReflectiveOperationException {
    Class<?> type = ((Enum<?>) constant).getDeclaringClass();
    List<String> texts = new ArrayList<>();
    for (Field field : type.getDeclaredFields()) {
      if (isText(field, field.getType(), field.getModifiers())) {
        texts.add((String) field.get(constant));
      }
    }
    List<Method> methods = new ArrayList<>(List.of(type.getDeclaredMethods()));
    for (Class<?> contract : type.getInterfaces()) {
      methods.addAll(List.of(contract.getMethods()));
    }
    for (Method method : methods) {
      if (method.getParameterCount() == 0
          && isText(method, method.getReturnType(), method.getModifiers())) {
        texts.add((String) method.invoke(constant));
      }
    }
    return texts.stream().filter(t -> t != null).toList();
  }

  private static boolean isText(AccessibleObject member, Class<?> type, int modifiers) {
    return type == String.class && !Modifier.isStatic(modifiers) && member.trySetAccessible();
  }

  private static String sentence(List<String> texts) {
    return texts.stream().filter(t -> t.contains(" ") && t.endsWith(".")).findFirst().orElse("");
  }
}
