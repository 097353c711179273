package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import org.standwright.solid.layer.Ring;
import org.standwright.solid.mesh.Planes.Plane;

/**
 * A prism on the grid: a blank, or what one tool sweeps out of it.
 *
 * @param ring seen against its direction
 * @param bottom lower w of its direction, 1/1024 mm: of an upright prism its lower z
 * @param top upper w, above {@code bottom}
 */
record Prism(Direction direction, Ring ring, int bottom, int top) implements Tool {
    Prism {
        if (!ring.isSomething() || top <= bottom) {
            throw new IllegalArgumentException(
                    "a prism of " + ring.size() + " corners from " + bottom + " to " + top + " encloses nothing.");
        }
    }

    static Prism upright(Ring ring, int bottom, int top) {
        return new Prism(Direction.UP, ring, bottom, top);
    }

    static Prism box(Extent box) {
        return upright(Ring.rectangle(box.x0(), box.y0(), box.x1(), box.y1()), box.z0(), box.z1());
    }

    @Override
    public Extent extent() {
        return direction.inSpace(seen());
    }

    /** The box around it in its direction's frame. */
    Extent seen() {
        return new Extent(ring.minU(), ring.minV(), bottom, ring.maxU(), ring.maxV(), top);
    }

    /** Whether it takes from the board's two faces alone. */
    boolean isUpright() {
        return direction == Direction.UP;
    }

    /** x, y and z of a corner of its ring at height {@code w}. */
    int[] point(int corner, int w) {
        return direction.xyz(ring.u(corner), ring.v(corner), w);
    }

    /** The plane of the side that begins at a corner of its ring, facing outwards. */
    Plane side(int corner) {
        int next = ring.next(corner);
        return direction.inSpace(Plane.upright(ring.u(corner), ring.v(corner), ring.u(next), ring.v(next)));
    }

    /** The plane square to its direction at {@code w}, facing that way (1) or against it (-1). */
    Plane level(int w, int side) {
        return direction.inSpace(Plane.level(w, side));
    }

    @Override
    public List<Side> sides() {
        var sides = new ArrayList<Side>();
        for (int i = 0; i < ring.size(); i++) {
            int next = ring.next(i);
            sides.add(
                    new Side(side(i), List.of(point(i, bottom), point(next, bottom), point(next, top), point(i, top))));
        }
        for (var piece : ConvexPieces.of(ring)) {
            var up = new ArrayList<int[]>();
            var down = new ArrayList<int[]>();
            for (int i = 0; i < piece.length; i++) {
                up.add(point(piece[i], top));
                down.add(point(piece[piece.length - 1 - i], bottom));
            }
            sides.add(new Side(level(top, 1), up));
            sides.add(new Side(level(bottom, -1), down));
        }
        return sides;
    }

    @Override
    public double volumeWithin(Extent board) {
        var whole = direction.seen(board);
        return ring.area() * Math.max(0, Math.min(top, whole.z1()) - Math.max(bottom, whole.z0()));
    }
}
