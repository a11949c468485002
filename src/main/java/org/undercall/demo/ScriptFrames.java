package org.undercall.demo;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Optional;
import java.util.Queue;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;

/**
 * The sound at the microphone of a demonstration: one line of the script after the other, each with
 * silence around it, and silence while the program speaks.
 */
final class ScriptFrames implements Frames {
  private static final int SILENCE_BEFORE = Frames.RATE / 2;
  private static final int SILENCE_AFTER = 3 * Frames.RATE / 2;

  private final Iterator<Script.Line> lines;
  private final Studio studio;
  private final LongSupplier voiceEndMillis;
  private final Queue<byte[]> waiting = new ArrayDeque<>();
  private long position;

  /** Makes the sound of a script's lines. */
  interface Studio {
    /** The sound of a line, spoken at a time, as {@link Frames} gives it. */
    byte[] sound(Script.Line line, long atMillis);
  }

  /**
   * Frames of lines.
   *
   * @param lines each is asked for when the one before it was heard and answered
   */
  ScriptFrames(Iterator<Script.Line> lines, Studio studio, LongSupplier voiceEndMillis) {
    this.lines = lines;
    this.studio = studio;
    this.voiceEndMillis = voiceEndMillis;
  }

  /** How much time has passed, in milliseconds. */
  long millis() {
    return position * 1000 / Frames.RATE;
  }

  @Override
  public Optional<Frame> next() {
    if (waiting.isEmpty() && lines.hasNext()) {
      load(lines.next());
    }
    byte[] sound = waiting.poll();
    if (sound == null) {
      return Optional.empty();
    }
    Frame frame = Frame.of(position, sound);
    position += frame.samples();
    return Optional.of(frame);
  }

  private void load(Script.Line line) {
    if (line.words() == null) {
      cut(new byte[2 * Frames.RATE * line.pause()]);
      return;
    }
    long start = millis() + SILENCE_BEFORE * 1000L / Frames.RATE;
    byte[] spoken = studio.sound(line, start);
    byte[] all = new byte[2 * SILENCE_BEFORE + spoken.length + 2 * SILENCE_AFTER];
    System.arraycopy(spoken, 0, all, 2 * SILENCE_BEFORE, spoken.length);
    cut(all);
  }

  private void cut(byte[] sound) {
    Stream.iterate(0, at -> at < sound.length, at -> at + Frames.FRAME_BYTES)
        .map(at -> Arrays.copyOfRange(sound, at, Math.min(sound.length, at + Frames.FRAME_BYTES)))
        .forEach(waiting::add);
  }

  /** The program has spoken: that time has passed in silence at the microphone. */
  @Override
  public void discardWaiting() {
    waiting.clear();
    position = Math.max(position, voiceEndMillis.getAsLong() * Frames.RATE / 1000);
  }

  @Override
  public void close() {}
}
