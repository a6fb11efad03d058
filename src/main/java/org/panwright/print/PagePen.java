package org.panwright.print;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.function.PDFunctionType0;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType2;
import org.apache.pdfbox.util.Matrix;
import org.panwright.colour.Srgb;

/** Draws marks on one page; turns millimetres from above into points from below. */
final class PagePen {
  private static final float DASH_MM = 1f;

  /** How far a cubic arm reaches along a quarter circle: 4/3 (√2 − 1). */
  private static final double ARM = 4.0 / 3 * (Math.sqrt(2) - 1);

  private final PDDocument document;
  private final PDPageContentStream content;
  private final Map<Typeface, PDType0Font> fonts;
  private final double heightMm;

  PagePen(
      PDDocument document,
      PDPageContentStream content,
      Map<Typeface, PDType0Font> fonts,
      double heightMm) {
    this.document = document;
    this.content = content;
    this.fonts = fonts;
    this.heightMm = heightMm;
  }

  /** Draws one mark, or those of a group. */
  void draw(Mark mark) throws IOException {
    if (mark instanceof Mark.Text text) {
      text(text);
    } else if (mark instanceof Mark.Line line) {
      line(line);
    } else if (mark instanceof Mark.Rectangle rectangle) {
      rectangle(rectangle);
    } else if (mark instanceof Mark.Swatch swatch) {
      swatch(swatch);
    } else if (mark instanceof Mark.Group group) {
      for (Mark part : group.marks()) {
        draw(part);
      }
    }
  }

  private void text(Mark.Text text) throws IOException {
    content.beginText();
    content.setFont(fonts.get(text.face()), (float) text.sizePt());
    content.setNonStrokingColor(red(text.ink()), green(text.ink()), blue(text.ink()));
    AffineTransform place =
        AffineTransform.getTranslateInstance(x(text.xMm()), y(text.baselineMm()));
    if (text.upwards()) {
      place.quadrantRotate(1);
    }
    content.setTextMatrix(new Matrix(place));
    content.showText(Script.visual(text.text()));
    content.endText();
  }

  private void line(Mark.Line line) throws IOException {
    stroke(line.strokeMm(), line.ink(), line.dashed());
    content.moveTo(x(line.fromXMm()), y(line.fromYMm()));
    content.lineTo(x(line.toXMm()), y(line.toYMm()));
    content.stroke();
  }

  private void rectangle(Mark.Rectangle rectangle) throws IOException {
    stroke(rectangle.strokeMm(), rectangle.ink(), rectangle.dashed());
    outline(rectangle.area(), rectangle.radiusMm());
    if (rectangle.fill().isPresent()) {
      Srgb fill = rectangle.fill().get();
      content.setNonStrokingColor(red(fill), green(fill), blue(fill));
      content.fillAndStroke();
    } else {
      content.stroke();
    }
  }

  private void outline(Area area, double radiusMm) throws IOException {
    double r = Math.min(radiusMm, Math.min(area.widthMm(), area.heightMm()) / 2);
    double left = area.xMm();
    double right = area.rightMm();
    double top = area.yMm();
    double bottom = area.bottomMm();
    if (r == 0) {
      content.addRect(x(left), y(bottom), x(area.widthMm()), x(area.heightMm()));
      return;
    }
    double a = r * (1 - ARM);
    content.moveTo(x(left + r), y(top));
    content.lineTo(x(right - r), y(top));
    curve(right - a, top, right, top + a, right, top + r);
    content.lineTo(x(right), y(bottom - r));
    curve(right, bottom - a, right - a, bottom, right - r, bottom);
    content.lineTo(x(left + r), y(bottom));
    curve(left + a, bottom, left, bottom - a, left, bottom - r);
    content.lineTo(x(left), y(top + r));
    curve(left, top + a, left + a, top, left + r, top);
    content.closePath();
  }

  private void curve(double x1, double y1, double x2, double y2, double x3, double y3)
      throws IOException {
    content.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
  }

  private void swatch(Mark.Swatch swatch) throws IOException {
    Area area = swatch.area();
    List<Srgb> run = swatch.run();
    if (run.size() == 1) {
      content.setNonStrokingColor(red(run.get(0)), green(run.get(0)), blue(run.get(0)));
      content.addRect(x(area.xMm()), y(area.bottomMm()), x(area.widthMm()), x(area.heightMm()));
      content.fill();
      return;
    }
    content.saveGraphicsState();
    content.addRect(x(area.xMm()), y(area.bottomMm()), x(area.widthMm()), x(area.heightMm()));
    content.clip();
    content.shadingFill(gradient(area, run));
    content.restoreGraphicsState();
  }

  /** An axial shading through a table of 8-bit sRGB samples. */
  private PDShadingType2 gradient(Area area, List<Srgb> run) throws IOException {
    COSStream samples = document.getDocument().createCOSStream();
    samples.setItem(COSName.FUNCTION_TYPE, COSInteger.get(0));
    samples.setItem(COSName.DOMAIN, numbers(0, 1));
    samples.setItem(COSName.RANGE, numbers(0, 1, 0, 1, 0, 1));
    samples.setItem(COSName.BITS_PER_SAMPLE, COSInteger.get(8));
    COSArray size = new COSArray();
    size.add(COSInteger.get(run.size()));
    samples.setItem(COSName.SIZE, size);
    try (OutputStream out = samples.createOutputStream()) {
      for (Srgb colour : run) {
        out.write(colour.redByte());
        out.write(colour.greenByte());
        out.write(colour.blueByte());
      }
    }
    PDShadingType2 shading = new PDShadingType2(new org.apache.pdfbox.cos.COSDictionary());
    shading.setShadingType(PDShading.SHADING_TYPE2);
    shading.setColorSpace(PDDeviceRGB.INSTANCE);
    shading.setCoords(numbers(x(area.xMm()), 0, x(area.rightMm()), 0));
    shading.setFunction(new PDFunctionType0(samples));
    return shading;
  }

  private static COSArray numbers(float... values) {
    COSArray array = new COSArray();
    for (float value : values) {
      array.add(new COSFloat(value));
    }
    return array;
  }

  private void stroke(double strokeMm, Srgb ink, boolean dashed) throws IOException {
    content.setLineWidth(x(strokeMm));
    content.setStrokingColor(red(ink), green(ink), blue(ink));
    content.setLineDashPattern(dashed ? new float[] {x(DASH_MM)} : new float[0], 0);
  }

  private float x(double mm) {
    return (float) (mm / Typeface.MM_PER_PT);
  }

  private float y(double mm) {
    return x(heightMm - mm);
  }

  private static float red(Srgb colour) {
    return (float) colour.red();
  }

  private static float green(Srgb colour) {
    return (float) colour.green();
  }

  private static float blue(Srgb colour) {
    return (float) colour.blue();
  }
}
