package org.undercall.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.Dialogue;
import org.undercall.Ear;
import org.undercall.LazyEar;
import org.undercall.SoundEar;
import org.undercall.Time;
import org.undercall.Voice;
import org.undercall.Work;
import org.undercall.adapter.microphone.Frames;
import org.undercall.adapter.microphone.MicrophoneFrames;
import org.undercall.adapter.microphone.SoundFault;
import org.undercall.adapter.microphone.WavFrames;
import org.undercall.adapter.recogniser.ModelFault;
import org.undercall.adapter.speaker.Voices;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Walks a procedure by voice. */
@Command(
    name = "work",
    description = "Walk a procedure by voice; an open session of it is taken up again.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:the session is complete",
      "1:a fault, one line with its code",
      "2:wrong usage",
      "3:the session is not complete"
    })
public final class WorkCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private WorkOptions options;
  @Mixin private ModelOption model;
  @Mixin private CalledOption called;
  @Mixin private BoardOptions boardOptions;

  @Option(
      names = "--sound",
      paramLabel = "FILE",
      description = "Hear a WAV file in place of the microphone.")
  private Path sound;

  @Option(
      names = "--microphone",
      paramLabel = "NAME",
      description = "A microphone with this in its name (default: the system's choice).")
  private String microphone;

  @Option(
      names = "--voice",
      paramLabel = "NAME",
      defaultValue = "mary",
      description = "mary, system, or none to print only (default: ${DEFAULT-VALUE}).")
  private String voiceName;

  /** Made by the command line reader. */
  public WorkCommand() {}

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Dialogue dialogue = new Dialogue(out);
    try (Frames frames = frames();
        BoardOptions.Opened board = boardOptions.open(out)) {
      LazyEar ear = LazyEar.start(() -> soundEar(frames, err));
      Time time = time(ear);
      try (Work work = options.open(out);
          Voice spoken = Voices.spoken(voiceName, Voices.cacheFolder(), dialogue::print);
          Voice voice = dialogue.of(spoken);
          Ear printed = dialogue.of(board.of(called.of(ear, voice, time)))) {
        return RehearseCommand.status(
            work.run(printed, voice, time, options.remindAfter(), board.display()));
      }
    }
  }

  private Frames frames() throws SoundFault {
    return sound != null
        ? WavFrames.open(sound)
        : MicrophoneFrames.open(Optional.ofNullable(microphone));
  }

  private Ear soundEar(Frames frames, PrintWriter err) throws ModelFault {
    return SoundEar.standard(frames, model.load(err));
  }

  /** A file is heard faster than life: its own time counts. */
  private Time time(LazyEar ear) {
    return sound == null
        ? Time.ofMachine()
        : Time.ofSound(OffsetDateTime.now(ZoneId.systemDefault()), ear::millis);
  }
}
