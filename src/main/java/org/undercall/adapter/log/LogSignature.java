package org.undercall.adapter.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import org.undercall.port.Fault;

/**
 * The detached signature of a log, {@code log.jsonl.sig}: 64 bytes, Ed25519 (RFC 8032) over the
 * bytes of the log.
 */
public final class LogSignature {
  private static final String ED25519 = "Ed25519";

  private LogSignature() {}

  /** The file of the signature beside a log. */
  public static Path beside(Path log) {
    return log.resolveSibling(log.getFileName() + ".sig");
  }

  /**
   * Signs a log as it is now; an older signature is replaced.
   *
   * @throws Fault if the log cannot be read or the signature cannot be written
   */
  public static Path sign(Path log, PrivateKey key) throws Fault {
    Path file = beside(log);
    byte[] signature = signature(SessionLogFile.bytes(log), key);
    try {
      Files.write(
          file,
          signature,
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE,
          LinkOption.NOFOLLOW_LINKS);
      return file;
    } catch (IOException e) {
      throw new Fault(
          LogCode.CANNOT_WRITE,
          String.valueOf(file.getFileName()),
          e,
          "a folder that can be written");
    }
  }

  private static byte[] signature(byte[] bytes, PrivateKey key) {
    try {
      Signature signer = Signature.getInstance(ED25519);
      signer.initSign(key);
      signer.update(bytes);
      return signer.sign();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("an Ed25519 key signs any bytes", e);
    }
  }

  /** Whether a signature is one of these bytes by the holder of a key. */
  static boolean fits(byte[] bytes, byte[] signature, PublicKey key) {
    try {
      Signature verifier = Signature.getInstance(ED25519);
      verifier.initVerify(key);
      verifier.update(bytes);
      return verifier.verify(signature);
    } catch (GeneralSecurityException e) {
      return false;
    }
  }
}
