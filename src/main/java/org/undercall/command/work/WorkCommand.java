package org.undercall.command.work;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.undercall.adapter.activity.Activities;
import org.undercall.adapter.echo.EchoCanceller;
import org.undercall.adapter.microphone.MicrophoneFrames;
import org.undercall.adapter.microphone.SteadyFrames;
import org.undercall.adapter.recogniser.RecogniserMaker;
import org.undercall.command.front.Chosen;
import org.undercall.command.option.BoardOptions;
import org.undercall.command.option.CalledOption;
import org.undercall.command.option.ClipOptions;
import org.undercall.command.option.MicrophoneOption;
import org.undercall.command.option.ModelOption;
import org.undercall.command.option.OwnWordsOption;
import org.undercall.command.option.SpeakerOptions;
import org.undercall.core.decision.Session;
import org.undercall.core.intent.OwnWords;
import org.undercall.core.reply.Tell;
import org.undercall.core.term.Occasion;
import org.undercall.listen.BargeIn;
import org.undercall.listen.DeviceNotices;
import org.undercall.listen.LazyEar;
import org.undercall.listen.NoticingEar;
import org.undercall.listen.OpenTalk;
import org.undercall.listen.OwnWordsEar;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.Time;
import org.undercall.port.Voice;
import org.undercall.session.Dialogue;
import org.undercall.session.PrintedState;
import org.undercall.session.Work;
import org.undercall.sound.Frames;
import org.undercall.sound.OwnVoice;
import org.undercall.sound.Playback;
import org.undercall.sound.WavFrames;
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
    exitCodeList = {"0:the session is complete", "3:the session is not complete"})
public final class WorkCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private WorkOptions options;
  @Mixin private ModelOption model;
  @Mixin private OwnWordsOption ownWords;
  @Mixin private CalledOption called;
  @Mixin private BoardOptions boardOptions;
  @Mixin private SpeakerOptions speaker;
  @Mixin private ClipOptions clips;

  @Option(
      names = "--sound",
      paramLabel = "FILE",
      description = "Hear a WAV file in place of the microphone: a rehearsal, no record.")
  private Path sound;

  @Mixin private MicrophoneOption microphone;

  @Option(
      names = "--barge-in",
      negatable = true,
      defaultValue = "true",
      fallbackValue = "true",
      description = "Fall silent when called to while speaking (default: yes).")
  private boolean bargeIn;

  @Option(
      names = "--headset",
      description = "The microphone does not hear the loudspeaker: hear while speaking.")
  private boolean headset;

  private OwnWords own = OwnWords.none();

  /** Made by the command line reader. */
  public WorkCommand() {}

  @Override
  public Integer call() throws Exception {
    speaker.check();
    PrintWriter out = spec.commandLine().getOut();
    own = ownWords.load();
    Chosen chosen = options.choose(out, sound == null ? Occasion.WORK : Occasion.REHEARSAL);
    Dialogue dialogue = new Dialogue(out);
    try (BoardOptions.Opened board = boardOptions.open(out)) {
      return work(chosen, board, dialogue);
    }
  }

  private int work(Chosen chosen, BoardOptions.Opened board, Dialogue dialogue) throws Exception {
    DeviceNotices notices = new DeviceNotices(dialogue::print, board.devices());
    Consumer<String> stopped = phrase -> dialogue.print("  stopped by  " + phrase);
    boolean hears = bargeIn && sound == null && speaker.isAudible();
    Optional<OwnVoice> without = hears ? ownVoice() : Optional.empty();
    try (OwnVoice removed = without.orElseGet(OwnVoice::unheard)) {
      Optional<OpenTalk> open =
          without.map(voice -> new OpenTalk(voice, Activities.best(), stopped));
      Frames taken = frames(notices, removed);
      try (Frames frames = open.map(talk -> talk.of(taken)).orElse(taken);
          LazyEar ear = LazyEar.start(frames, this::recognisers)) {
        Time time = time(ear);
        BargeIn calls = new BargeIn(frames, ear::recognisers, stopped);
        try (Work work = options.open(chosen, spec.commandLine().getOut());
            Voice plain =
                speaker.open(notices::speaker, open.<Playback>map(t -> t).orElse(Playback.NONE));
            Voice spoken =
                hears ? open.map(t -> t.of(plain)).orElseGet(() -> calls.of(plain)) : plain;
            Voice voice = dialogue.of(spoken);
            Ear printed =
                dialogue.of(
                    ear(
                        open.map(t -> t.of(known(ear))).orElseGet(() -> calls.of(ear)),
                        voice,
                        time,
                        notices,
                        board))) {
          clips.apply(work, dialogue::print);
          Session left =
              work.run(
                  printed,
                  voice,
                  time,
                  options.remindAfter(),
                  new PrintedState(dialogue, board.display()));
          options.keepTalk(left);
          options.keepKnown(work, left);
          sayLost(frames, dialogue);
          return RehearseCommand.status(left);
        }
      }
    }
  }

  /** What takes the voice out of the sound; empty where the ear hears the loudspeaker. */
  private Optional<OwnVoice> ownVoice() {
    return headset ? Optional.of(OwnVoice.unheard()) : EchoCanceller.load();
  }

  private Ear known(Ear ear) {
    return new OwnWordsEar(ear, own);
  }

  private Ear ear(
      Ear heard, Voice voice, Time time, DeviceNotices notices, BoardOptions.Opened board) {
    return known(board.of(noticing(called.of(heard, voice, time), notices, voice)));
  }

  private Frames frames(DeviceNotices notices, OwnVoice without) throws Fault {
    Optional<String> named = microphone.name();
    return sound != null
        ? WavFrames.open(sound)
        : SteadyFrames.open(() -> MicrophoneFrames.open(named, without), notices);
  }

  private Ear noticing(Ear ear, DeviceNotices notices, Voice voice) {
    return sound == null ? new NoticingEar(ear, notices, voice) : ear;
  }

  private RecogniserMaker recognisers() throws Fault {
    clips.prepare();
    return ownWords.of(model.load(spec.commandLine().getErr()), own);
  }

  private static void sayLost(Frames frames, Dialogue dialogue) {
    if (frames.droppedMillis() > 0) {
      dialogue.print(Tell.soundLost(frames.droppedMillis()).text());
    }
  }

  /** A file is heard faster than life: its own time counts. */
  private Time time(LazyEar ear) {
    return sound == null
        ? Time.ofMachine()
        : Time.ofSound(OffsetDateTime.now(ZoneId.systemDefault()), ear::millis);
  }
}
