package org.undercall.command.proof;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.undercall.adapter.log.KeyFiles;
import org.undercall.adapter.log.LogCode;
import org.undercall.adapter.log.LogSignature;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionProof;
import org.undercall.adapter.log.SignedStatement;
import org.undercall.core.term.Kebab;
import org.undercall.core.term.Occasion;
import org.undercall.port.Fault;
import org.undercall.port.Time;
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

  @Option(
      names = "--name",
      paramLabel = "NAME",
      description = "Who signs, to be stated beside the signature; a key alone has no name.")
  private String name;

  /** Made by the command line reader. */
  public SignCommand() {}

  @Override
  public Integer call() throws Fault {
    SignedStatement.Signer signer =
        new SignedStatement.Signer(
            KeyFiles.privateKey(key), Optional.ofNullable(name), Time.ofMachine().now().wall());
    int status = VerifyCommand.WHOLE;
    for (SessionFolder folder : sessions.folders()) {
      SessionProof proof = Proof.of(folder, Optional.empty());
      Occasion occasion = proof.occasion();
      if (occasion != Occasion.WORK) {
        print(spec.commandLine().getErr(), noRecord(folder, occasion).getMessage());
        status = VerifyCommand.NOT_WHOLE;
      } else if (proof.whole() && !proof.torn()) {
        sign(folder, signer);
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

  /** Signs the log as it is, and a statement of who signs it, when and with which key. */
  private void sign(SessionFolder folder, SignedStatement.Signer signer) throws Fault {
    Path file = LogSignature.sign(folder.log(), signer.key());
    SignedStatement said =
        SignedStatement.write(
            SignedStatement.beside(folder.log()),
            signer,
            List.of(folder.log(), folder.procedure()));
    print(spec.commandLine().getOut(), "signed: " + file);
    ProofText.stated(said).forEach(line -> print(spec.commandLine().getOut(), line));
  }

  private static void print(PrintWriter out, String line) {
    out.println(line);
    out.flush();
  }
}
