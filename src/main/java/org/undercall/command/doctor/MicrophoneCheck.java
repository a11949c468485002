package org.undercall.command.doctor;

import java.util.Locale;
import java.util.Optional;
import org.undercall.adapter.microphone.MicrophoneFrames;
import org.undercall.port.Fault;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.Level;
import org.undercall.sound.LevelMeter;
import org.undercall.sound.SoundCode;

/**
 * The microphone: there, opens, gives sound, and how loud.
 *
 * @param microphone listens for a moment
 */
record MicrophoneCheck(Microphone microphone) implements Check {
  /** A moment, so that nobody has to speak: what is heard is the room. */
  private static final long SAMPLES = Frames.RATE;

  private static final double TOO_MUCH_CLIPPED = 0.001;

  /** Louder than this without a voice is louder than most voices; a rule of thumb, no source. */
  private static final double LOUD_ROOM = -25;

  private static final String ELSE = "; until then, typed phrases work: undercall rehearse";

  /** Listens for a moment. */
  interface Microphone {
    Heard listen() throws Fault;
  }

  /**
   * What was heard.
   *
   * @param device its name and format
   * @param level of the sound
   */
  record Heard(String device, Level level) {}

  static MicrophoneCheck named(Optional<String> name) {
    return new MicrophoneCheck(() -> listen(name));
  }

  private static Heard listen(Optional<String> name) throws Fault {
    try (MicrophoneFrames frames = MicrophoneFrames.open(name)) {
      LevelMeter meter = new LevelMeter();
      Optional<Frame> frame = frames.next();
      while (frame.isPresent() && frame.get().firstSample() < SAMPLES) {
        meter.add(frame.get());
        frame = frames.next();
      }
      return new Heard(frames.described(), meter.level());
    }
  }

  @Override
  public String name() {
    return "microphone";
  }

  @Override
  public Found look() {
    try {
      return judged(microphone.listen());
    } catch (Fault e) {
      return Found.fault(e.getMessage(), remedy(e.code()) + ELSE);
    }
  }

  private static Found judged(Heard heard) {
    Level level = heard.level();
    String found =
        String.format(Locale.ROOT, "%s, the room at %.0f dBFS", heard.device(), level.rms());
    if (level.peak() <= LevelMeter.SILENCE) {
      return Found.note(
          DoctorCode.DEAD_SILENCE.line("dead silence from " + heard.device(), "some noise"),
          "unmute it, or choose another: undercall microphones, then --microphone NAME");
    }
    if (level.clipped() > TOO_MUCH_CLIPPED) {
      return Found.note(
          DoctorCode.OVERDRIVEN.line(found + ", overdriven", "less than full scale"),
          "turn its level down in the system's sound settings");
    }
    return level.rms() > LOUD_ROOM
        ? Found.note(
            DoctorCode.LOUD.line(found, "less than -25 dBFS while nobody speaks"),
            "turn its level down, or bring it closer to the mouth")
        : Found.well(found);
  }

  private static String remedy(Fault.Code code) {
    return switch ((SoundCode) code) {
      case NO_MICROPHONE ->
          "plug one in; if one is plugged in, see that the system's sound settings list it and that"
              + " you may use it (under Linux: the group audio)";
      case UNKNOWN_MICROPHONE -> "choose one of these: --microphone NAME";
      case MICROPHONE_REFUSED ->
          "end the program that uses it, or choose another: --microphone NAME";
      default -> "plug it in again, or choose another: undercall microphones";
    };
  }
}
