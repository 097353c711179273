package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.standwright.check.Remedy;
import org.standwright.design.wall.Fixing;
import org.standwright.geom.Grid;

/** Changes that make walls hold more. Whether one can be built and is enough is found out by trying it. */
record Stronger(HungWall wall) {
    /** Of a washer head where none is chosen, in diameters of the screw's thread; common practice, no source. */
    private static final double WASHER = 2.5;

    /** For a strip: a second screw at each stud, longer ones, holders elsewhere. */
    List<Remedy> strip(StripLoad load) {
        return Stream.of(List.of(second()), longer(), elsewhere(load))
                .flatMap(List::stream)
                .toList();
    }

    Remedy second() {
        return Remedy.ofWall(
                "two screws at each stud",
                design -> design.fixing().perStud() == 1
                        ? Optional.of(design.with(new Fixing(
                                design.fixing().screw(),
                                design.fixing().length(),
                                2,
                                design.fixing().washer())))
                        : Optional.empty());
    }

    /** Each longer one that is sold, the next first. */
    List<Remedy> longer() {
        double now = wall.wall().screwing().length();
        return wall.design().fixing().screw().lengths().stream()
                .filter(length -> Grid.less(now, length))
                .map(this::screws)
                .toList();
    }

    Remedy screws(double length) {
        return Remedy.ofWall(
                "screws " + wall.units().length(length) + " long",
                design -> Optional.of(design.with(new Fixing(
                        design.fixing().screw(),
                        OptionalDouble.of(length),
                        design.fixing().perStud(),
                        design.fixing().washer()))));
    }

    /** A washer head half as wide again, and twice as wide. */
    List<Remedy> washers() {
        double now = wall.design()
                .fixing()
                .washer()
                .orElse(WASHER * wall.design().fixing().screw().diameter());
        return Stream.of(1.5 * now, 2 * now).map(this::washer).toList();
    }

    private Remedy washer(double diameter) {
        return Remedy.ofWall(
                "washer heads of " + wall.units().length(diameter),
                design -> Optional.of(design.with(new Fixing(
                        design.fixing().screw(),
                        design.fixing().length(),
                        design.fixing().perStud(),
                        OptionalDouble.of(diameter)))));
    }

    Remedy locked(String holder) {
        return Remedy.ofWall(
                "'" + holder + "' screwed to its strip through its back", design -> HolderWith.locked(design, holder));
    }

    /** Of those that hang where their maker said. */
    Optional<Remedy> elsewhere(HeldLoad load) {
        return load.holder().byHand()
                ? Optional.of(Remedy.ofWall(
                        "'" + load.holder().name() + "' where the planner hangs it",
                        design -> HolderWith.placedAnew(design, load.holder().name())))
                : Optional.empty();
    }

    List<Remedy> elsewhere(StripLoad load) {
        var remedies = new ArrayList<Remedy>();
        load.held().forEach(piece -> elsewhere(piece.body().load()).ifPresent(remedies::add));
        return remedies;
    }
}
