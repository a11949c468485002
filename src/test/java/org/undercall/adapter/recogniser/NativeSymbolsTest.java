package org.undercall.adapter.recogniser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The libraries of other systems cannot be loaded here; the names in them can be read. */
class NativeSymbolsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"/linux-x86-64/libvosk.so", "/win32-x86-64/libvosk.dll", "/darwin/libvosk.dylib"})
  void everyFunctionThatIsCalledIsNamedInTheLibrary(String library) throws IOException {
    String names = text(library);
    List<String> called =
        Stream.of(Vosk.class.getDeclaredMethods())
            .filter(method -> !Modifier.isStatic(method.getModifiers()))
            .map(Method::getName)
            .toList();
    assertFalse(called.isEmpty());
    assertEquals(List.of(), called.stream().filter(name -> !named(names, name)).toList());
  }

  /** Why the library's own Java class, which binds this function too, is not used. */
  @Test
  void theMacLibraryLacksTheChangeOfAWordList() throws IOException {
    assertFalse(named(text("/darwin/libvosk.dylib"), "vosk_recognizer_set_grm"));
  }

  private static boolean named(String names, String name) {
    return names.contains("\0" + name + "\0") || names.contains("\0_" + name + "\0");
  }

  private static String text(String library) throws IOException {
    try (InputStream in = Vosk.class.getResourceAsStream(library)) {
      assertNotNull(in, library);
      return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
    }
  }
}
