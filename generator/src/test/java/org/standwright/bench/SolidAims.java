package org.standwright.bench;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.solid.SampleCabinet;
import org.standwright.solid.SampleParts;
import org.standwright.solid.Solids;

/** Prints what the solids take, each figure beside its aim. */
final class SolidAims {
    private static final int COLD_STARTS = 5;

    private SolidAims() {}

    static void print() throws IOException {
        System.out.println();
        SolidBench.print("%-58s %9s %9s", "figure", "measured", "aim");
        line("growth from 5 to 200 features, exponent", growth(), 1.2);
        line("one build of the shelves allocates, MB", allocated(SampleParts.shelves()), 1);
        var cabinet = SampleCabinet.parts(0);
        line("cabinet of 60 parts, warm, one thread, median, ms", warm(cabinet).median(), 10);
        line("cabinet of 60 parts, first time in a cold Java, median, ms", cold(), 150);
        for (int holes : new int[] {5, 10, 20}) {
            var part = SampleParts.brokenInto(holes);
            line(
                    holes + " edge holes that break into a groove, median, ms",
                    warm(List.of(part)).median(),
                    20);
        }
        SolidBench.print("%-58s %9.2f", "assembly of 60 parts rebuilt after one edit, median, ms", rebuilt());
        var heap = FreshJvm.output(HeapPeak.class, "-Xmx256m").split(" ");
        line("500 different parts, peak of the heap, MB", Double.parseDouble(heap[0]), 256);
        SolidBench.print("%-58s %9.1f", "500 different parts, their solids keep, MB", Double.parseDouble(heap[1]));
    }

    private static void line(String figure, double measured, double aim) {
        SolidBench.print("%-58s %9.2f %9.2f%s", figure, measured, aim, measured <= aim ? "" : "  missed");
    }

    private static Timing warm(List<Part> parts) {
        return Timing.warm(() -> parts.forEach(part -> Solids.of(part, Fineness.FILE)), 7, 500);
    }

    /** Of the solids of a pile of 60 parts, of which one is bored once more. */
    private static double rebuilt() {
        var pile = SampleCabinet.pile(60);
        var solids = AssemblySolids.of(pile, Fineness.FILE);
        var group = pile.groups().get(0);
        var edited = new ArrayList<>(group.parts());
        var first = edited.get(0);
        var more = first.part().with(Hole.through(300, 200, 8, "cord"));
        edited.set(0, new PlacedPart(first.label(), more, first.placement()));
        var assembly = new Assembly(pile.name(), List.of(Group.fixed(group.name(), edited, List.of())), List.of());
        return Timing.warm(() -> solids.rebuilt(assembly), 7, 500).median();
    }

    /** The exponent e of n^e that fits the medians best: the slope of their logarithms by least squares. */
    private static double growth() {
        var parts = List.of(
                SampleParts.grid(5, 1),
                SampleParts.grid(5, 2),
                SampleParts.grid(5, 4),
                SampleParts.grid(10, 5),
                SampleParts.grid(10, 10),
                SampleParts.grid(20, 10));
        var x = parts.stream()
                .mapToDouble(part -> Math.log(part.features().size()))
                .toArray();
        var y = parts.stream()
                .mapToDouble(part -> Math.log(warm(List.of(part)).median()))
                .toArray();
        double meanX =
                IntStream.range(0, x.length).mapToDouble(i -> x[i]).average().orElseThrow();
        double above = IntStream.range(0, x.length)
                .mapToDouble(i -> (x[i] - meanX) * y[i])
                .sum();
        double below = IntStream.range(0, x.length)
                .mapToDouble(i -> (x[i] - meanX) * x[i])
                .sum();
        return above / below;
    }

    /** By this thread. */
    private static double allocated(Part part) {
        var threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        int runs = 20;
        Solids.of(part, Fineness.FILE);
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < runs; i++) {
            Solids.of(part, Fineness.FILE);
        }
        return (threads.getCurrentThreadAllocatedBytes() - before) / 1e6 / runs;
    }

    private static double cold() throws IOException {
        var millis = new ArrayList<Double>();
        for (int i = 0; i < COLD_STARTS; i++) {
            millis.add(Double.parseDouble(FreshJvm.output(ColdCabinet.class, "-XX:+UseSerialGC")));
        }
        return Timing.of(millis).median();
    }
}
