package org.undercall.listen;

import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import org.undercall.adapter.microphone.MicrophoneWatch;
import org.undercall.adapter.speaker.SpeakerNews;
import org.undercall.core.board.DeviceNews;
import org.undercall.core.reply.Reply;
import org.undercall.core.reply.Tell;

/**
 * What is to be said about the devices: printed at once, and kept until the thread that speaks asks
 * for it. Any thread may tell.
 */
public final class DeviceNotices implements MicrophoneWatch {
  private final Queue<Reply> waiting = new ConcurrentLinkedQueue<>();
  private final Consumer<String> print;
  private final Consumer<DeviceNews> show;

  /**
   * Notices. Any thread may call both consumers.
   *
   * @param print gets one line with the details, at once
   * @param show gets the news, at once, for example to show it on a screen
   */
  public DeviceNotices(Consumer<String> print, Consumer<DeviceNews> show) {
    this.print = print;
    this.show = show;
  }

  @Override
  public void lost(String why) {
    print.accept(why);
    tell(DeviceNews.MICROPHONE_GONE);
  }

  @Override
  public void back() {
    tell(DeviceNews.MICROPHONE_BACK);
  }

  @Override
  public void dropped(long millis) {
    print.accept(Tell.soundLost(millis).text());
    tell(DeviceNews.SOUND_LOST);
  }

  private void tell(DeviceNews news) {
    show.accept(news);
    waiting.add(news.words());
  }

  /** The loudspeaker fails or works again: printed and shown, not said. */
  public void speaker(SpeakerNews news) {
    print.accept(news.line());
    show.accept(news.works() ? DeviceNews.SPEAKER_BACK : DeviceNews.SPEAKER_GONE);
  }

  /** The oldest notice that was not said yet. */
  Optional<Reply> poll() {
    return Optional.ofNullable(waiting.poll());
  }
}
