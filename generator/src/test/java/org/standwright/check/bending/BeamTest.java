package org.standwright.check.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.check.bending.FiniteBeam.End;

class BeamTest {
    /** Board of 300 x 18 mm, E 9000 N/mm². */
    private static final Section BOARD = Section.plank(300, 18, 9000);

    /** Forms: Wood Handbook, FPL-GTR-190, equation 9-2 and table 9-1; the figures are worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "SIMPLE_UNIFORM, 1.52416",
        "SIMPLE_CENTRE, 2.43865",
        "SIMPLE_THIRDS, 2.07737",
        "FIXED_UNIFORM, 0.304832",
        "FIXED_CENTRE, 0.609663",
        "PROPPED_UNIFORM, 0.63273",
        "CANTILEVER_UNIFORM, 14.6319",
        "CANTILEVER_END, 39.0184"
    })
    void bendsABoardOf800MillimetresUnder300Newtons(Beam beam, double expected) {
        assertThat(beam.deflection(300, 800, BOARD.stiffness())).isCloseTo(expected, withPercentage(0.01));
    }

    /** σ = 6 M / (b t²), any book on strength of materials. */
    @Test
    void stressesTheSameBoard() {
        assertThat(BOARD.stress(Beam.SIMPLE_UNIFORM.moment(300, 800))).isCloseTo(1.85185, within(1e-5));
        assertThat(BOARD.stress(Beam.SIMPLE_CENTRE.moment(300, 800))).isCloseTo(3.70370, within(1e-5));
    }

    /** Shelf table of the Architectural Woodwork Standards, 1st edition 2009, section 10: longest shelves at L/144. */
    @ParameterizedTest
    @CsvSource({
        "950000, 0.75, 40, 40",
        "950000, 0.75, 50, 37",
        "950000, 1, 40, 53",
        "950000, 1, 50, 49",
        "1800000, 0.75, 40, 49",
        "1800000, 0.75, 50, 46",
        "1800000, 1, 40, 66",
        "1800000, 1, 50, 61",
        "1820000, 0.75, 40, 49",
        "1820000, 0.75, 50, 46",
        "1820000, 1, 40, 66",
        "1820000, 1, 50, 61"
    })
    void findsThePrintedLengthsOfShelves(double psi, double inches, double psf, double printed) {
        double stiffness = Section.plank(1, inches, psi).stiffness();
        double longest = longest(stiffness, psf / 144);

        assertThat(longest).isCloseTo(printed, within(1.0));
        if (psi == 950_000 && inches == 0.75 && psf == 40) {
            assertThat(longest).isCloseTo(40.03, within(0.01));
        }
    }

    /** By halving: where an inch of depth sags just 1/144 of its length. */
    private static double longest(double stiffness, double perInch) {
        double low = 1;
        double high = 1000;
        while (high - low > 1e-6) {
            double length = (low + high) / 2;
            boolean holds = Beam.SIMPLE_UNIFORM.deflection(perInch * length, length, stiffness) <= length / 144;
            low = holds ? length : low;
            high = holds ? high : length;
        }
        return low;
    }

    /** Formula 5 W 9.81 L³ / (32 E b t³) of the European MDF information site, 25 kg, E 2500, 300 x 18 mm. */
    @ParameterizedTest
    @CsvSource({"600, 1.8924", "800, 4.4856", "1000, 8.7609"})
    void sagsAsTheMdfSiteSays(double span, double expected) {
        double stiffness = Section.plank(300, 18, 2500).stiffness();

        assertThat(Beam.SIMPLE_UNIFORM.deflection(25 * 9.81, span, stiffness)).isCloseTo(expected, within(1e-4));
    }

    /**
     * Panel of 300,000 lbf·in²/ft, 0.719 in, 24 in simple span, 50 psf: 0.06 in. Stiffness from an agency's table as an
     * open source structural code quotes it; one span w l⁴ / (921.6 E I).
     */
    @Test
    void sagsASpanRatedPanelAsItsFormulaSays() {
        double perMillimetre = 300_000 * 4.4482216152605 * 25.4 * 25.4 / 304.8;
        double thickness = 0.719 * 25.4;
        double pressure = 50 * 47.88025898e-6;

        assertThat(perMillimetre).isCloseTo(2_824_621, within(1.0));
        assertThat(12 * perMillimetre / (thickness * thickness * thickness)).isCloseTo(5565, within(1.0));
        assertThat(Beam.SIMPLE_UNIFORM.deflection(pressure * 609.6, 609.6, perMillimetre))
                .isCloseTo(1.5240, within(1e-4));
    }

