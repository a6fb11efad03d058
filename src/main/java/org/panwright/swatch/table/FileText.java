package org.panwright.swatch.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * The text in the bytes of a file of unknown origin.
 *
 * <p>UTF-8 and UTF-16 are known by their byte order mark, UTF-8 without one by its bytes being
 * valid, what is left is Windows-1252. All line ends become {@code \n}.
 *
 * @param text without the mark
 * @param encoding as found
 */
public record FileText(String text, Charset encoding) {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final String MARK = "\uFEFF";

  /**
   * Decodes a file.
   *
   * @throws TableFaultException {@link TableFault.NotText} if the bytes are no text
   */
  public static FileText of(byte[] bytes) throws TableFaultException {
    for (Charset encoding : encodings(bytes)) {
      Optional<String> text = strictly(bytes, encoding);
      if (text.isPresent() && text.get().indexOf('\0') < 0) {
        String plain =
            text.get().startsWith(MARK) ? text.get().substring(MARK.length()) : text.get();
        return new FileText(plain.replace("\r\n", "\n").replace('\r', '\n'), encoding);
      }
    }
    throw new TableFaultException(new TableFault.NotText());
  }

  /** The lines in order. */
  public List<String> lines() {
    return text.lines().toList();
  }

  private static List<Charset> encodings(byte[] bytes) {
    int first = bytes.length > 0 ? bytes[0] & 0xFF : 0;
    int second = bytes.length > 1 ? bytes[1] & 0xFF : 0;
    boolean marked = (first == 0xFF && second == 0xFE) || (first == 0xFE && second == 0xFF);
    return marked
        ? List.of(StandardCharsets.UTF_16)
        : List.of(StandardCharsets.UTF_8, WINDOWS_1252);
  }

  /** Decodes, or nothing where a byte is not of the encoding. */
  private static Optional<String> strictly(byte[] bytes, Charset encoding) {
    try {
      return Optional.of(
          encoding
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }
}
