package org.panwright.swatch.picture;

import javax.imageio.stream.ImageInputStreamImpl;

/** A file that is in memory already, read without a second copy of it. */
final class BytesInput extends ImageInputStreamImpl {
  private final byte[] file;

  BytesInput(byte[] file) {
    this.file = file;
  }

  @Override
  public long length() {
    return file.length;
  }

  @Override
  public int read() {
    bitOffset = 0;
    return streamPos < file.length ? file[(int) streamPos++] & 0xff : -1;
  }

  @Override
  public int read(byte[] into, int from, int most) {
    bitOffset = 0;
    int count = (int) Math.min(most, file.length - streamPos);
    if (count <= 0) {
      return most == 0 ? 0 : -1;
    }
    System.arraycopy(file, (int) streamPos, into, from, count);
    streamPos += count;
    return count;
  }
}
