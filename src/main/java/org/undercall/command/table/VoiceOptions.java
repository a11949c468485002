package org.undercall.command.table;

import java.nio.file.Path;
import java.util.Optional;
import org.undercall.adapter.microphone.MicrophoneFrames;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.command.option.ModelOption;
import org.undercall.command.option.SpeakerOptions;
import org.undercall.core.intent.AnswerWords;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.listen.AnswerEar;
import org.undercall.port.Ear;
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

  /** Opens ear and voice. */
  Opened open(CommandLine line) throws Fault {
    Frames frames =
        sound == null
            ? MicrophoneFrames.open(Optional.ofNullable(microphone))
            : WavFrames.open(sound);
    SpeechModel loaded = model.load(line.getErr());
    Voice voice = speaker.open(news -> line.getErr().println(news.line()));
    return new Opened(loaded, new AnswerEar(frames, loaded), voice);
  }

  /** Ear and voice, and the model that the ear needs. */
  record Opened(SpeechModel model, AnswerEar answers, Voice voice) implements AutoCloseable {
    VoicedInterview.Hears ear() {
      return new VoicedInterview.Hears() {
        @Override
        public Optional<RecognisedPhrase> next(AnswerWords allowed, long patienceMillis)
            throws Ear.EndOfInput {
          return answers.next(allowed, patienceMillis);
        }

        @Override
        public void forget() {
          answers.forget();
        }
      };
    }

    @Override
    public void close() {
      answers.close();
      voice.close();
      model.close();
    }
  }
}
