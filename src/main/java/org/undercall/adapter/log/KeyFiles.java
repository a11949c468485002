package org.undercall.adapter.log;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.NoSuchAlgorithmException;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.interfaces.EdECPrivateKey;
import java.security.spec.NamedParameterSpec;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercall.port.Fault;
import org.undercall.text.Sha256;

/**
 * Ed25519 keys in PEM files (RFC 7468): the private key as PKCS#8 (RFC 8410), the public key as
 * X.509 SubjectPublicKeyInfo.
 */
public final class KeyFiles {
  private static final String ED25519 = "Ed25519";
  private static final String PRIVATE = "PRIVATE KEY";
  private static final String PUBLIC = "PUBLIC KEY";
  private static final int COLUMNS = 64;
  private static final int LONGEST = 16_384;

  private KeyFiles() {}

  /** Where the public key of a private key's file goes: {@code shop.pem}, {@code shop.pub.pem}. */
  public static Path publicBeside(Path file) {
    String name = String.valueOf(file.getFileName());
    String plain = name.endsWith(".pem") ? name.substring(0, name.length() - 4) : name;
    return file.resolveSibling(plain + ".pub.pem");
  }

  /**
   * Makes a new key pair: the private key in one file, the public key beside it. Where the file
   * system has POSIX permissions only the owner may read the private one; elsewhere it has those of
   * its folder. No file is ever replaced.
   *
   * @throws Fault if one of the files is there already or cannot be written
   */
  public static void create(Path file) throws Fault {
    KeyPair pair = pair();
    Path open = publicBeside(file);
    if (Files.exists(open)) {
      throw cannotWrite(open, "a file of that name");
    }
    write(file, PRIVATE, pair.getPrivate().getEncoded());
    write(open, PUBLIC, pair.getPublic().getEncoded());
  }

  private static KeyPair pair() {
    try {
      return KeyPairGenerator.getInstance(ED25519).generateKeyPair();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java from 15 on has Ed25519", e);
    }
  }

  private static void write(Path file, String kind, byte[] key) throws Fault {
    String body = Base64.getMimeEncoder(COLUMNS, "\n".getBytes(US_ASCII)).encodeToString(key);
    String text = "-----BEGIN " + kind + "-----\n" + body + "\n-----END " + kind + "-----\n";
    boolean owned = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    FileAttribute<?>[] attributes =
        owned && kind.equals(PRIVATE)
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    try (SeekableByteChannel channel =
            Files.newByteChannel(
                file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), attributes);
        var out = Channels.newOutputStream(channel)) {
      out.write(text.getBytes(US_ASCII));
    } catch (java.nio.file.FileAlreadyExistsException e) {
      throw cannotWrite(file, "a file of that name");
    } catch (IOException e) {
      throw cannotWrite(file, Fault.reason(e));
    }
  }

  private static Fault cannotWrite(Path file, String found) {
    String name = String.valueOf(file.getFileName());
    return new Fault(LogCode.CANNOT_WRITE, name, found, "a new file that can be written");
  }

  /**
   * Reads a private key.
   *
   * @throws Fault if the file has no Ed25519 private key
   */
  public static PrivateKey privateKey(Path file) throws Fault {
    byte[] key = read(file, PRIVATE);
    try {
      return KeyFactory.getInstance(ED25519).generatePrivate(new PKCS8EncodedKeySpec(key));
    } catch (GeneralSecurityException e) {
      throw bad(file, "another kind of key", PRIVATE);
    }
  }

  /**
   * Reads a public key.
   *
   * @throws Fault if the file has no Ed25519 public key
   */
  public static PublicKey publicKey(Path file) throws Fault {
    byte[] key = read(file, PUBLIC);
    try {
      return KeyFactory.getInstance(ED25519).generatePublic(new X509EncodedKeySpec(key));
    } catch (GeneralSecurityException e) {
      throw bad(file, "another kind of key", PUBLIC);
    }
  }

  /** SHA-256 of a public key in DER form, in lower-case hex: its short name. */
  public static String fingerprint(PublicKey key) {
    return Sha256.hex(key.getEncoded());
  }

  /**
   * The public key of a private one. A key pair is made from random bytes alone; made from the
   * bytes of the private key it is the same pair again.
   */
  static PublicKey publicOf(PrivateKey key) {
    byte[] bytes = ((EdECPrivateKey) key).getBytes().orElseThrow();
    try {
      KeyPairGenerator maker = KeyPairGenerator.getInstance(ED25519);
      maker.initialize(NamedParameterSpec.ED25519, new SameBytes(bytes));
      KeyPair pair = maker.generateKeyPair();
      if (!pair.getPrivate().equals(key)) {
        throw new IllegalStateException("a key pair is made from random bytes alone");
      }
      return pair.getPublic();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java from 15 on has Ed25519", e);
    }
  }

  /** Gives the bytes of a private key in place of random ones. */
  private static final class SameBytes extends SecureRandom {
    private static final long serialVersionUID = 1;
    private final byte[] same;

    SameBytes(byte[] same) {
      this.same = same;
    }

    @Override
    public void nextBytes(byte[] bytes) {
      System.arraycopy(same, 0, bytes, 0, bytes.length);
    }
  }

  private static byte[] read(Path file, String kind) throws Fault {
    try (var in = Files.newInputStream(file)) {
      String text = new String(in.readNBytes(LONGEST), US_ASCII);
      Matcher pem =
          Pattern.compile("-----BEGIN " + kind + "-----([A-Za-z0-9+/=\\s]*)-----END " + kind + "-")
              .matcher(text);
      if (!pem.find()) {
        throw bad(file, "no block BEGIN " + kind, kind);
      }
      return Base64.getMimeDecoder().decode(pem.group(1));
    } catch (IOException e) {
      throw bad(file, Fault.reason(e), kind);
    } catch (IllegalArgumentException e) {
      throw bad(file, "text that is not base64", kind);
    }
  }

  private static Fault bad(Path file, String found, String kind) {
    String name = String.valueOf(file.getFileName());
    String expected = "an Ed25519 " + kind + " in PEM form";
    return new Fault(LogCode.BAD_KEY, name, found, expected);
  }
}
