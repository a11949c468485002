package org.undercall.command.table;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.microphone.MicrophoneFrames;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.command.option.ModelOption;
import org.undercall.command.option.SpeakerOptions;
import org.undercall.core.writing.Interview;
import org.undercall.listen.AnswerEar;
import org.undercall.listen.Answers;
import org.undercall.port.Fault;
import org.undercall.port.Voice;
import org.undercall.sound.Frames;
import org.undercall.sound.WavFrames;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How a procedure is asked for by voice. */
public final class VoiceOptions {
  @Mixin private ModelOption model;
  @Mixin private SpeakerOptions speaker;

  @Option(
      names = "--by-voice",
      description = "Ask aloud and hear the answers; each is read back before it is taken.")
  private boolean wanted;

  @Option(
      names = "--sound",
      paramLabel = "FILE",
      description = "With --by-voice: hear a WAV file in place of the microphone.")
  private Path sound;

  @Option(
      names = "--microphone",
      paramLabel = "NAME",
      description = "With --by-voice: a microphone with this in its name.")
  private String microphone;

  /** Made by the command line reader. */
  public VoiceOptions() {}

  boolean wanted() {
    return wanted;
  }

  /** Finds settings out of their limits before anything is asked. */
  void check() {
    speaker.check();
  }

  /** Asks with an ear and a voice. */
  @FunctionalInterface
  interface Asking {
    /** What was answered. */
    Interview with(Answers ear, Voice voice) throws Exception;
  }

  /** Opens ear and voice, asks with them, and closes them, also if one cannot be opened. */
  Interview ask(CommandLine line, Asking asking) throws Exception {
    return ask(
        this::frames,
        () -> model.load(line.getErr()),
        () -> speaker.open(news -> line.getErr().println(news.line())),
        asking);
  }

  private Frames frames() throws Fault {
    return sound == null
        ? MicrophoneFrames.open(Optional.ofNullable(microphone))
        : WavFrames.open(sound);
  }

  static Interview ask(
      Callable<Frames> sound,
      Callable<RecogniserMaker> model,
      Callable<Voice> speaker,
      Asking asking)
      throws Exception {
    try (Frames frames = sound.call();
        RecogniserMaker recognisers = model.call();
        Voice voice = speaker.call();
        AnswerEar ear = new AnswerEar(frames, recognisers)) {
      return asking.with(ear, voice);
    }
  }
}
