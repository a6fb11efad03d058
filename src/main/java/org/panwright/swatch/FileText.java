package org.panwright.swatch;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The text in the bytes of a file of unknown origin.
 *
 * <p>UTF-8 and UTF-16 are known by their byte order mark, UTF-8 without one by its bytes being
 * valid, what is left is Windows-1252. All line ends become {@code \n}.
 *
 * @param text without the mark
 * @param encoding as found
 */
record FileText(String text, Charset encoding) {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final String MARK = "\uFEFF";

  /**
   * Decodes a file.
   *
   * @throws TableFaultException {@link TableFault.NotText} if the bytes are no text
   */
  static FileText of(byte[] bytes) throws TableFaultException {
    Charset encoding = encoding(bytes);
    String text = new String(bytes, encoding);
    if (text.indexOf('\0') >= 0) {
      throw new TableFaultException(new TableFault.NotText());
    }
    String plain = text.startsWith(MARK) ? text.substring(MARK.length()) : text;
    return new FileText(plain.replace("\r\n", "\n").replace('\r', '\n'), encoding);
  }

  /** The lines in order. */
  List<String> lines() {
    return text.lines().toList();
  }

  private static Charset encoding(byte[] bytes) {
    int first = bytes.length > 0 ? bytes[0] & 0xFF : 0;
    int second = bytes.length > 1 ? bytes[1] & 0xFF : 0;
    if ((first == 0xFF && second == 0xFE) || (first == 0xFE && second == 0xFF)) {
      return StandardCharsets.UTF_16;
    }
    try {
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(bytes));
      return StandardCharsets.UTF_8;
    } catch (CharacterCodingException e) {
      return WINDOWS_1252;
    }
  }
}
