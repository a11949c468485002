package org.undercall.command.work;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.command.option.ModelOption;
import org.undercall.command.option.SessionsOption;
import org.undercall.command.option.UserFolders;
import org.undercall.demo.Demo;
import org.undercall.session.Dialogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Shows the whole job on real sound, without people and without sound hardware. */
@Command(
    name = "demo",
    description = {
      "Show the main job: invented technicians speak, the real recogniser hears them.",
      "Every value in it is invented and for no vehicle."
    },
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:the session of the demonstration is complete",
      "3:the session is not complete"
    })
public final class DemoCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ModelOption model;

  @Mixin private SessionsOption sessions;

  /** Made by the command line reader. */
  public DemoCommand() {}

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    Path shared = shared();
    Demo demo =
        Demo.of(
            shared.resolve("procedures").resolve("demo-lateral-link.json"),
            shared.resolve("demo").resolve("spoken-run.json"),
            UserFolders.ofMachine().speech().used());
    Path folders = sessions.folder();
    Dialogue dialogue = new Dialogue(out);
    dialogue.print("A demonstration with invented values, for no vehicle. Nobody is working.");
    dialogue.print("It is no record of work, says so in its log, and lies among the rehearsals.");
    SessionFolder folder =
        demo.run(
            SessionFolder.rehearsals(folders),
            () -> model.load(spec.commandLine().getErr()),
            dialogue);
    dialogue.print("");
    dialogue.print("Sound of both sides: " + folder.path().resolve("dialogue.wav"));
    dialogue.print("");
    return spec.commandLine()
        .getParent()
        .execute("review", folder.path().toString(), "--sessions", folders.toString());
  }

  /** The shared folder of the project, wherever the program was started. */
  public static Path shared() {
    return Optional.ofNullable(System.getProperty("undercall.home"))
        .map(Path::of)
        .orElse(Path.of("."))
        .resolve("shared");
  }
}
