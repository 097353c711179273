package org.standwright.viewer.hand;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Thing;

/** Which thing an arrow key leads to. */
final class Neighbours {
    /** What lies aside is as far as what lies so many times farther ahead. */
    private static final double ASIDE = 3;

    private final List<Thing> things;

    Neighbours(List<Thing> things) {
        this.things = things;
    }

    /** The first that holds no others. */
    Optional<Thing> first() {
        return things.stream().filter(this::isInnermost).findFirst();
    }

    /** The nearest in a direction that is of the same level. */
    Optional<Thing> beside(Thing from, int right, int up) {
        return things.stream()
                .filter(other -> other != from && isOnLevel(other, from))
                .filter(other -> ahead(from.area(), other.area(), right, up) > 0)
                .min(Comparator.comparingDouble(other -> distance(from.area(), other.area(), right, up)));
    }

    private boolean isOnLevel(Thing other, Thing from) {
        return isInnermost(from) ? isInnermost(other) : other.around().equals(from.around());
    }

    private boolean isInnermost(Thing thing) {
        return things.stream()
                .noneMatch(other -> other.around().filter(thing.key()::equals).isPresent());
    }

    private static double ahead(Rect from, Rect to, int right, int up) {
        double x = (to.x0() + to.x1() - from.x0() - from.x1()) / 2;
        double y = (to.y0() + to.y1() - from.y0() - from.y1()) / 2;
        return right * x + up * y;
    }

    private static double distance(Rect from, Rect to, int right, int up) {
        double aside = right == 0
                ? apart(from.x0(), from.x1(), to.x0(), to.x1())
                : apart(from.y0(), from.y1(), to.y0(), to.y1());
        return ahead(from, to, right, up) + ASIDE * aside;
    }

    /** From middle to middle; 0 where both lie in one line. */
    private static double apart(double from, double to, double otherFrom, double otherTo) {
        boolean inLine = otherFrom < to && from < otherTo;
        return inLine ? 0 : Math.abs(otherFrom + otherTo - from - to) / 2;
    }
}
