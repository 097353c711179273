package org.standwright.viewer.scene.around;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.built.WallFrame;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.surface.FlatRegion;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceBuilder;

/**
 * What the leaf of a door passes over, from shut to open: a sector of a circle on the floor.
 *
 * @param door its opening, in the frame of the wall
 */
public record DoorSwing(WallFrame frame, Rect door, Swing swing) {
    private static final double STEP = 10;

    /** At this angle the leaf lies before the wall beside it, degrees. */
    private static final double WIDEST = 180;

    /** Above the floor, so that its lines do not shine through, mm. */
    private static final double HEIGHT = 3;

    /** Seen from above. */
    public Surface surface() {
        var corners = corners();
        var rim = IntStream.range(0, corners.size()).boxed().toList();
        // counter-clockwise in x and y of the wall is counter-clockwise from above
        return new SurfaceBuilder()
                .region(new FlatRegion(corners, rim, List.of()), this::place)
                .build();
    }

    private Vec3 place(Vec2 corner) {
        return frame.apply(new Vec3(corner.x(), corner.y(), door.y0() + HEIGHT));
    }

    /** The hinge, then the arc; x along the wall, y into it. */
    private List<Vec2> corners() {
        double angle = Math.min(swing.angle(), WIDEST);
        int steps = (int) Math.max(1, Math.ceil(angle / STEP));
        boolean left = swing.hinges() == Swing.Side.LEFT;
        var hinge = new Vec2(left ? door.x0() : door.x1(), 0);
        var corners = new ArrayList<Vec2>();
        corners.add(hinge);
        for (int i = 0; i <= steps; i++) {
            double turned = StrictMath.toRadians(angle * (left ? steps - i : i) / steps);
            double along = (left ? 1 : -1) * StrictMath.cos(turned);
            corners.add(hinge.plus(new Vec2(along, -StrictMath.sin(turned)).times(door.width())));
        }
        return corners;
    }
}
