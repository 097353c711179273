package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import org.standwright.solid.layer.Ring;
import org.standwright.solid.mesh.Planes.Plane;

/**
 * A countersink: a cone from its mouth in a face to its hole, and straight on outside the board.
 *
 * @param mouth at the face
 * @param bore where it meets its hole; as many corners as {@code mouth}, inside of it seen from above
 * @param face z of the mouth, 1/1024 mm
 * @param floor z of the bore
 * @param beyond z outside the board at which it ends
 */
record Cone(Ring mouth, Ring bore, int face, int floor, int beyond) implements Tool {
    /** Whether it opens upwards. */
    boolean isUp() {
        return face > floor;
    }

    @Override
    public Extent extent() {
        return new Extent(
                mouth.minU(),
                mouth.minV(),
                Math.min(floor, beyond),
                mouth.maxU(),
                mouth.maxV(),
                Math.max(floor, beyond));
    }

    @Override
    public List<Side> sides() {
        var sides = new ArrayList<Side>();
        var lid = new ArrayList<int[]>();
        var base = new ArrayList<int[]>();
        for (int i = 0; i < mouth.size(); i++) {
            int next = mouth.next(i);
            sides.addAll(flank(i));
            sides.add(side(at(mouth, i, face), at(mouth, next, face), at(mouth, next, beyond), at(mouth, i, beyond)));
            lid.add(at(mouth, i, beyond));
            base.add(0, at(bore, i, floor));
        }
        sides.add(side(lid.toArray(int[][]::new)));
        sides.add(side(base.toArray(int[][]::new)));
        return sides;
    }

    /** The two triangles between a corner and the next; rounding has seldom left them in one plane. */
    List<Side> flank(int corner) {
        int next = mouth.next(corner);
        return List.of(
                side(at(bore, corner, floor), at(bore, next, floor), at(mouth, next, face)),
                side(at(bore, corner, floor), at(mouth, next, face), at(mouth, corner, face)));
    }

    /** From corners that run counter-clockwise from outside on a cone that opens upwards. */
    private Side side(int[]... corners) {
        var turned = new ArrayList<int[]>();
        for (var corner : corners) {
            turned.add(isUp() ? turned.size() : 0, corner);
        }
        return new Side(Plane.through(turned.get(0), turned.get(1), turned.get(2)), turned);
    }

    private static int[] at(Ring ring, int corner, int z) {
        return new int[] {ring.u(corner), ring.v(corner), z};
    }

    /** That of the straight cylinder round it: never too little. */
    @Override
    public double volumeWithin(Extent board) {
        return mouth.area() * Math.abs(face - floor);
    }
}
