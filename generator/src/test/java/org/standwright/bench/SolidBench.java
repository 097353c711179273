package org.standwright.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.standwright.part.Part;
import org.standwright.solid.Fineness;
import org.standwright.solid.SampleParts;
import org.standwright.solid.Solid;
import org.standwright.solid.Solids;

/** Prints size and warm build time of the solids of the sample parts, as a table. */
public final class SolidBench {
    private static final int WARM_UP = 15;
    private static final int RUNS = 25;

    private SolidBench() {}

    public static void main(String[] args) {
        print("%-14s %8s %9s %9s %9s %9s", "part", "features", "vertices", "triangles", "median ms", "least ms");
        Stream.concat(
                        SampleParts.all().values().stream(),
                        Stream.of(SampleParts.grid(10, 10), SampleParts.grid(20, 10)))
                .forEach(SolidBench::measure);
    }

    private static void measure(Part part) {
        for (int i = 0; i < WARM_UP; i++) {
            Solids.of(part, Fineness.FILE);
        }
        var millis = new double[RUNS];
        Solid solid = Solids.of(part, Fineness.FILE);
        for (int i = 0; i < RUNS; i++) {
            long start = System.nanoTime();
            solid = Solids.of(part, Fineness.FILE);
            millis[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(millis);
        print(
                "%-14s %8d %9d %9d %9.2f %9.2f",
                part.name(),
                part.features().size(),
                solid.vertexCount(),
                solid.triangleCount(),
                millis[RUNS / 2],
                millis[0]);
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
