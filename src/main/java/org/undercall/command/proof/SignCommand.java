package org.undercall.command.proof;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.log.KeyFiles;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogSignature;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionProof;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Occasion;
import org.undercall.port.Fault;
import org.undercall.session.Proof;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Signs the logs of sessions that are whole. */
@Command(
    name = "sign",
    description = "Sign the log of a session that is whole and a record of work.",
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:every log was signed",
      "1:a session is not whole or no record of work, or a fault, with its code"
    })
public final class SignCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private SessionOptions sessions;

  @Option(
      names = "--key",
      required = true,
      paramLabel = "PRIVATE.pem",
      description = "The private key, as made by the command key.")
  private Path key;

  /** Made by the command line reader. */
  public SignCommand() {}

  @Override
  public Integer call() throws Fault {
    PrivateKey signer = KeyFiles.privateKey(key);
    int status = VerifyCommand.WHOLE;
    for (SessionFolder folder : sessions.folders()) {
      SessionProof proof = Proof.of(folder, Optional.empty());
      Occasion occasion = proof.occasion();
      if (occasion != Occasion.WORK) {
        print(spec.commandLine().getErr(), noRecord(folder, occasion).getMessage());
        status = VerifyCommand.NOT_WHOLE;
      } else if (proof.whole() && !proof.torn()) {
        print(spec.commandLine().getOut(), "signed: " + LogSignature.sign(folder.log(), signer));
      } else {
        proof.findings().forEach(f -> print(spec.commandLine().getErr(), f.message()));
        print(spec.commandLine().getErr(), "not signed: " + proof.session());
        status = VerifyCommand.NOT_WHOLE;
      }
    }
    return status;
  }

  /** Who signs stands for work that was done; of a rehearsal there is none to stand for. */
  private static Fault noRecord(SessionFolder folder, Occasion occasion) {
    return new Fault(
        LogCode.NO_RECORD,
        "session " + folder.name(),
        "a " + Kebab.of(occasion) + ", not signed",
        "a record of work");
  }

  private static void print(PrintWriter out, String line) {
    out.println(line);
    out.flush();
  }
}
