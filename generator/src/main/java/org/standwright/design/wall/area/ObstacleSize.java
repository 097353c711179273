package org.standwright.design.wall.area;

import java.util.List;
import java.util.OptionalDouble;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.wall.Obstacle;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.unit.Units;

/** Where one obstacle is by its maker's measurements, casing and margin left aside. */
final class ObstacleSize {
    private final Obstacle obstacle;
    private final String wall;
    private final Units units;
    private final String field;

    ObstacleSize(Obstacle obstacle, String wall, Units units, String field) {
        this.obstacle = obstacle;
        this.wall = wall;
        this.units = units;
        this.field = field;
    }

    /** A door starts at the lower edge of the wall, and furniture no lower than that. */
    Rect itself(Rect bounds) {
        swings();
        notNegative("casing", obstacle.casing());
        notNegative("depth", obstacle.depth());
        obstacle.margin().ifPresent(margin -> notNegative("margin", margin));
        double width = size(
                "width",
                obstacle.stand().map(box -> OptionalDouble.of(box.width())).orElse(obstacle.width()));
        double height = size(
                "height",
                obstacle.stand().map(box -> OptionalDouble.of(box.height())).orElse(obstacle.height()));
        boolean door = obstacle.kind() == Obstacle.Kind.DOOR;
        double top = door ? height : obstacle.bottom() + height;
        double foot = door
                ? bounds.y0()
                : obstacle.kind().isFurniture() ? Math.max(bounds.y0(), obstacle.bottom()) : obstacle.bottom();
        if (!Grid.less(foot, top)) {
            throw new ImpossibleDesignException(
                    field + "/height",
                    called() + " reaches up to " + units.length(top) + ", below the lower edge of the wall at "
                            + units.length(foot) + ".",
                    List.of("Leave it out."));
        }
        return new Rect(obstacle.x(), foot, obstacle.x() + width, top);
    }

    private void swings() {
        if (obstacle.swing().isPresent() && obstacle.kind() != Obstacle.Kind.DOOR) {
            throw new ImpossibleDesignException(
                    field + "/swing",
                    called() + " has a swing, but only doors have.",
                    List.of("Leave its swing out, or say that its kind is door."));
        }
    }

    private double size(String what, OptionalDouble given) {
        double size = given.orElseThrow(() -> new ImpossibleDesignException(
                field + "/" + what,
                called() + " has no " + what + ".",
                List.of(
                        obstacle.kind() == Obstacle.Kind.STAND
                                ? "Name the stand that stands there, or give its " + what + "."
                                : "Give its " + what + ".")));
        if (!Grid.less(0, size)) {
            throw new ImpossibleDesignException(
                    field + "/" + what,
                    "The " + what + " of " + called() + " is " + units.length(size) + ", but must be more than 0.",
                    List.of("Measure it again."));
        }
        return size;
    }

    private void notNegative(String what, double size) {
        if (!(size >= 0)) {
            throw new ImpossibleDesignException(
                    field + "/" + what,
                    called() + " has a " + what + " of " + units.length(size) + ", but it must be 0 or more.",
                    List.of("Leave it out for the usual one."));
        }
    }

    private String called() {
        return "'" + obstacle.called() + "' of wall '" + wall + "'";
    }
}
