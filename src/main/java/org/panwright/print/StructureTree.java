package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * The logical structure of a PDF: what is a heading, a paragraph, a figure with its words, in
 * reading order (ISO 32000-1:2008, 14.7 and 14.8).
 *
 * <p>Each page has an array of the elements its marked contents belong to, by their number (MCID);
 * the parent tree holds these arrays by the number of the page.
 */
final class StructureTree {
  private final PDStructureElement document;
  private final COSArray parents = new COSArray();

  StructureTree(PDDocument pdf) {
    PDStructureTreeRoot root = new PDStructureTreeRoot();
    pdf.getDocumentCatalog().setStructureTreeRoot(root);
    PDMarkInfo info = new PDMarkInfo();
    info.setMarked(true);
    pdf.getDocumentCatalog().setMarkInfo(info);
    document = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
    root.appendKid(document);
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, parents);
    root.getCOSObject().setItem(COSName.PARENT_TREE, tree);
  }

  /** A section for papers that belong together. */
  PDStructureElement section(String title) {
    PDStructureElement section = element(document, StandardStructureTypes.SECT);
    section.setTitle(title);
    return section;
  }

  /** An element at the end of another. */
  static PDStructureElement element(PDStructureNode parent, String type) {
    PDStructureElement element = new PDStructureElement(type, parent);
    parent.appendKid(element);
    return element;
  }

  /** The contents of the next page. */
  Contents contents(PDPage page) {
    int number = parents.size() / 2;
    page.setStructParents(number);
    page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    COSArray owners = new COSArray();
    parents.add(COSInteger.get(number));
    parents.add(owners);
    return new Contents(page, owners);
  }

  /** Numbers the marked contents of a page. */
  static final class Contents {
    private final PDPage page;
    private final COSArray owners;
    private final List<PDStructureElement> known = new ArrayList<>();

    private Contents(PDPage page, COSArray owners) {
      this.page = page;
      this.owners = owners;
    }

    /** The number of a new marked content that belongs to an element. */
    int next(PDStructureElement owner) {
      int id = known.size();
      known.add(owner);
      owners.add(owner.getCOSObject());
      owner.setPage(page);
      owner.appendKid(id);
      return id;
    }
  }
}
