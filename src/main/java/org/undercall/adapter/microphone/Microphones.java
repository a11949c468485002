package org.undercall.adapter.microphone;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Line;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.TargetDataLine;
import org.undercall.port.Fault;
import org.undercall.sound.SoundCode;

/** The microphones of this machine. */
public final class Microphones {
  private Microphones() {}

  /**
   * Their names, in the system's order.
   *
   * @throws Fault SND-020 if there is none
   */
  public static List<String> list() throws Fault {
    return required().stream().map(Mixer.Info::getName).toList();
  }

  /**
   * The one that is meant: the first of that very name, or else the first that has it in its name.
   */
  static Mixer.Info find(Optional<String> wanted) throws Fault {
    List<Mixer.Info> all = required();
    if (wanted.isEmpty()) {
      return all.get(0);
    }
    String name = wanted.get().toLowerCase(Locale.ROOT);
    return all.stream()
        .filter(info -> lower(info).equals(name))
        .findFirst()
        .or(() -> all.stream().filter(info -> lower(info).contains(name)).findFirst())
        .orElseThrow(() -> unknown(wanted.get(), all));
  }

  private static Fault unknown(String wanted, List<Mixer.Info> all) {
    return new Fault(
        SoundCode.UNKNOWN_MICROPHONE,
        wanted,
        "is no microphone, expected one of "
            + all.stream().map(Mixer.Info::getName).collect(Collectors.joining(", ")));
  }

  private static String lower(Mixer.Info info) {
    return info.getName().toLowerCase(Locale.ROOT);
  }

  private static List<Mixer.Info> required() throws Fault {
    List<Mixer.Info> all =
        Arrays.stream(AudioSystem.getMixerInfo()).filter(Microphones::records).toList();
    if (all.isEmpty()) {
      throw new Fault(SoundCode.NO_MICROPHONE, "microphone", "none", "one; plug one in");
    }
    return all;
  }

  private static boolean records(Mixer.Info info) {
    return Arrays.stream(AudioSystem.getMixer(info).getTargetLineInfo())
        .map(Line.Info::getLineClass)
        .anyMatch(TargetDataLine.class::isAssignableFrom);
  }
}
