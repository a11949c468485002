package org.undercall;

import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import org.undercall.adapter.microphone.MicrophoneWatch;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Tell;

/**
 * What is to be said about the devices: printed at once, and kept until the thread that speaks asks
 * for it. Any thread may tell.
 */
public final class DeviceNotices implements MicrophoneWatch {
  private final Queue<Reply> waiting = new ConcurrentLinkedQueue<>();
  private final Consumer<String> print;

  /** Notices that are printed by {@code print}, which any thread may call. */
  public DeviceNotices(Consumer<String> print) {
    this.print = print;
  }

  @Override
  public void lost(String why) {
    print.accept(why);
    waiting.add(Tell.microphoneGone());
  }

  @Override
  public void back() {
    waiting.add(Tell.microphoneBack());
  }

  @Override
  public void dropped(long millis) {
    print.accept(Tell.soundLost(millis).text());
    waiting.add(Tell.someSoundLost());
  }

  /** The oldest notice that was not said yet. */
  Optional<Reply> poll() {
    return Optional.ofNullable(waiting.poll());
  }
}
