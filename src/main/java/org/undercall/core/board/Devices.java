package org.undercall.core.board;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The last news of the microphone and of the loudspeaker that the board still shows.
 *
 * @param microphone empty if there is nothing to tell
 * @param speaker empty if there is nothing to tell
 */
public record Devices(Optional<DeviceNews> microphone, Optional<DeviceNews> speaker) {
  /** Nothing to tell. */
  public static final Devices WELL = new Devices(Optional.empty(), Optional.empty());

  /** After news; lost sound does not bring back a microphone that is gone. */
  public Devices after(DeviceNews news) {
    if (!news.isOfMicrophone()) {
      return new Devices(microphone, Optional.of(news));
    }
    boolean gone = microphone.filter(DeviceNews::lasts).isPresent();
    return gone && news == DeviceNews.SOUND_LOST ? this : new Devices(Optional.of(news), speaker);
  }

  /** After a phrase was heard: what is over has been seen. */
  public Devices seen() {
    return new Devices(microphone.filter(DeviceNews::lasts), speaker.filter(DeviceNews::lasts));
  }

  /** What there is to tell, the microphone first. */
  public List<DeviceNews> news() {
    return Stream.of(microphone, speaker).flatMap(Optional::stream).toList();
  }
}
