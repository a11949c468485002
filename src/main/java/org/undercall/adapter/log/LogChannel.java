package org.undercall.adapter.log;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;

/** The four things the log does with an open file. */
interface LogChannel extends AutoCloseable {

  /** Writes all bytes from a position on. */
  void write(byte[] bytes, long position) throws IOException;

  /** Waits until everything written is on the disk. */
  void force() throws IOException;

  /** Cuts the file to a size; a smaller file stays as it is. */
  void cut(long size) throws IOException;

  @Override
  void close() throws IOException;

  /** A channel on a real file. */
  static LogChannel of(FileChannel file) {
    return new LogChannel() {
      @Override
      public void write(byte[] bytes, long position) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
          file.write(rest, position + rest.position());
        }
      }

      @Override
      public void force() throws IOException {
        file.force(true);
      }

      @Override
      public void cut(long size) throws IOException {
        file.truncate(size);
      }

      @Override
      public void close() throws IOException {
        file.close();
      }
    };
  }
}
