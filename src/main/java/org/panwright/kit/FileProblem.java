package org.panwright.kit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * What went wrong with a file, or what had to be put right to open it: facts for a sentence, no
 * sentence.
 */
public sealed interface FileProblem {
  /** The file concerned. */
  Path file();

  /** There is no such file. */
  record Missing(Path file) implements FileProblem {}

  /** The file is there but may not be read, or reading broke off. */
  record CannotRead(Path file, String systemSays) implements FileProblem {}

  /** The file is larger than any kit. */
  record TooLarge(Path file, long bytes, long mostBytes) implements FileProblem {}

  /** The file holds nothing. */
  record Empty(Path file) implements FileProblem {}

  /** The file ends before what it holds is complete. */
  record CutShort(Path file, int line) implements FileProblem {}

  /** The file is no JSON text from this place on; line and column count from 1. */
  record NotJson(Path file, int line, int column) implements FileProblem {}

  /** A group of the file has two fields of the same name, so one would hide the other. */
  record FieldTwice(Path file, String field, int line) implements FileProblem {}

  /** The file is JSON but does not say that it is a kit. */
  record NotAKit(Path file) implements FileProblem {}

  /** The file is JSON but holds no box. */
  record NotABox(Path file) implements FileProblem {}

  /** A field without which the file as a whole cannot be understood. */
  record BadField(Path file, String field, FieldFault fault) implements FileProblem {}

  /** The file comes from a later version of the program; it can be looked at, not saved over. */
  record Newer(Path file, String version, int known) implements FileProblem {}

  /**
   * A part of the file that cannot be used; it is left out of the kit and kept in the file as it
   * is.
   *
   * @param field where the part stands, for example {@code shelf.paints[3]}
   * @param name the part's own name, empty if it has none
   * @param at the field at fault
   */
  record LeftOut(Path file, String field, String name, String at, FieldFault fault)
      implements FileProblem {}

  /**
   * A value that cannot be used; another stands in for it until the painter changes it, and the
   * file keeps the old one till then.
   *
   * @param standIn what is used instead, as it would be written; empty if nothing is
   */
  record Replaced(Path file, String field, FieldFault fault, String standIn)
      implements FileProblem {}

  /** A file that cannot be opened, and beside it the copy that was kept at the last save. */
  record WithBackup(FileProblem problem, Path backup) implements FileProblem {
    @Override
    public Path file() {
      return problem.file();
    }
  }

  /** Files may not be made or changed in this folder. */
  record FolderClosed(Path file) implements FileProblem {}

  /** The file itself is marked as not to be changed. */
  record FileProtected(Path file) implements FileProblem {}

  /** The folder to save into does not exist. */
  record FolderMissing(Path file) implements FileProblem {}

  /** The disk has no room left. */
  record DiskFull(Path file) implements FileProblem {}

  /** Writing broke off; the file is as it was before. */
  record CannotWrite(Path file, String systemSays) implements FileProblem {}

  /** Somebody else changed the file since it was opened here. */
  record ChangedElsewhere(Path file) implements FileProblem {}

  /** The kit was opened for looking only, so it is not saved over its file. */
  record OpenedForLooking(Path file) implements FileProblem {}

  /** A kit of a later version of the program stands where another one was to go. */
  record NewerInTheWay(Path file) implements FileProblem {}

  /** An unreadable file stood where the kit was to go; it was given another name. */
  record MovedAside(Path file, Path newName) implements FileProblem {}

  /** What is wrong with the value of one field. */
  sealed interface FieldFault {
    /** The field must be there and is not. */
    record Absent() implements FieldFault {}

    /** It holds another kind of value. */
    record WrongKind(ValueKind expected, ValueKind found) implements FieldFault {}

    /** A number outside its range. */
    record OutOfRange(double low, double high, double found) implements FieldFault {}

    /** A number that must be above 0. */
    record NotPositive(double found) implements FieldFault {}

    /** A list of the wrong length. */
    record WrongLength(int expected, int found) implements FieldFault {}

    /** A word the program does not know here. */
    record UnknownWord(String found, List<String> known) implements FieldFault {}

    /** A text that must say something and is blank. */
    record Blank() implements FieldFault {}

    /** A list that needs at least one entry and has none that can be used. */
    record NothingInList() implements FieldFault {}

    /** An id that something else in the same list has already. */
    record SameIdTwice(String id) implements FieldFault {}

    /** An id that nothing in the kit has. */
    record PointsNowhere(String id) implements FieldFault {}

    /** Not the form of a Colour Index generic name. */
    record NoPigmentName(String found) implements FieldFault {}

    /** A Colour Index generic name the program has no figures for, in a paint never measured. */
    record UnknownPigment(String found) implements FieldFault {}

    /** Pigment shares that do not sum to 1. */
    record SharesSum(double found) implements FieldFault {}

    /** Not a date as year-month-day. */
    record NoDate(String found) implements FieldFault {}

    /** A date nobody can mean. */
    record DateOutside(LocalDate first, LocalDate last, LocalDate found) implements FieldFault {}

    /** A tube with more left than it holds, in ml. */
    record MoreThanItsSize(double sizeMl, double foundMl) implements FieldFault {}

    /** A well that lies on another one. */
    record OnAnotherWell(String other) implements FieldFault {}

    /** A mixing area or strip where a well stands. */
    record UnderWell(String well) implements FieldFault {}

    /** A well that sticks out of its box. */
    record OutsideBox() implements FieldFault {}

    /** Wash strengths that do not fall from butter to tea. */
    record NotFalling() implements FieldFault {}

    /** Any other rule of the kit, in the program's own terse words. */
    record BreaksRule(String rule) implements FieldFault {}
  }

  /** The kinds of value a JSON file can hold. */
  enum ValueKind {
    NOTHING,
    TRUE_OR_FALSE,
    NUMBER,
    WHOLE_NUMBER,
    TEXT,
    LIST,
    GROUP
  }
}
