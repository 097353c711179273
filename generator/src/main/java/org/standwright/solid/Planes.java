package org.standwright.solid;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The oriented planes that the faces of one solid lie on, numbered as they come: equal planes, equal numbers. */
final class Planes {
    /**
     * All points p with normal · p = offset; the normal points out of the solid and has no common divisor.
     *
     * @param offset in 1/1024 mm times the normal's length
     */
    record Plane(long nx, long ny, long nz, long offset) {
        static Plane level(int z, int side) {
            return new Plane(0, 0, side, (long) side * z);
        }

        /** Upright, through two corners, facing to the right of the way from {@code a} to {@code b}. */
        static Plane upright(Prism.Corner a, Prism.Corner b) {
            long dx = b.x() - a.x();
            long dy = b.y() - a.y();
            long divisor = BigInteger.valueOf(dx).gcd(BigInteger.valueOf(dy)).longValueExact();
            long nx = dy / divisor;
            long ny = -dx / divisor;
            return new Plane(nx, ny, 0, nx * a.x() + ny * a.y());
        }

        Plane turned() {
            return new Plane(-nx, -ny, -nz, -offset);
        }
    }

    private final Map<Plane, Integer> numbers = new HashMap<>();
    private final List<Plane> planes = new ArrayList<>();

    int number(Plane plane) {
        return numbers.computeIfAbsent(plane, fresh -> {
            planes.add(fresh);
            return planes.size() - 1;
        });
    }

    Plane get(int number) {
        return planes.get(number);
    }

    int count() {
        return planes.size();
    }
}
