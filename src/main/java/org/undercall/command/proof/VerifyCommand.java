package org.undercall.command.proof;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.undercall.adapter.log.KeyFiles;
import org.undercall.adapter.log.SessionFolder;
import org.undercall.adapter.log.SessionProof;
import org.undercall.port.Fault;
import org.undercall.session.KeptProcedures;
import org.undercall.session.Proof;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows whether sessions are as they were written, and where they are not. */
@Command(
    name = "verify",
    description = "Show whether sessions are as they were written, and where they are not.",
    mixinStandardHelpOptions = true,
    exitCodeList = {
      "0:every session is whole",
      "1:a session is not whole, or a fault, with its code"
    })
public final class VerifyCommand implements Callable<Integer> {
  /** Exit status: every session is whole. */
  public static final int WHOLE = 0;

  /** Exit status: something was changed, or a fault. */
  public static final int NOT_WHOLE = 1;

  @Spec private CommandSpec spec;
  @Mixin private SessionOptions sessions;

  @Option(
      names = "--key",
      paramLabel = "PUBLIC.pem",
      description = "Also demand a signature by the holder of this key.")
  private Path key;

  @Option(names = "--json", description = "Print JSON instead of text.")
  private boolean json;

  /** Made by the command line reader. */
  public VerifyCommand() {}

  @Override
  public Integer call() throws Fault {
    Optional<PublicKey> signer =
        key == null ? Optional.empty() : Optional.of(KeyFiles.publicKey(key));
    List<SessionProof> proofs = proofs(signer);
    PrintWriter out = spec.commandLine().getOut();
    out.print(json ? ProofJson.of(proofs) : ProofText.of(proofs));
    out.flush();
    return proofs.stream().allMatch(SessionProof::whole) ? WHOLE : NOT_WHOLE;
  }

  /** Looks through the sessions on every core; their order stays. */
  private List<SessionProof> proofs(Optional<PublicKey> signer) throws Fault {
    KeptProcedures procedures = new KeptProcedures();
    List<FutureTask<SessionProof>> tasks = new ArrayList<>();
    for (SessionFolder folder : sessions.folders()) {
      tasks.add(new FutureTask<>(() -> Proof.see(folder, signer, procedures).proof()));
    }
    tasks.parallelStream().forEach(FutureTask::run);
    List<SessionProof> proofs = new ArrayList<>();
    for (FutureTask<SessionProof> task : tasks) {
      proofs.add(result(task));
    }
    return proofs;
  }

  private static SessionProof result(FutureTask<SessionProof> task) throws Fault {
    try {
      return task.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Fault fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      throw new IllegalStateException("nothing is waited for: all tasks are done", e);
    }
  }
}
