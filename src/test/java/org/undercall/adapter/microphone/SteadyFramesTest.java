package org.undercall.adapter.microphone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.undercall.port.Fault;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.SoundCode;

/** A clock, threads and devices by hand: whatever is done aside is done at once, unless held. */
class SteadyFramesTest {
  /** A device that gives so many frames and is then gone. */
  private static final class Device implements Frames {
    private final int frames;
    private final byte mark;
    private int given;
    private int closed;
    private long dropped;

    Device(int frames, int mark) {
      this.frames = frames;
      this.mark = (byte) mark;
    }

    @Override
    public Optional<Frame> next() throws Fault {
      if (given == frames) {
        throw new Fault(SoundCode.MICROPHONE_LOST, "fake", "is gone");
      }
      byte[] sound = new byte[FRAME_BYTES];
      sound[0] = mark;
      return Optional.of(Frame.of((long) FRAME_SAMPLES * given++, sound));
    }

    @Override
    public long droppedMillis() {
      return dropped;
    }

    @Override
    public void close() {
      closed++;
    }
  }

  private final class FakePace implements Pace {
    @Override
    public long nowMillis() {
      return now;
    }

    @Override
    public void rest(long millis) {
      now += millis;
    }

    @Override
    public void aside(Runnable work) {
      if (hanging) {
        held.add(work);
      } else {
        work.run();
      }
    }
  }

  private final class Notes implements MicrophoneWatch {
    @Override
    public void lost(String why) {
      notes.add("lost at " + now + ": " + why);
    }

    @Override
    public void back() {
      notes.add("back at " + now);
    }

    @Override
    public void dropped(long millis) {
      notes.add("dropped " + millis);
    }
  }

  private final Deque<Device> devices = new ArrayDeque<>();
  private final List<String> notes = new ArrayList<>();
  private final List<Runnable> held = new ArrayList<>();
  private long now;
  private int tries;
  private boolean hanging;

  private SteadyFrames steady() throws Fault {
    return new SteadyFrames(this::open, new Notes(), new FakePace());
  }

  private Frames open() throws Fault {
    tries++;
    if (devices.isEmpty()) {
      throw new Fault(SoundCode.NO_MICROPHONE, "microphone", "found none");
    }
    return devices.poll();
  }

  /** The first bytes of so many frames; a gap in their places is a point before. */
  private static String taken(SteadyFrames frames, int count) throws Fault {
    StringBuilder marks = new StringBuilder();
    long place = 0;
    for (int i = 0; i < count; i++) {
      Frame frame = frames.next().orElseThrow();
      marks.append(i > 0 && frame.firstSample() != place ? "." : "").append(frame.sound()[0]);
      place = frame.firstSample() + frame.samples();
    }
    return marks.toString();
  }

  @Test
  void aMicrophoneThatCannotBeOpenedAtTheStartIsAFault() {
    assertThrows(Fault.class, this::steady);
  }

  @Nested
  class WhenItIsLost {
    private final Device first = new Device(3, 1);

    private SteadyFrames lost() throws Fault {
      devices.add(first);
      SteadyFrames frames = steady();
      taken(frames, 4);
      return frames;
    }

    @Test
    void silenceGoesOnAtThePaceOfTheClockAfterAGap() throws Fault {
      devices.add(first);
      SteadyFrames frames = steady();
      assertEquals("111.0000", taken(frames, 7));
      assertEquals(90, now);
      assertEquals(List.of("lost at 0: SND-023 fake: is gone"), notes);
      assertEquals(1, first.closed);
    }

    @Test
    void itIsLookedForOnceASecond() throws Fault {
      SteadyFrames frames = lost();
      tries = 0;
      taken(frames, 334);
      assertEquals(10_020, now);
      assertEquals(9, tries);
    }

    @Test
    void itsSoundComesAgainAfterAGap() throws Fault {
      SteadyFrames frames = lost();
      devices.add(new Device(10, 2));
      String marks = taken(frames, 38);
      assertTrue(marks.contains("0.222"), marks);
      assertEquals("back at 1020", notes.get(1));
    }

    @Test
    void aDeviceThatOpensButGivesNothingIsNotBack() throws Fault {
      SteadyFrames frames = lost();
      Device dead = new Device(0, 2);
      devices.add(dead);
      taken(frames, 60);
      assertEquals(1, notes.size());
      assertEquals(1, dead.closed);
    }

    @Test
    void itCanBeLostAgain() throws Fault {
      SteadyFrames frames = lost();
      devices.add(new Device(1, 2));
      devices.add(new Device(1, 3));
      String marks = taken(frames, 200);
      assertTrue(marks.contains("2.0") && marks.contains("3.0"), marks);
      assertEquals(5, notes.size());
    }

    @Test
    void whatWasDroppedBeforeStillCounts() throws Fault {
      devices.add(first);
      SteadyFrames frames = steady();
      first.dropped = 60;
      devices.add(new Device(100, 2));
      taken(frames, 50);
      assertEquals(60, frames.droppedMillis());
      assertEquals(1, notes.stream().filter("dropped 60"::equals).count());
    }
  }

  @Nested
  class WhenOpeningHangs {
    private SteadyFrames lost() throws Fault {
      devices.add(new Device(1, 1));
      SteadyFrames frames = steady();
      frames.next();
      hanging = true;
      frames.next();
      held.clear();
      return frames;
    }

    @Test
    void threeTriesAreBegunAndNoMore() throws Fault {
      taken(lost(), 2_000);
      assertEquals(60_000, now);
      assertEquals(3, held.size());
    }

    @Test
    void whatATryOpensTooLateIsClosed() throws Fault {
      SteadyFrames frames = lost();
      taken(frames, 240);
      Device late = new Device(5, 2);
      devices.add(late);
      held.get(0).run();
      assertEquals(1, late.closed);
      assertEquals(1, notes.size());
    }

    @Test
    void aTryThatEndsMakesRoomForAnother() throws Fault {
      SteadyFrames frames = lost();
      taken(frames, 2_000);
      held.get(0).run();
      hanging = false;
      devices.add(new Device(100, 2));
      taken(frames, 50);
      assertTrue(notes.get(1).startsWith("back"), notes.toString());
    }

    @Test
    void closingMeanwhileClosesWhatIsOpenedLater() throws Fault {
      SteadyFrames frames = lost();
      taken(frames, 40);
      frames.close();
      Device late = new Device(5, 2);
      devices.add(late);
      held.get(0).run();
      assertEquals(1, late.closed);
      assertEquals(Optional.empty(), frames.next());
    }
  }
}
