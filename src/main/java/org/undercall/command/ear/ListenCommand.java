package org.undercall.command.ear;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.undercall.adapter.microphone.MicrophoneFrames;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.adapter.speaker.PrintVoice;
import org.undercall.command.option.CalledOption;
import org.undercall.command.option.HeardText;
import org.undercall.command.option.ModelOption;
import org.undercall.command.option.OwnWordsOption;
import org.undercall.core.decision.CutValue;
import org.undercall.core.decision.Decider;
import org.undercall.core.decision.Phase;
import org.undercall.core.intent.Intent;
import org.undercall.core.intent.IntentKind;
import org.undercall.core.intent.Interpreter;
import org.undercall.core.intent.RecognisedPhrase;
import org.undercall.listen.PatientEar;
import org.undercall.listen.SoundEar;
import org.undercall.port.Ear;
import org.undercall.port.Ear.EndOfInput;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.sound.Frames;
import org.undercall.sound.WavFrames;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Shows what is heard in a file or from a microphone, and what it means. */
@Command(
    name = "listen",
    description = "Show what is heard, one line a phrase, and what it means.",
    mixinStandardHelpOptions = true,
    exitCodeList = "0:all is well")
public final class ListenCommand implements Callable<Integer> {
  private static final long PATIENCE_MILLIS = 60_000;

  @Spec private CommandSpec spec;
  @Mixin private ModelOption model;
  @Mixin private OwnWordsOption ownWords;
  @Mixin private CalledOption called;

  @ArgGroup(exclusive = true, multiplicity = "1")
  private Source source;

  @Option(
      names = "--intents",
      split = ",",
      paramLabel = "KIND",
      description = "What may be said: ${COMPLETION-CANDIDATES}. Default: everything but notes.")
  private List<IntentKind> intents;

  @Option(
      names = "--phase",
      paramLabel = "PHASE",
      description = "What may be said in a phase of the work: ${COMPLETION-CANDIDATES}.")
  private Phase phase;

  @Option(names = "--free", description = "Any words may be said; nothing is read from them.")
  private boolean free;

  @Option(
      names = "--confidence",
      defaultValue = "0.5",
      paramLabel = "SHARE",
      description = "Least confidence of a word, from 0 to 1. Default: ${DEFAULT-VALUE}.")
  private double confidence;

  @Option(names = "--json", description = "Print one JSON object a phrase.")
  private boolean json;

  /** Where the sound comes from. */
  private static final class Source {
    @Option(
        names = "--sound",
        required = true,
        paramLabel = "FILE",
        description = "A WAV file: 8 to 96 kHz, 8 to 32 bits or floating point, 1 to 8 channels.")
    private Path file;

    @Option(
        names = "--microphone",
        required = true,
        arity = "0..1",
        fallbackValue = "",
        paramLabel = "NAME",
        description = "A microphone with this in its name; without a name, the system's choice.")
    private String microphone;

    Frames open() throws Fault {
      return file != null
          ? WavFrames.open(file)
          : MicrophoneFrames.open(Optional.of(microphone).filter(name -> !name.isEmpty()));
    }
  }

  /** Made by the command line reader. */
  public ListenCommand() {}

  @Override
  public Integer call() throws Exception {
    if (!(confidence >= 0 && confidence <= 1)) {
      throw new ParameterException(
          spec.commandLine(), "found --confidence " + confidence + ", expected 0 to 1");
    }
    PrintWriter out = spec.commandLine().getOut();
    Set<IntentKind> allowed = allowed();
    try (Frames frames = source.open();
        SpeechModel loaded = model.load(spec.commandLine().getErr());
        SoundEar sound = SoundEar.standard(frames, ownWords.of(loaded, ownWords.load()));
        Voice voice = new PrintVoice(spec.commandLine().getErr()::println);
        Ear ear =
            new PatientEar(
                called.of(sound, voice, time(sound)),
                said -> CutValue.mayGoOn(said, CutValue.USUAL_DIGITS),
                (first, whole) -> CutValue.isOne(whole, CutValue.USUAL_DIGITS))) {
      ear.forget();
      while (true) {
        ear.next(allowed, PATIENCE_MILLIS).ifPresent(heard -> print(heard.phrase(), allowed, out));
      }
    } catch (EndOfInput e) {
      return 0;
    }
  }

  private static Time time(SoundEar ear) {
    OffsetDateTime start = OffsetDateTime.now(ZoneId.systemDefault());
    return Time.ofSound(start, () -> (long) (ear.seconds() * 1000));
  }

  private Set<IntentKind> allowed() {
    if (free) {
      return Set.of(IntentKind.NOTE_TEXT);
    }
    if (phase != null) {
      return Decider.heard(phase);
    }
    return intents == null
        ? EnumSet.complementOf(EnumSet.of(IntentKind.NOTE_TEXT))
        : EnumSet.copyOf(intents);
  }

  private void print(RecognisedPhrase phrase, Set<IntentKind> allowed, PrintWriter out) {
    Intent intent = Interpreter.interpret(phrase, allowed, confidence);
    out.println(json ? HeardText.json(phrase, intent) : HeardText.line(phrase, intent));
    out.flush();
  }
}
