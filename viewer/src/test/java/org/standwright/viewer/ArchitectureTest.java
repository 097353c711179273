package org.standwright.viewer;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.CompositeArchRule;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The viewer reads from top to bottom: who may use whom. */
@AnalyzeClasses(packages = ArchitectureTest.ROOT, importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    static final String ROOT = "org.standwright.viewer";

    /** The packages in reading order; a package inside one of them counts as part of it. */
    private static final List<String> ORDER = List.of(
            "document",
            "work",
            "button",
            "paper",
            "scene",
            "form",
            "text",
            "hand",
            "list",
            "sheet",
            "finding",
            "preset",
            "app");

    @ArchTest
    static final ArchRule eachPackageUsesOnlyThoseAboveIt = CompositeArchRule.of(IntStream.range(0, ORDER.size())
            .mapToObj(ArchitectureTest::usesOnlyThoseAbove)
            .toList());

    @ArchTest
    static final ArchRule packagesDoNotUseEachOtherInCircles =
            slices().matching(ROOT + ".(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule documentsKnowNoScreen = noClasses()
            .that()
            .resideInAPackage(ROOT + ".document..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("javafx..");

    /** A model holds properties, and the screen's thread, but no node. */
    @ArchTest
    static final ArchRule modelsKnowNoNodes = noClasses()
            .that()
            .resideInAPackage(ROOT + ".work..")
            .or()
            .haveSimpleNameEndingWith("Model")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx.scene..", "javafx.stage..");

    @ArchTest
    static final ArchRule everyPackageHasItsPlaceInTheOrder = classes().should().resideInAnyPackage(full(ORDER));

    private static ArchRule usesOnlyThoseAbove(int place) {
        return noClasses()
                .that()
                .resideInAnyPackage(full(ORDER.subList(place, place + 1)))
                .should()
                .dependOnClassesThat(are(resideInAnyPackage(full(ORDER.subList(place + 1, ORDER.size())))))
                .allowEmptyShould(true);
    }

    private static String[] full(List<String> names) {
        return names.stream()
                .flatMap(name -> Stream.of(ROOT + "." + name + ".."))
                .toArray(String[]::new);
    }
}
