package org.undercall.command.speech;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.undercall.adapter.procedure.ProcedureFile;
import org.undercall.adapter.recogniser.ModelFolder;
import org.undercall.adapter.recogniser.SpeechModel;
import org.undercall.adapter.speaker.SpokenCache;
import org.undercall.adapter.speaker.Voices;
import org.undercall.command.option.UserFolders;
import org.undercall.command.work.DemoCommand;
import org.undercall.core.procedure.Procedure;
import org.undercall.core.reply.Ask;
import org.undercall.core.reply.Reply;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prepares what makes the first words come quickly: the sound of what is said first. */
@Command(
    name = "prepare",
    description = "Check the speech model and keep the sound of the first words of each procedure.",
    mixinStandardHelpOptions = true)
public final class PrepareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  /** Made by the command line reader. */
  public PrepareCommand() {}

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    SpeechModel.load(ModelFolder.verify(ModelFolder.standard())).close();
    out.println("Speech model checked.");
    int made = 0;
    try (SpokenCache voice = Voices.synthesiser("mary", UserFolders.ofMachine().speech().used());
        Stream<Path> files = Files.list(DemoCommand.shared().resolve("procedures"))) {
      for (Path file : files.filter(ProcedureFile::named).sorted().toList()) {
        int sentences = voice.warm(first(file));
        out.println("Spoken beforehand for " + file.getFileName() + ": " + sentences);
        out.flush();
        made += sentences;
      }
    }
    out.println("Sentences spoken beforehand: " + made);
    out.flush();
    return 0;
  }

  private static List<String> first(Path file) throws Fault, IOException {
    Procedure procedure = ProcedureFile.load(file).procedure();
    Reply briefing = Ask.briefing(procedure, Set.of());
    return briefing.sentences();
  }
}
