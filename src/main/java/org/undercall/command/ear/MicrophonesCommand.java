package org.undercall.command.ear;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.microphone.MicrophoneFrames;
import org.undercall.adapter.microphone.Microphones;
import org.undercall.port.Fault;
import org.undercall.sound.Frame;
import org.undercall.sound.Frames;
import org.undercall.sound.Level;
import org.undercall.sound.LevelMeter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lists the microphones and, if asked, how loud each is. */
@Command(
    name = "microphones",
    description = "List the microphones; with --check, how loud each is.",
    mixinStandardHelpOptions = true,
    exitCodeList = "0:all is well")
public final class MicrophonesCommand implements Callable<Integer> {
  /** Speech close by is some 20 dB above this; a rule of thumb, no source. */
  private static final double TOO_QUIET = -60;

  private static final double TOO_MUCH_CLIPPED = 0.001;

  @Spec private CommandSpec spec;

  @Option(
      names = "--check",
      paramLabel = "SECONDS",
      description = "Listen to each for so long, 1 to 60 s. Speak meanwhile.")
  private Integer checkSeconds;

  /** Made by the command line reader. */
  public MicrophonesCommand() {}

  @Override
  public Integer call() throws Fault {
    if (checkSeconds != null && (checkSeconds < 1 || checkSeconds > 60)) {
      throw new ParameterException(
          spec.commandLine(), "found --check " + checkSeconds + ", expected 1 to 60 seconds");
    }
    PrintWriter out = spec.commandLine().getOut();
    List<String> names = Microphones.list();
    boolean well = true;
    for (String name : names) {
      out.println(name);
      well &= checkSeconds == null || check(name, out);
      out.flush();
    }
    return well ? 0 : 1;
  }

  private boolean check(String name, PrintWriter out) {
    try (Frames frames = MicrophoneFrames.open(Optional.of(name))) {
      LevelMeter meter = new LevelMeter();
      long samples = (long) checkSeconds * Frames.RATE;
      Optional<Frame> frame = frames.next();
      while (frame.isPresent() && frame.get().firstSample() < samples) {
        meter.add(frame.get());
        frame = frames.next();
      }
      out.println("  " + described(meter.level()));
      return true;
    } catch (Fault e) {
      spec.commandLine().getErr().println(e.getMessage());
      spec.commandLine().getErr().flush();
      return false;
    }
  }

  private static String described(Level level) {
    String advice = "fine";
    if (level.clipped() > TOO_MUCH_CLIPPED) {
      advice = "too loud, turn it down";
    } else if (level.rms() < TOO_QUIET) {
      advice = "too quiet, turn it up or speak closer";
    }
    return String.format(
        Locale.ROOT,
        "level %.1f dBFS, peak %.1f dBFS, clipped %.2f %%: %s",
        level.rms(),
        level.peak(),
        100 * level.clipped(),
        advice);
  }
}
