package org.panwright.words;

import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.FileProblem.ValueKind;

/** What is wrong with one field of a file, as a clause that names the field by its path. */
final class FieldFaultWords {
  private FieldFaultWords() {}

  /**
   * A clause, for example "boxes[0].widthMm must lie between 10 and 1000 but is -5".
   *
   * @param path where the field stands; entries of lists count from 0
   */
  static String clause(String path, FieldFault fault) {
    return path + " " + predicate(fault);
  }

  private static String predicate(FieldFault fault) {
    if (fault instanceof FieldFault.Absent) {
      return "is missing";
    } else if (fault instanceof FieldFault.WrongKind it) {
      return "must be " + kind(it.expected()) + " but is " + kind(it.found());
    } else if (fault instanceof FieldFault.OutOfRange it) {
      return range(it);
    } else if (fault instanceof FieldFault.NotPositive it) {
      return "must be above 0 but is " + WordParts.number(it.found());
    } else if (fault instanceof FieldFault.WrongLength it) {
      return "must have " + it.expected() + " values but has " + it.found();
    } else if (fault instanceof FieldFault.UnknownWord it) {
      return "must be one of %s but is %s"
          .formatted(String.join(", ", it.known()), WordParts.quoted(it.found()));
    } else if (fault instanceof FieldFault.Blank) {
      return "must not be blank";
    } else if (fault instanceof FieldFault.NothingInList) {
      return "holds nothing that can be used";
    } else if (fault instanceof FieldFault.SameIdTwice it) {
      return "is " + WordParts.quoted(it.id()) + ", which another entry has already";
    } else if (fault instanceof FieldFault.PointsNowhere it) {
      return "names " + WordParts.quoted(it.id()) + ", which is not there or was left out";
    }
    return meaning(fault);
  }

  private static String meaning(FieldFault fault) {
    if (fault instanceof FieldFault.NoPigmentName it) {
      return "must be a Colour Index name such as PB29 but is " + WordParts.quoted(it.found());
    } else if (fault instanceof FieldFault.UnknownPigment it) {
      return "is %s, a pigment this program has no figures for, and the paint was never measured"
          .formatted(WordParts.shortened(it.found()));
    } else if (fault instanceof FieldFault.SharesSum it) {
      return "have shares that sum to " + WordParts.number(it.found()) + " instead of 1";
    } else if (fault instanceof FieldFault.NoDate it) {
      return "must be a date such as 2026-05-17 but is " + WordParts.quoted(it.found());
    } else if (fault instanceof FieldFault.DateOutside it) {
      return "is the date %s, outside %s to %s".formatted(it.found(), it.first(), it.last());
    } else if (fault instanceof FieldFault.MoreThanItsSize it) {
      return "leaves %s ml in a tube of %s ml"
          .formatted(WordParts.number(it.foundMl()), WordParts.number(it.sizeMl()));
    } else if (fault instanceof FieldFault.UnderWell it) {
      return "lies where the well " + WordParts.quoted(it.well()) + " stands";
    } else if (fault instanceof FieldFault.OnAnotherWell it) {
      return "lies on the well " + WordParts.quoted(it.other());
    } else if (fault instanceof FieldFault.OutsideBox) {
      return "sticks out of its box";
    } else if (fault instanceof FieldFault.NotFalling) {
      return "must fall from butter to tea";
    } else if (fault instanceof FieldFault.BreaksRule it) {
      return "cannot be used (" + WordParts.shortened(it.rule()) + ")";
    }
    throw new IllegalArgumentException("no words for " + fault);
  }

  private static String range(FieldFault.OutOfRange it) {
    String found = WordParts.number(it.found());
    if (Double.isInfinite(it.low()) || it.low() <= -1e300) {
      return "must be at most " + WordParts.number(it.high()) + " but is " + found;
    }
    if (it.high() >= 1e300) {
      return "must be at least " + WordParts.number(it.low()) + " but is " + found;
    }
    return "must lie between %s and %s but is %s"
        .formatted(WordParts.number(it.low()), WordParts.number(it.high()), found);
  }

  private static String kind(ValueKind kind) {
    return switch (kind) {
      case NOTHING -> "nothing";
      case TRUE_OR_FALSE -> "true or false";
      case NUMBER -> "a number";
      case WHOLE_NUMBER -> "a whole number";
      case TEXT -> "a text in quotation marks";
      case LIST -> "a list in square brackets";
      case GROUP -> "a group in braces";
    };
  }
}
