package org.undercall.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.Reader;
import java.io.StringReader;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.undercall.port.Ear;
import org.undercall.port.Heard;

@DisplayName("The keyboard ear")
class KeyboardEarTest {
  private static final long LONG = 20_000;

  private static String next(Ear ear) throws Ear.EndOfInput {
    return ear.next(Set.of(), LONG).map(Heard::text).orElse("nothing");
  }

  @Test
  @DisplayName("gives a phrase for each line, digits as words, and then its end")
  void lines() throws Ear.EndOfInput {
    try (Ear ear = new KeyboardEar(new StringReader("Step completed\n175 Nm."), () -> {})) {
      assertEquals("step completed", next(ear));
      assertEquals("one seven five newton meters", next(ear));
      assertThrows(Ear.EndOfInput.class, () -> next(ear));
    }
  }

  @Test
  @DisplayName("gives no phrase for an empty line")
  void emptyLine() throws Ear.EndOfInput {
    try (Ear ear = new KeyboardEar(new StringReader("\n  \nnote"), () -> {})) {
      assertEquals("nothing", next(ear));
      assertEquals("nothing", next(ear));
      assertEquals("note", next(ear));
    }
  }

  @Test
  @DisplayName("gives no phrase when none is typed in time, and the late one next time")
  void patience() throws Exception {
    try (PipedWriter keys = new PipedWriter();
        Ear ear = new KeyboardEar(new PipedReader(keys), () -> {})) {
      assertEquals(Optional.empty(), ear.next(Set.of(), 1));
      keys.write("take a break now\n");
      keys.flush();
      assertEquals("take a break now", next(ear));
    }
  }

  @Test
  @DisplayName("ends when the keyboard breaks")
  void broken() {
    Reader broken =
        new Reader() {
          @Override
          public int read(char[] into, int from, int length) throws IOException {
            throw new IOException("gone");
          }

          @Override
          public void close() {}
        };
    try (Ear ear = new KeyboardEar(broken, () -> {})) {
      assertThrows(Ear.EndOfInput.class, () -> next(ear));
    }
  }

  @Test
  @DisplayName("prompts before each line, and says that it was typed")
  void prompts() throws Ear.EndOfInput {
    AtomicInteger prompts = new AtomicInteger();
    try (Ear ear = new KeyboardEar(new StringReader("a\nb\n"), prompts::incrementAndGet)) {
      next(ear);
      assertEquals(Heard.How.TYPED, ear.next(Set.of(), LONG).orElseThrow().how());
      assertEquals(2, prompts.get());
    }
  }
}
