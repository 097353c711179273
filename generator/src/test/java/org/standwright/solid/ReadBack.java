package org.standwright.solid;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standwright.export.mesh.StlWriter;

/**
 * What a stranger finds in a binary STL file: triangles whose corners are the same where their coordinates are. Knows
 * nothing of how the file came about.
 */
public final class ReadBack {
    /** A corner of a triangle, mm. */
    public record Point(float x, float y, float z) {}

    /** A triangle with the normal that the file gives it. */
    public record Triangle(Point normal, Point a, Point b, Point c) {
        double[] cross() {
            double ux = (double) b.x - a.x;
            double uy = (double) b.y - a.y;
            double uz = (double) b.z - a.z;
            double vx = (double) c.x - a.x;
            double vy = (double) c.y - a.y;
            double vz = (double) c.z - a.z;
            return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
        }
    }

    private record Edge(Point from, Point to) {}

    private final List<Triangle> triangles = new ArrayList<>();

    private ReadBack(byte[] stl) {
        var bytes = ByteBuffer.wrap(stl).order(ByteOrder.LITTLE_ENDIAN);
        int count = bytes.getInt(80);
        bytes.position(84);
        for (int i = 0; i < count; i++) {
            triangles.add(new Triangle(point(bytes), point(bytes), point(bytes), point(bytes)));
            bytes.getShort();
        }
    }

    public static ReadBack of(byte[] stl) {
        return new ReadBack(stl);
    }

    public static ReadBack of(Solid solid) {
        return new ReadBack(stl(solid));
    }

    public static byte[] stl(Solid solid) {
        var out = new ByteArrayOutputStream();
        try {
            StlWriter.write(solid, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static Point point(ByteBuffer bytes) {
        return new Point(bytes.getFloat(), bytes.getFloat(), bytes.getFloat());
    }

    public List<Triangle> triangles() {
        return triangles;
    }

    /** How often each directed edge occurs more often than its opposite, summed: 0 when nothing is open. */
    public int openEdges() {
        var counts = counts();
        return counts.entrySet().stream()
                .mapToInt(entry -> {
                    var edge = entry.getKey();
                    int back = counts.getOrDefault(new Edge(edge.to, edge.from), 0);
                    return Math.max(0, entry.getValue() - back);
                })
                .sum();
    }

    /** Edges with more than two faces: where the solid touches itself. */
    public long crowdedEdges() {
        return counts().values().stream().filter(count -> count > 1).count();
    }

    private Map<Edge, Integer> counts() {
        var counts = new HashMap<Edge, Integer>();
        for (var t : triangles) {
            counts.merge(new Edge(t.a, t.b), 1, Integer::sum);
            counts.merge(new Edge(t.b, t.c), 1, Integer::sum);
            counts.merge(new Edge(t.c, t.a), 1, Integer::sum);
        }
        return counts;
    }

    /** Vertices - edges + faces. */
    public int euler() {
        var points = new HashMap<Point, Integer>();
        triangles.forEach(t -> List.of(t.a, t.b, t.c).forEach(p -> points.merge(p, 1, Integer::sum)));
        return points.size() - counts().size() / 2 + triangles.size();
    }

    /** By the divergence theorem with the field (0, 0, z): mm³. */
    public double volume() {
        return triangles.stream()
                .mapToDouble(t -> t.cross()[2] * ((double) t.a.z + t.b.z + t.c.z) / 6)
                .sum();
    }

    /** Sum of area times normal: nothing, for a closed surface. */
    public double openArea() {
        var sum = new double[3];
        for (var t : triangles) {
            var cross = t.cross();
            for (int i = 0; i < 3; i++) {
                sum[i] += cross[i] / 2;
            }
        }
        return Math.abs(sum[0]) + Math.abs(sum[1]) + Math.abs(sum[2]);
    }

    /** Area of all faces that look straight up, by their height. */
    public Map<Float, Double> upwardAreas() {
        var areas = new TreeMap<Float, Double>();
        for (var t : triangles) {
            if (t.a.z == t.b.z && t.b.z == t.c.z && t.cross()[2] > 0) {
                areas.merge(t.a.z, t.cross()[2] / 2, Double::sum);
            }
        }
        return areas;
    }
}
