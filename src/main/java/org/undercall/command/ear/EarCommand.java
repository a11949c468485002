package org.undercall.command.ear;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.undercall.adapter.microphone.MicrophoneFrames;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.adapter.speaker.SpeakerSettings;
import org.undercall.adapter.speaker.SpeakerTrial;
import org.undercall.adapter.speaker.Voices;
import org.undercall.command.option.MicrophoneOption;
import org.undercall.command.option.ModelOption;
import org.undercall.command.option.OwnWordsOption;
import org.undercall.command.option.UserFolders;
import org.undercall.listen.SoundEar;
import org.undercall.port.Ear;
import org.undercall.port.Fault;
import org.undercall.port.UncheckedFault;
import org.undercall.port.Voice;
import org.undercall.sound.Chirp;
import org.undercall.sound.Frames;
import org.undercall.sound.Pcm;
import org.undercall.sound.Playback;
import org.undercall.sound.WavFrames;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks how well a technician is heard before the work begins. */
@Command(
    name = "ear",
    description = "Say ten phrases and learn how well they are heard, and what to change.",
    mixinStandardHelpOptions = true,
    exitCodeList = {"0:usable", "3:not usable as it is"})
public final class EarCommand implements Callable<Integer> {
  private static final int NOT_USABLE = 3;

  /** The tone with what goes before it and what comes late: 1.8 s. */
  private static final int TRIAL_FRAMES = 60;

  @Spec private CommandSpec spec;
  @Mixin private ModelOption model;
  @Mixin private OwnWordsOption ownWords;

  @Option(
      names = "--sound",
      paramLabel = "FILE",
      description = "Hear a WAV file with the ten phrases in order, one try each.")
  private Path sound;

  @Mixin private MicrophoneOption microphone;

  @Option(
      names = "--voice",
      paramLabel = "NAME",
      defaultValue = "mary",
      description = "The voice that asks: mary or system (default: ${DEFAULT-VALUE}).")
  private String voiceName;

  @Option(names = "--quiet", description = "Print what is to be said, do not speak.")
  private boolean quiet;

  @Option(names = "--json", description = "Print the result as one JSON object.")
  private boolean json;

  @Option(
      names = "--keep",
      paramLabel = "FOLDER",
      arity = "0..1",
      fallbackValue = "",
      description = "Keep the result as a file; without a folder, among your data.")
  private String keep;

  /** Made by the command line reader. */
  public EarCommand() {}

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    EarVerdict verdict;
    boolean hearsSpeaker = true;
    String voiceOrNone = quiet || sound != null ? "none" : voiceName;
    try (Frames frames = frames();
        SpeechModel loaded = model.load(err);
        Voice voice =
            Voices.spoken(
                voiceOrNone,
                UserFolders.ofMachine().speech().used(),
                SpeakerSettings.STANDARD,
                news -> err.println(news.line()),
                Playback.NONE);
        Ear ear = SoundEar.standard(frames, ownWords.of(loaded, ownWords.load()))) {
      if (!voiceOrNone.equals("none")) {
        hearsSpeaker = hearsSpeaker(frames);
      }
      int tries = sound == null ? 2 : 1;
      verdict = new EarVerdict(new EarCheck(ear, asking(voice, ear), tries).run());
    }
    if (json) {
      out.println(EarReport.json(verdict));
    } else {
      EarReport.text(verdict).forEach(out::println);
    }
    out.flush();
    if (!hearsSpeaker) {
      err.println(
          "The microphone does not hear the loudspeaker: begin the work with --headset, and you"
              + " are heard while the voice speaks.");
      err.flush();
    }
    if (keep != null) {
      keep(verdict, err);
    }
    return verdict.usable() ? 0 : NOT_USABLE;
  }

  /** Plays a rising tone and listens for it; without a loudspeaker nothing is known. */
  private static boolean hearsSpeaker(Frames frames) throws Fault {
    frames.discardWaiting();
    try {
      SpeakerTrial.play(Chirp.at(SpeakerTrial.RATE));
    } catch (UncheckedFault e) {
      return true;
    }
    ByteArrayOutputStream heard = new ByteArrayOutputStream();
    for (int i = 0; i < TRIAL_FRAMES; i++) {
      frames.next().ifPresent(frame -> heard.writeBytes(frame.sound()));
    }
    byte[] all = heard.toByteArray();
    return Chirp.isIn(Pcm.ofBytes(Frames.RATE, all, 0, all.length));
  }

  private Frames frames() throws Fault {
    return sound != null ? WavFrames.open(sound) : MicrophoneFrames.open(microphone.name());
  }

  /** With JSON the questions go to the error output, so that the output is the object alone. */
  private Consumer<String> asking(Voice voice, Ear ear) {
    PrintWriter to = json ? spec.commandLine().getErr() : spec.commandLine().getOut();
    return words -> {
      if (sound == null) {
        to.println(words);
        to.flush();
      }
      voice.say(words);
      ear.forget();
    };
  }

  private void keep(EarVerdict verdict, PrintWriter err) throws IOException {
    Path folder = keep.isEmpty() ? UserFolders.ofMachine().ears().used() : Path.of(keep);
    Files.createDirectories(folder);
    String when =
        LocalDateTime.now(ZoneId.systemDefault())
            .format(DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT));
    Path file = folder.resolve("ear-" + when + ".json");
    Files.writeString(file, EarReport.json(verdict) + "\n");
    err.println("Kept: " + file);
    err.flush();
  }
}
