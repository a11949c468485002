import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.GZIPInputStream;

/**
 * Applies a difference to an acoustic network, in the format that {@code models/adapt/README.md}
 * describes; run by the build when it unpacks the speech model.
 *
 * <pre>java NetworkDifference.java BASE DIFFERENCE RESULT</pre>
 */
final class NetworkDifference {
  private static final String MAGIC = "UCDIFF1\n";
  private static final int SUM_BYTES = 32;

  private NetworkDifference() {}

  public static void main(String[] files) throws IOException {
    byte[] network = Files.readAllBytes(Path.of(files[0]));
    byte[] packed = Files.readAllBytes(Path.of(files[1]));
    byte[] unpacked;
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      unpacked = in.readAllBytes();
    }
    ByteBuffer difference = ByteBuffer.wrap(unpacked).order(ByteOrder.LITTLE_ENDIAN);
    String magic = new String(bytes(difference, MAGIC.length()), StandardCharsets.US_ASCII);
    require(magic.equals(MAGIC), files[1], "is no difference of networks");
    String base = HexFormat.of().formatHex(bytes(difference, SUM_BYTES));
    String result = HexFormat.of().formatHex(bytes(difference, SUM_BYTES));
    require(sum(network).equals(base), files[0], "is not the network that the difference is for");
    add(difference, ByteBuffer.wrap(network).order(ByteOrder.LITTLE_ENDIAN));
    require(sum(network).equals(result), files[1], "did not give the network that it names");
    Files.write(Path.of(files[2]), network);
  }

  private static void add(ByteBuffer difference, ByteBuffer network) {
    int records = difference.getInt();
    for (int i = 0; i < records; i++) {
      int at = difference.getInt();
      int rows = difference.getInt();
      int columns = difference.getInt();
      float[] scales = new float[rows];
      for (int row = 0; row < rows; row++) {
        scales[row] = difference.getFloat();
      }
      for (int row = 0; row < rows; row++) {
        for (int column = 0; column < columns; column++) {
          network.putFloat(at, network.getFloat(at) + scales[row] * difference.get());
          at += Float.BYTES;
        }
      }
    }
  }

  private static byte[] bytes(ByteBuffer from, int count) {
    byte[] bytes = new byte[count];
    from.get(bytes);
    return bytes;
  }

  private static String sum(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static void require(boolean holds, String file, String what) {
    if (!holds) {
      throw new IllegalArgumentException(file + " " + what);
    }
  }
}
