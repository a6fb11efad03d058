package org.panwright.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The few things a safe save asks of the file system; each of them can fail. */
interface Disk {
  /** The real one. */
  Disk REAL =
      new Disk() {
        @Override
        public Sink create(Path fresh) throws IOException {
          return new ChannelSink(
              FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
        }

        @Override
        public boolean mayChange(Path file) {
          return Files.isWritable(file);
        }

        @Override
        public void moveOver(Path from, Path to) throws IOException {
          try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
          } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
          }
        }
      };

  /** Whether a file that is there is not marked as read-only. */
  boolean mayChange(Path file);

  /** Makes a file that does not exist yet. */
  Sink create(Path fresh) throws IOException;

  /**
   * Puts a file in the place of another in one step, so that either the old or the new is there.
   */
  void moveOver(Path from, Path to) throws IOException;

  /** A file being written. */
  interface Sink extends Closeable {
    /** Writes all bytes. */
    void write(byte[] bytes) throws IOException;

    /** Returns when the bytes are on the disk itself, not only on their way. */
    void force() throws IOException;
  }

  /** A sink into a file channel. */
  record ChannelSink(FileChannel channel) implements Sink {
    @Override
    public void write(byte[] bytes) throws IOException {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
    }

    @Override
    public void force() throws IOException {
      channel.force(true);
    }

    @Override
    public void close() throws IOException {
      channel.close();
    }
  }
}
