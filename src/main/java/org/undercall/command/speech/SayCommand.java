package org.undercall.command.speech;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercall.adapter.speaker.Voices;
import org.undercall.adapter.speaker.WavVoice;
import org.undercall.command.option.UserFolders;
import org.undercall.port.Voice;
import org.undercall.sound.WavTimeline;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says words, to try the voice and the loudspeaker. */
@Command(
    name = "say",
    description = "Says words, to try the voice and the loudspeaker.",
    mixinStandardHelpOptions = true)
public final class SayCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "TEXT", description = "The words to say.")
  private List<String> text;

  @Option(
      names = "--voice",
      paramLabel = "NAME",
      defaultValue = "mary",
      description = "mary (default), system, none, or a demo speaker.")
  private String voice;

  @Option(
      names = "--out",
      paramLabel = "FILE.wav",
      description = "Write a WAV file and play nothing.")
  private Path out;

  @Spec private CommandSpec spec;

  /** A command that picocli fills in. */
  public SayCommand() {}

  @Override
  public Integer call() {
    speak(String.join(" ", text));
    return 0;
  }

  private void print(String line) {
    spec.commandLine().getOut().println(line);
    spec.commandLine().getOut().flush();
  }

  private void speak(String words) {
    if (out == null) {
      try (Voice speaker =
          Voices.aloud(voice, UserFolders.ofMachine().speech().used(), this::print)) {
        speaker.say(words);
      }
      return;
    }
    try (WavTimeline timeline = new WavTimeline(out, 24_000);
        Voice file =
            new WavVoice(
                Voices.synthesiser(voice, UserFolders.ofMachine().speech().used()),
                timeline,
                () -> 0)) {
      file.say(words);
    }
  }
}
