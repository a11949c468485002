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
  private final Consumer<Reply> show;

  /**
   * Notices. Any thread may call both consumers.
   *
   * @param print gets one line with the details, at once
   * @param show gets what will be said, at once, for example to show it on a screen
   */
  public DeviceNotices(Consumer<String> print, Consumer<Reply> show) {
    this.print = print;
    this.show = show;
  }

  @Override
  public void lost(String why) {
    print.accept(why);
    tell(Tell.microphoneGone());
  }

  @Override
  public void back() {
    tell(Tell.microphoneBack());
  }

  @Override
  public void dropped(long millis) {
    print.accept(Tell.soundLost(millis).text());
    tell(Tell.someSoundLost());
  }

  private void tell(Reply notice) {
    show.accept(notice);
    waiting.add(notice);
  }

  /** The oldest notice that was not said yet. */
  Optional<Reply> poll() {
    return Optional.ofNullable(waiting.poll());
  }
}