    @ParameterizedTest
    @EnumSource(Beam.class)
    void agreesWithFiniteDifferences(Beam beam) {
        var random = new SplittableRandom(beam.ordinal());
        for (int i = 0; i < 4; i++) {
            double span = random.nextDouble(200, 2000);
            double load = random.nextDouble(10, 2000);
            double stiffness = random.nextDouble(1e7, 1e10);
            var solved = solved(beam, load, span, stiffness);

            assertThat(beam.deflection(load, span, stiffness)).isCloseTo(solved.deflection(), withPercentage(1));
            assertThat(beam.moment(load, span)).isCloseTo(solved.moment(), withPercentage(2));
        }
    }

    private static FiniteBeam solved(Beam beam, double load, double span, double stiffness) {
        var even = List.of(new SpanLoad(0, span, load));
        var middle = List.of(SpanLoad.point(span / 2, load));
        return switch (beam) {
            case SIMPLE_UNIFORM -> new FiniteBeam(span, stiffness, End.SIMPLE, End.SIMPLE, even);
            case SIMPLE_CENTRE -> new FiniteBeam(span, stiffness, End.SIMPLE, End.SIMPLE, middle);
            case SIMPLE_THIRDS -> {
                var thirds = List.of(SpanLoad.point(span / 3, load / 2), SpanLoad.point(span * 2 / 3, load / 2));
                yield new FiniteBeam(span, stiffness, End.SIMPLE, End.SIMPLE, thirds);
            }
            case FIXED_UNIFORM -> new FiniteBeam(span, stiffness, End.FIXED, End.FIXED, even);
            case FIXED_CENTRE -> new FiniteBeam(span, stiffness, End.FIXED, End.FIXED, middle);
            case PROPPED_UNIFORM -> new FiniteBeam(span, stiffness, End.FIXED, End.SIMPLE, even);
            case CANTILEVER_UNIFORM -> new FiniteBeam(span, stiffness, End.FIXED, End.FREE, even);
            case CANTILEVER_END ->
                new FiniteBeam(span, stiffness, End.FIXED, End.FREE, List.of(SpanLoad.point(span, load)));
        };
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void superposesAnyLoadsAsFiniteDifferencesDo(int seed) {
        var random = new SplittableRandom(seed);
        double length = random.nextDouble(200, 2000);
        double stiffness = random.nextDouble(1e7, 1e10);
        var loads = new ArrayList<SpanLoad>();
        for (int i = 0; i < 1 + random.nextInt(5); i++) {
            double from = random.nextDouble(0, length);
            loads.add(
                    random.nextBoolean()
                            ? SpanLoad.point(from, random.nextDouble(1, 1000))
                            : new SpanLoad(from, random.nextDouble(from, length), random.nextDouble(1, 1000)));
        }
        var span = new SimpleSpan(length, stiffness, loads);
        var solved = new FiniteBeam(length, stiffness, End.SIMPLE, End.SIMPLE, loads);

        assertThat(span.deflection()).isCloseTo(solved.deflection(), withPercentage(0.5));
        assertThat(span.moment()).isCloseTo(solved.moment(), withPercentage(2));
    }

    @Test
    void superposesToTheClosedForms() {
        double stiffness = BOARD.stiffness();

        assertThat(new SimpleSpan(800, stiffness, List.of(new SpanLoad(0, 800, 300))).deflection())
                .isCloseTo(Beam.SIMPLE_UNIFORM.deflection(300, 800, stiffness), withPercentage(1e-9));
        assertThat(new SimpleSpan(800, stiffness, List.of(SpanLoad.point(400, 300))).moment())
                .isCloseTo(Beam.SIMPLE_CENTRE.moment(300, 800), withPercentage(1e-9));
    }

    @Test
    void carriesAllOfALoadOnItsTwoSupports() {
        var span = new SimpleSpan(1000, 1e9, List.of(SpanLoad.point(250, 400), new SpanLoad(500, 1000, 200)));

        assertThat(span.leftReaction()).isCloseTo(350, within(1e-9));
        assertThat(span.momentAt(1000)).isCloseTo(0, within(1e-6));
        assertThat(span.deflectionAt(1000)).isCloseTo(0, within(1e-12));
    }

    @Test
    void refusesALoadBesideTheSpan() {
        assertThatThrownBy(() -> new SimpleSpan(500, 1e9, List.of(SpanLoad.point(501, 10))))
                .hasMessage("a load ends 501.0 mm from the left support, but the span is 500.0 mm.");
    }
}
