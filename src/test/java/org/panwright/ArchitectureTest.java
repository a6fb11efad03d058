package org.panwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;

/** The arrows between the packages, as drawn in docs/architecture.md. */
@AnalyzeClasses(packages = "org.panwright", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String JSON = "com.fasterxml.jackson..";
  private static final String PDF = "org.apache..";
  private static final String WINDOW = "javafx..";

  @ArchTest
  static final ArchRule colourStandsAlone =
      only("colour")
          .because("colour science holds for anything that has a colour, not for paint alone");

  @ArchTest
  static final ArchRule paintKnowsColour =
      only("paint", "colour")
          .because("what is known of a paint must not depend on how it is mixed or stored");

  @ArchTest
  static final ArchRule mixingKnowsPaint =
      only("mixing", "colour", "paint")
          .because("the engine must stay usable, and fast, without box, file or window");

  @ArchTest
  static final ArchRule swatchKnowsMixing =
      only("swatch", "colour", "paint", "mixing")
          .because("reading swatches turns the engine round; it needs no box and no file");

  @ArchTest
  static final ArchRule kitKnowsPaint =
      only("kit", "colour", "paint")
          .because("the document holds choices, not the colours that follow from them");

  @ArchTest
  static final ArchRule analysisKnowsKitAndMixing =
      only("analysis", "colour", "paint", "mixing", "kit")
          .because("findings are numbers; their sentences belong to words");

  @ArchTest
  static final ArchRule wordsKnowWhatTheyName =
      only("words", "colour", "paint", "kit", "analysis", "mixing", "swatch")
          .because("window, print and command line must say the same thing in the same words");

  @ArchTest
  static final ArchRule printKnowsWords =
      only("print", "colour", "paint", "mixing", "swatch", "kit", "analysis", "words")
          .because("a sheet must come out the same from the window and from the command line");

  @ArchTest
  static final ArchRule storeKnowsTheDocument =
      only("store", "colour", "paint", "swatch", "kit")
          .because("a file format must not depend on judgements, sentences or the window");

  @ArchTest
  static final ArchRule nothingKnowsTheWindow =
      noClasses()
          .that(
              resideInAPackage("org.panwright..").and(not(resideInAPackage("org.panwright.app.."))))
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.panwright.app..")
          .because("everything but the window must work on a machine without a display");

  @ArchTest
  static final ArchRule onlyTheWindowKnowsTheCommandLine =
      noClasses()
          .that(
              resideInAPackage("org.panwright..")
                  .and(not(resideInAnyPackage("org.panwright.command..", "org.panwright.app.."))))
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.panwright.command..")
          .allowEmptyShould(true)
          .because("commands are a door to the program, not a part of it");

  @ArchTest
  static final ArchRule jsonStaysInStoreAndCommand =
      outside(JSON, "store", "command")
          .because("a change of the JSON library must touch the file format and nothing else");

  @ArchTest
  static final ArchRule pdfStaysInPrint =
      outside(PDF, "print").because("sheets are marks in millimetres until the very last step");

  @ArchTest
  static final ArchRule javafxStaysInApp =
      outside(WINDOW, "app").because("everything else must run and be tested without a toolkit");

  @ArchTest
  static final ArchRule coreDrawsNothing =
      noClasses()
          .that()
          .resideInAnyPackage(
              packages("colour", "paint", "mixing", "kit", "analysis", "words", "store"))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio..")
          .because(
              "numbers, documents and sentences need no picture; only swatches are read from one");

  @ArchTest
  static final ArchRule onlyTheDoorsUseStandardStreams =
      noClasses()
          .that(
              resideInAPackage("org.panwright..")
                  .and(not(resideInAnyPackage("org.panwright.command..", "org.panwright.app"))))
          .should(ACCESS_STANDARD_STREAMS)
          .because("people read the window or the command's output, and scripts read the latter");

  @ArchTest
  static final ArchRule statesLiveInObjects =
      fields()
          .that()
          .areStatic()
          .and()
          .areDeclaredInClassesThat()
          .resideInAPackage("org.panwright..")
          .should()
          .haveModifier(JavaModifier.FINAL)
          .because("a static that changes makes results depend on what ran before");

  @ArchTest
  static final ArchRule noCircles =
      slices()
          .matching("org.panwright.(*)..")
          .should()
          .beFreeOfCycles()
          .because("two packages that need each other are one package");

  @ArchTest
  static final ArchRule noCirclesWithinAnalysis =
      slices()
          .matching("org.panwright.analysis.(*)..")
          .should()
          .beFreeOfCycles()
          .because("it is read from the bottom up, and a circle has no bottom");

  @ArchTest
  static final ArchRule noCirclesWithinSwatch =
      slices()
          .matching("org.panwright.swatch.(*)..")
          .should()
          .beFreeOfCycles()
          .because("what is read must not depend on what is made of it");

  @ArchTest
  static final ArchRule searchesServeTheJudge =
      noClasses()
          .that(
              resideInAPackage("org.panwright..")
                  .and(not(resideInAPackage("org.panwright.analysis.."))))
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.panwright.analysis.search..")
          .because("searches are public for their neighbours; the door is the judge");

  /** The package may use itself, the listed packages, and anything that is not ours. */
  private static ArchRule only(String name, String... allowed) {
    List<String> ours = new ArrayList<>(List.of(allowed));
    ours.add(name);
    return classes()
        .that()
        .resideInAPackage("org.panwright." + name + "..")
        .should()
        .onlyDependOnClassesThat(
            resideInAnyPackage(packages(ours.toArray(String[]::new)))
                .or(not(resideInAPackage("org.panwright.."))))
        .allowEmptyShould(true);
  }

  private static ArchRule outside(String library, String... allowed) {
    return noClasses()
        .that(resideInAPackage("org.panwright..").and(not(resideInAnyPackage(packages(allowed)))))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library);
  }

  private static String[] packages(String... names) {
    return java.util.Arrays.stream(names)
        .map(name -> "org.panwright." + name + "..")
        .toArray(String[]::new);
  }
}
