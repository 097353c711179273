package org.standwright.check.balance.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/** What a stand is sure to stand on, against feet put down at random on their circles; JTS draws the hull of those. */
class SupportPolygonTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    @Test
    void levelersSpanTheRectangleOfTheirFeet() {
        var polygon = SupportPolygon.of(List.of(
                Contact.at(0, 0), Contact.at(600, 0), Contact.at(0, 400), Contact.at(600, 400), Contact.at(300, 200)));

        assertThat(insides(polygon, 100, 150)).containsExactlyInAnyOrder(100.0, 150.0, 500.0, 250.0);
    }

    /** All four wheels may point inwards, away from the edge that tips. */
    @Test
    void swivelCastersStandInwardsByTheirTrail() {
        var polygon = SupportPolygon.of(List.of(swivel(0, 0), swivel(600, 0), swivel(0, 400), swivel(600, 400)));

        assertThat(insides(polygon, 100, 150)).containsExactlyInAnyOrder(65.0, 115.0, 465.0, 215.0);
    }

    /**
     * Fixed at the back: the side edges run aslant, from the back wheels to the front circles' inner tangent points.
     */
    @Test
    void aSideOfAFixedAndASwivelCasterTipsOverTheInnerTangent() {
        var polygon =
                SupportPolygon.of(List.of(swivel(0, 0), swivel(600, 0), Contact.at(0, 400), Contact.at(600, 400)));
        var left = polygon.edges().stream()
                .filter(edge -> edge.normal().x() < -0.9)
                .findFirst()
                .orElseThrow();

        assertThat(left.inside(new Vec3(0, 400, 0))).isEqualTo(0, within(1e-9));
        assertThat(left.inside(new Vec3(0, 0, 0))).isEqualTo(-35, within(1e-9));
    }

    @Test
    void nothingStandsOnFeetInARow() {
        var polygon = SupportPolygon.of(List.of(Contact.at(0, 0), Contact.at(300, 0), Contact.at(600, 0)));

        assertThat(margin(polygon, new Vec2(200, 1))).isNegative();
        assertThat(margin(polygon, new Vec2(200, -1))).isNegative();
        assertThat(margin(polygon, new Vec2(-1, 0))).isNegative();
        assertThat(margin(polygon, new Vec2(200, 0))).isEqualTo(0, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isNeverMoreFavourableThanAnySwivel(long seed) {
        var random = new SplittableRandom(seed);
        var contacts = contacts(random);
        var polygon = SupportPolygon.of(contacts);
        for (int i = 0; i < 200; i++) {
            var point = new Vec2(random.nextDouble(-100, 900), random.nextDouble(-100, 700));
            if (margin(polygon, point) > 1e-6) {
                assertThat(holds(swivelled(contacts, random), point)).isTrue();
            }
        }
    }

    /** A point that it does not hold falls at some swivel: that in which all wheels point away from the edge. */
    @ParameterizedTest
    @MethodSource("seeds")
    void isNoLessFavourableThanTheWorstSwivel(long seed) {
        var random = new SplittableRandom(seed);
        var contacts = contacts(random);
        var polygon = SupportPolygon.of(contacts);
        for (var edge : polygon.edges()) {
            var beyond = edge.normal().times(edge.offset() + 0.01);
            var turned = contacts.stream()
                    .map(contact -> contact.centre().minus(edge.normal().times(contact.radius())))
                    .toList();
            assertThat(holds(turned, beyond)).isFalse();
        }
    }

    private static Contact swivel(double x, double y) {
        return new Contact(new Vec2(x, y), 35);
    }

    private static List<Contact> contacts(SplittableRandom random) {
        var contacts = new ArrayList<Contact>();
        int count = 3 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            contacts.add(new Contact(
                    new Vec2(random.nextDouble(0, 800), random.nextDouble(0, 600)),
                    random.nextBoolean() ? 0 : random.nextDouble(0, 60)));
        }
        return contacts;
    }

    private static List<Vec2> swivelled(List<Contact> contacts, SplittableRandom random) {
        return contacts.stream()
                .map(contact -> {
                    double angle = random.nextDouble(0, 2 * Math.PI);
                    return contact.centre().plus(new Vec2(Math.cos(angle), Math.sin(angle)).times(contact.radius()));
                })
                .toList();
    }

    private static boolean holds(List<Vec2> feet, Vec2 point) {
        var factory = new GeometryFactory();
        var corners = feet.stream().map(SupportPolygonTest::coordinate).toArray(Coordinate[]::new);
        var hull = new ConvexHull(corners, factory).getConvexHull();
        return hull.distance(factory.createPoint(coordinate(point))) < 1e-9;
    }

    private static Coordinate coordinate(Vec2 point) {
        return new Coordinate(point.x(), point.y());
    }

    private static double margin(SupportPolygon polygon, Vec2 point) {
        return insides(polygon, point.x(), point.y()).stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElseThrow();
    }

    private static List<Double> insides(SupportPolygon polygon, double x, double y) {
        return polygon.edges().stream()
                .map(edge -> Math.round(1e9 * edge.inside(new Vec3(x, y, 0))) / 1e9)
                .toList();
    }
}
