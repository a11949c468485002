package org.undercall.adapter.speaker;

import java.util.function.Consumer;
import org.undercall.port.Voice;

/** Writes each reply as a line of text, without sound. */
public final class PrintVoice implements Voice {
  private final Consumer<String> lines;

  /** A voice that gives each reply to a writer of lines. */
  public PrintVoice(Consumer<String> lines) {
    this.lines = lines;
  }

  @Override
  public void say(String words) {
    lines.accept(words);
  }

  @Override
  public void close() {}
}
