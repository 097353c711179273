package org.standwright.viewer.scene.surface;

import java.util.HashMap;
import java.util.Map;
import org.standwright.geom.Vec3;

/** Whether surfaces are closed together: every side from place to place is there as often one way as the other. */
public final class ClosedCheck {
    private final Map<Side, Integer> sides = new HashMap<>();

    private record Side(Vec3 from, Vec3 to) {}

    public ClosedCheck add(Surface surface) {
        for (int triangle = 0; triangle < surface.triangleCount(); triangle++) {
            for (int i = 0; i < 3; i++) {
                var from = surface.point(surface.corner(triangle, i)).plus(Vec3.ZERO);
                var to = surface.point(surface.corner(triangle, (i + 1) % 3)).plus(Vec3.ZERO);
                sides.merge(new Side(from, to), 1, Integer::sum);
                sides.merge(new Side(to, from), -1, Integer::sum);
            }
        }
        return this;
    }

    /** How many sides lack their opposite. */
    public long open() {
        return sides.values().stream().filter(surplus -> surplus > 0).count();
    }
}
