package org.undercall.listen;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.undercall.core.intent.IntentKind;
import org.undercall.port.Ear;
import org.undercall.port.Heard;

/** Takes typed phrases, one a line, in place of spoken ones. */
public final class KeyboardEar implements Ear {
  private final BlockingQueue<Optional<String>> lines = new LinkedBlockingQueue<>();
  private final Runnable prompt;
  private boolean prompted;

  /**
   * An ear for a keyboard.
   *
   * @param keyboard read by a thread of its own until its end
   * @param prompt run before each line is waited for, and again after a reply
   */
  public KeyboardEar(Reader keyboard, Runnable prompt) {
    this.prompt = prompt;
    Thread thread = new Thread(() -> read(new BufferedReader(keyboard)), "keyboard");
    thread.setDaemon(true);
    thread.start();
  }

  private void read(BufferedReader keyboard) {
    try {
      for (String line = keyboard.readLine(); line != null; line = keyboard.readLine()) {
        lines.add(Optional.of(line));
      }
    } catch (IOException e) {
      lines.add(Optional.empty());
      return;
    }
    lines.add(Optional.empty());
  }

  @Override
  public Optional<Heard> next(Set<IntentKind> allowed, long patienceMillis) throws EndOfInput {
    if (!prompted) {
      prompt.run();
      prompted = true;
    }
    try {
      Optional<String> line = lines.poll(patienceMillis, TimeUnit.MILLISECONDS);
      if (line == null) {
        return Optional.empty();
      }
      prompted = false;
      Heard heard = Heard.typed(line.orElseThrow(EndOfInput::new));
      return Optional.of(heard).filter(h -> !h.phrase().words().isEmpty());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new EndOfInput();
    }
  }

  /** The lines that wait are kept: they are no echo of a reply. */
  @Override
  public void forget() {
    prompted = false;
  }

  @Override
  public void close() {}
}
