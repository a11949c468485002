package org.undercall.command.proof;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.undercall.adapter.log.KeyFiles;
import org.undercall.port.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a key pair to sign logs with. */
@Command(
    name = "key",
    description = "Make a key pair (Ed25519) to sign logs with.",
    mixinStandardHelpOptions = true,
    exitCodeList = {"0:both files were written", "1:a fault, with its code"})
public final class KeyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE.pem",
      description = "The new file of the private key; the public one goes to FILE.pub.pem.")
  private Path file;

  /** Made by the command line reader. */
  public KeyCommand() {}

  @Override
  public Integer call() throws Fault {
    KeyFiles.create(file);
    var out = spec.commandLine().getOut();
    out.println("Private key, to be kept secret: " + file);
    out.println("Public key, to be given away: " + KeyFiles.publicBeside(file));
    out.flush();
    return 0;
  }
}
