package org.standwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.CompositeArchRule;
import java.util.List;
import java.util.stream.IntStream;

/** The generator reads from top to bottom: who may use whom. */
@AnalyzeClasses(packages = ArchitectureTest.ROOT, importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    static final String ROOT = "org.standwright";

    /** The packages in reading order; a package inside one of them counts as part of it. */
    private static final List<String> ORDER = List.of(
            "unit",
            "geom",
            "part",
            "assembly",
            "design",
            "solid",
            "cutlist",
            "sheet",
            "check",
            "drawing",
            "router",
            "file",
            "advice",
            "packet",
            "export",
            "make",
            "cli");

    @ArchTest
    static final ArchRule eachPackageUsesOnlyThoseAboveIt = CompositeArchRule.of(IntStream.range(0, ORDER.size())
            .mapToObj(ArchitectureTest::usesOnlyThoseAbove)
            .toList());

    @ArchTest
    static final ArchRule packagesDoNotUseEachOtherInCircles =
            slices().matching(ROOT + ".(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule nothingKnowsTheScreen =
            noClasses().should().dependOnClassesThat().resideInAPackage("javafx..");

    @ArchTest
    static final ArchRule paperAndFilesDoWithoutTheDesktop = noClasses()
            .that()
            .resideInAnyPackage(ROOT + ".drawing..", ROOT + ".packet..", ROOT + ".export..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.awt..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule everyPackageHasItsPlaceInTheOrder = classes().should().resideInAnyPackage(full(ORDER));

    private static ArchRule usesOnlyThoseAbove(int place) {
        return classes()
                .that()
                .resideInAnyPackage(full(List.of(ORDER.get(place))))
                .should()
                .onlyDependOnClassesThat(are(
                        resideInAnyPackage(full(ORDER.subList(0, place + 1))).or(outside())))
                .as(ORDER.get(place) + " uses only the packages above it")
                .allowEmptyShould(true);
    }

    private static DescribedPredicate<JavaClass> outside() {
        return DescribedPredicate.not(resideInAnyPackage(ROOT + "..")).as("not ours");
    }

    private static String[] full(List<String> names) {
        return names.stream().map(name -> ROOT + "." + name + "..").toArray(String[]::new);
    }
}
