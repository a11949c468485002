package org.undercall.live;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A small room between a loudspeaker and a microphone: the sound itself and four reflections. The
 * way takes the same time all along, as in a room: where the machine was so late that the
 * microphone's server had to wait for sound, so much of it is left out.
 */
final class Room implements Runnable, AutoCloseable {
  /** How much sound may lie before the microphone, against a machine that is late. */
  private static final int AHEAD_MILLIS = 100;

  private static final int RATE = 16_000;
  private static final int BLOCK_MILLIS = 10;

  /** So often the way is looked at. */
  private static final int BLOCKS = 50;

  private static final int SLACK_MILLIS = 25;
  private static final Pattern LATENCY = Pattern.compile("Latency: (\\d+) usec");
  private static final int[] DELAYS = {0, 97, 263, 611, 1301};
  private static final double[] GAINS = {1, -0.5, 0.35, 0.25, -0.15};

  private final Process from;
  private final Process to;
  private final double gain;
  private final double[] past = new double[2048];
  private long at;
  private volatile int millis;

  /**
   * A room.
   *
   * @param from gives 16 kHz, 16 bit, one channel
   * @param to {@code pacat -v}, which takes it and tells how long the sound takes yet
   * @param gain of the sound itself
   */
  private Room(Process from, Process to, double gain) {
    this.from = from;
    this.to = to;
    this.gain = gain;
  }

  /** Options of {@code pacat}. */
  static List<String> options() {
    return List.of(
        "-v", "--format=s16le", "--rate=" + RATE, "--channels=1", "--latency-msec=" + AHEAD_MILLIS);
  }

  static Room between(Process from, Process to, double gain) {
    Room room = new Room(from, to, gain);
    for (Runnable work : List.<Runnable>of(room, room::readLatency)) {
      Thread thread = new Thread(work, "room");
      thread.setDaemon(true);
      thread.start();
    }
    return room;
  }

  private void readLatency() {
    try (Reader told = to.errorReader(StandardCharsets.UTF_8)) {
      StringBuilder line = new StringBuilder();
      for (int c = told.read(); c >= 0; c = told.read()) {
        if (c != '\r' && c != '\n') {
          line.append((char) c);
          continue;
        }
        Matcher latency = LATENCY.matcher(line);
        millis = latency.find() ? Integer.parseInt(latency.group(1)) / 1000 : millis;
        line.setLength(0);
      }
    } catch (IOException e) {
      // It was ended.
    }
  }

  @Override
  public void run() {
    byte[] block = new byte[2 * RATE * BLOCK_MILLIS / 1000];
    int way = 0;
    int most = 0;
    int leave = 0;
    try (InputStream in = from.getInputStream();
        OutputStream out = to.getOutputStream()) {
      out.write(new byte[2 * RATE * AHEAD_MILLIS / 1000]);
      for (int i = 1; in.readNBytes(block, 0, block.length) == block.length; i++) {
        through(block);
        if (leave > 0) {
          leave--;
          continue;
        }
        out.write(block);
        out.flush();
        most = Math.max(most, millis);
        if (i % BLOCKS == 0) {
          way = i <= 4 * BLOCKS ? most : way;
          leave = most > way + SLACK_MILLIS ? (most - way) / BLOCK_MILLIS : 0;
          most = 0;
        }
      }
    } catch (IOException e) {
      // One of both was ended.
    }
  }

  @Override
  public void close() {
    from.destroy();
    to.destroy();
  }

  private void through(byte[] block) {
    for (int i = 0; i < block.length; i += 2, at++) {
      past[(int) (at % past.length)] = (block[i] & 0xff) | (block[i + 1] << 8);
      double sum = 0;
      for (int k = 0; k < DELAYS.length; k++) {
        sum += GAINS[k] * past[(int) ((at - DELAYS[k] + past.length) % past.length)];
      }
      int heard = (int) Math.max(-32768, Math.min(32767, Math.round(gain * sum)));
      block[i] = (byte) heard;
      block[i + 1] = (byte) (heard >> 8);
    }
  }
}
