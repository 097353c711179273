package org.standwright.viewer.scene.around;

import org.standwright.design.wall.Person;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.surface.Surface;

/**
 * A plain figure of a person for scale: stands upright, looks away from us, forearms level as at work.
 *
 * @param stature height with shoes, mm
 * @param elbow height of the bent elbow, mm
 * @param feet where it stands, between the feet
 */
public record Figure(double stature, double elbow, Vec3 feet) {
    /** Of a person who is not known, mm. */
    public static final double USUAL_STATURE = 1750;

    /** Elbow height over stature (references 6.1). */
    private static final double ELBOW = 0.629;

    /** Eye height over stature; common proportion, from memory. */
    private static final double EYE = 0.936;

    /** Half its width over its stature. */
    private static final double HALF_WIDTH = 0.17;

    public Figure {
        if (!(Grid.less(0, elbow) && Grid.less(elbow, BodyShape.SHOULDER * stature))) {
            throw new IllegalArgumentException("an elbow at " + elbow + " mm and a stature of " + stature
                    + " mm do not belong to one person; the elbow lies below the shoulder, at "
                    + BodyShape.SHOULDER + " of the stature.");
        }
    }

    /** A person of usual proportions at the origin. */
    public static Figure of(double stature) {
        return new Figure(stature, ELBOW * stature, Vec3.ZERO);
    }

    /** Who works at a wall: elbow and eyes at the heights given, unless the eyes are too low for the elbow. */
    public static Figure of(Person person) {
        double stature = Math.max(person.eye() / EYE, person.elbow() / (BodyShape.SHOULDER - 0.05));
        return new Figure(stature, person.elbow(), Vec3.ZERO);
    }

    /** The same at another place. */
    public Figure at(Vec3 place) {
        return new Figure(stature, elbow, place);
    }

    double halfWidth() {
        return HALF_WIDTH * stature;
    }

    /** A closed surface, round wherever triangles share a corner. */
    public Surface surface() {
        return new BodyShape(this).surface();
    }

    /** The room that it takes. */
    public Box3 box() {
        double reach = BodyShape.REACH * stature;
        return new Box3(
                feet.plus(new Vec3(-halfWidth(), -0.08 * stature, 0)),
                feet.plus(new Vec3(halfWidth(), reach, stature)));
    }
}
