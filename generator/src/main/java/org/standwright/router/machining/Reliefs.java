package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.standwright.design.kit.Router;
import org.standwright.geom.Grid;

/**
 * How the inside corners of one pocket are cut: rounded ones as designed; square ones, which a square mate goes into,
 * relieved where there is room, else as round as the bit leaves them.
 */
final class Reliefs {
    /** What a bit leaves in a corner so blunt that it is not worth a relief, mm. */
    private static final double LITTLE = 0.05;

    /** Half of the sharpest angle that is relieved, radians: the bit's way into a sharper one takes the walls with it. */
    private static final double SHARPEST = Math.PI / 12;

    private final Sunk sunk;
    private final double bit;
    private final Router.Relief relief;
    private final List<CornerCut> cuts;
    private final List<Integer> round = new ArrayList<>();
    private final List<Integer> relieved = new ArrayList<>();

    Reliefs(Sunk sunk, Router router, Ground ground, Neighbours neighbours) {
        this.sunk = sunk;
        bit = router.bit();
        relief = router.relief();
        cuts = new ArrayList<>(sunk.designed());
        var square = new ArrayList<Integer>();
        for (int i = 0; i < sunk.count(); i++) {
            if (isSquare(i, ground, neighbours)) {
                square.add(i);
            }
        }
        relieve(square, ground, neighbours);
        square.stream().filter(i -> !relieved.contains(i)).forEach(this::leaveRound);
    }

    /** None: all corners as designed. */
    Reliefs(Sunk sunk) {
        this.sunk = sunk;
        cuts = sunk.designed();
        bit = 0;
        relief = Router.Relief.NONE;
    }

    /** Its corners in turn. */
    List<CornerCut> cuts() {
        return cuts;
    }

    /** Whether any corner got relief. */
    boolean isRelieved() {
        return !relieved.isEmpty();
    }

    /** Where corners stay round, '(100, 50), (200, 50)'; empty if none do. */
    Optional<String> roundAt() {
        return round.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Places.of(round.stream().map(sunk.outline()::corner).toList()));
    }

    private boolean isSquare(int i, Ground ground, Neighbours neighbours) {
        var corner = sunk.corner(i);
        return sunk.radius() == 0
                && corner.isInside()
                && !sunk.isOpen(i)
                && bit / 2 * (1 / StrictMath.sin(corner.half()) - 1) > LITTLE
                && ground.isInside(corner.at())
                && !neighbours.swallow(sunk, corner.at());
    }

    private void relieve(List<Integer> square, Ground ground, Neighbours neighbours) {
        if (relief == Router.Relief.NONE) {
            return;
        }
        var own = Flat.of(sunk.outline());
        var wanted = new ArrayList<CornerCut>(cuts);
        var blunt =
                square.stream().filter(i -> sunk.corner(i).half() >= SHARPEST).toList();
        blunt.forEach(i -> wanted.set(i, relief(sunk.corner(i))));
        for (int i : blunt) {
            var beyond = Flat.without(wanted.get(i).relief().orElseThrow(), own);
            if (hasRoom(i, blunt, wanted, beyond, own)
                    && ground.area().covers(beyond)
                    && isSimple(i, wanted.get(i))
                    && !neighbours.meet(sunk, beyond)) {
                relieved.add(i);
            }
        }
        relieved.forEach(i -> cuts.set(i, wanted.get(i)));
    }

    private CornerCut relief(Corner corner) {
        return relief == Router.Relief.T_BONE ? corner.tBone(bit) : corner.dogBone(bit);
    }

    /** Whether its sides are long enough for it and its neighbours', and no other relief cuts where it does. */
    private boolean hasRoom(int i, List<Integer> square, List<CornerCut> wanted, Geometry beyond, Geometry own) {
        int count = sunk.count();
        var corner = sunk.corner(i);
        double before =
                wanted.get(i).before() + wanted.get(Math.floorMod(i - 1, count)).after();
        double after = wanted.get(i).after() + wanted.get((i + 1) % count).before();
        return !Grid.less(corner.before(), before)
                && !Grid.less(corner.after(), after)
                && square.stream()
                        .filter(j -> j != i)
                        .noneMatch(j -> Flat.without(wanted.get(j).relief().orElseThrow(), own)
                                .isWithinDistance(beyond, Grid.STEP));
    }

    /** Whether the line with this relief alone still meets itself nowhere. */
    private boolean isSimple(int i, CornerCut cut) {
        var alone = new ArrayList<>(sunk.designed());
        alone.set(i, cut);
        return Flat.of(sunk.loop(alone)).isValid();
    }

    /** As the bit leaves it, if its sides are long enough; of no use to a narrower bit otherwise. */
    private void leaveRound(int i) {
        round.add(i);
        var corner = sunk.corner(i);
        double back = corner.rounding(bit / 2);
        int count = sunk.count();
        double before = room(Math.floorMod(i - 1, count), corner.before(), true);
        double after = room((i + 1) % count, corner.after(), false);
        if (!Grid.less(before, back) && !Grid.less(after, back)) {
            cuts.set(i, corner.round(bit / 2));
        }
    }

    /** What of a side the corner at its other end leaves: half, if that one is inside too. */
    private double room(int other, double length, boolean itBegins) {
        var cut = cuts.get(other);
        double left = length - (itBegins ? cut.after() : cut.before());
        return sunk.corner(other).isInside() && !sunk.isOpen(other) ? Math.min(left, length / 2) : left;
    }
}
