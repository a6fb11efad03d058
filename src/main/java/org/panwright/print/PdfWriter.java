package org.panwright.print;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.zip.CRC32;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Turns papers into a PDF at true size.
 *
 * <p>One millimetre is 72/25.4 points. Fonts are embedded as subsets and the text stays selectable.
 * Colours are sRGB and declared so by an output intent. Title and language are set, the content is
 * tagged ({@link StructureTree}), the reader is asked not to scale when printing. The file holds no
 * date and its id follows from its content, so the same papers make the same bytes (on the same
 * Java, which lends the sRGB profile).
 */
public final class PdfWriter {
  private static final String LANGUAGE = "en-GB";
  private static final String PROGRAM = "Panwright";
  private static final String SRGB_NAME = "sRGB IEC61966-2.1";

  /** ISO 32000-1. */
  private static final float PDF_VERSION = 1.7f;

  private PdfWriter() {}

  /** The bytes of the PDF. Any thread. */
  public static byte[] write(Papers papers) {
    return write(Bundle.of(papers));
  }

  /** The bytes of one PDF of several papers. Any thread. */
  public static byte[] write(Bundle bundle) {
    try (PDDocument document = build(bundle);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      document.save(bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException("a PDF in memory could not be written", e);
    }
  }

  /** Whether a file is a PDF that this class made. */
  public static boolean wrote(byte[] file) {
    try (PDDocument document = Loader.loadPDF(file)) {
      return PROGRAM.equals(document.getDocumentInformation().getCreator());
    } catch (IOException e) {
      return false;
    }
  }

  private static PDDocument build(Bundle bundle) throws IOException {
    PDDocument document = new PDDocument();
    document.setVersion(PDF_VERSION);
    describe(document, bundle);
    Map<Typeface, PDType0Font> fonts = new EnumMap<>(Typeface.class);
    for (Typeface face : Typeface.values()) {
      fonts.put(face, PDType0Font.load(document, face.open(), true));
    }
    StructureTree structure = new StructureTree(document);
    for (Papers papers : bundle.parts()) {
      PDStructureElement section = structure.section(papers.title());
      boolean first = true;
      for (Sheet sheet : papers.sheets()) {
        PDPage page =
            new PDPage(new PDRectangle(points(sheet.widthMm()), points(sheet.heightMm())));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          PagePen pen = new PagePen(document, content, fonts, sheet.heightMm());
          new TaggedPage(content, pen, structure.contents(page), first)
              .draw(sheet.marks(), section);
        }
        first = false;
      }
    }
    Bookmarks.add(document, bundle);
    return document;
  }

  private static void describe(PDDocument document, Bundle bundle) throws IOException {
    document.setDocumentId(fingerprint(bundle));
    document.getDocumentInformation().setTitle(bundle.title());
    document.getDocumentInformation().setCreator(PROGRAM);
    var catalog = document.getDocumentCatalog();
    catalog.setLanguage(LANGUAGE);
    PDViewerPreferences preferences =
        new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    preferences.setDisplayDocTitle(true);
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    catalog.setViewerPreferences(preferences);
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
    intent.setInfo(SRGB_NAME);
    intent.setOutputCondition(SRGB_NAME);
    intent.setOutputConditionIdentifier(SRGB_NAME);
    intent.setRegistryName("http://www.color.org");
    catalog.addOutputIntent(intent);
  }

  private static long fingerprint(Bundle bundle) {
    CRC32 crc = new CRC32();
    crc.update(bundle.toString().getBytes(StandardCharsets.UTF_8));
    return crc.getValue();
  }

  private static float points(double mm) {
    return (float) (mm / Typeface.MM_PER_PT);
  }
}
