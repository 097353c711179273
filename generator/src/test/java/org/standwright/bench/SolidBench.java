package org.standwright.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.part.Part;
import org.standwright.solid.Fineness;
import org.standwright.solid.SampleParts;
import org.standwright.solid.Solid;
import org.standwright.solid.Solids;

/** Prints what the solids of the sample parts take, beside what another library takes for the same cuts. */
public final class SolidBench {
    private static final int ROUNDS = 5;
    /** Of one round, each way. */
    private static final int FEWEST = 3;

    private static final int MILLIS = 100;
    /** The compiler takes its time beside the other library. */
    private static final int WARM_UP_MILLIS = 2500;

    private SolidBench() {}

    private record Measured(Part part, Solid solid, Timing ours) {
        int features() {
            return part.features().size();
        }
    }

    private record Compared(Measured measured, Timing theirs, String way, OtherKernel.Size size) {}

    public static void main(String[] args) throws IOException {
        var parts = Stream.concat(
                        SampleParts.measured().stream(), IntStream.of(5, 10, 20).mapToObj(SampleParts::brokenInto))
                .toList();
        var kernel = OtherKernel.start(parts);
        try {
            compare(parts, kernel);
        } finally {
            if (kernel.isPresent()) {
                kernel.get().close();
            }
        }
        SolidAims.print();
    }

    private static void compare(List<Part> parts, Optional<OtherKernel> kernel) {
        var compared = new ArrayList<Compared>();
        System.out.println("solids for files, warm, milliseconds");
        print("%-26s %8s %8s %9s %9s %9s %9s", "part", "features", "vertices", "triangles", "median", "p95", "least");
        for (var part : parts) {
            measure(part, kernel, compared);
        }
        if (compared.isEmpty()) {
            return;
        }
        System.out.println("\nthe same cuts by manifold-3d in WebAssembly, in turn with ours: medians, milliseconds");
        print(
                "%-26s %8s %9s %9s %7s %9s %10s %12s  %s",
                "part", "features", "ours", "manifold", "ratio", "our tri.", "its simpl.", "volume, mm3", "its way");
        compared.forEach(SolidBench::row);
    }

    /** In turn, so that what else the machine does slows both down. */
    private static void measure(Part part, Optional<OtherKernel> kernel, List<Compared> compared) {
        Runnable work = () -> Solids.of(part, Fineness.FILE);
        Timing.runs(work, 1, WARM_UP_MILLIS);
        var way = kernel.map(other -> other.warm(part, 500));
        var ours = new ArrayList<Double>();
        var theirs = new ArrayList<Double>();
        for (int i = 0; i < ROUNDS; i++) {
            ours.addAll(Timing.runs(work, FEWEST, MILLIS));
            kernel.ifPresent(other -> theirs.addAll(other.runs(part, MILLIS)));
        }
        var measured = new Measured(part, Solids.of(part, Fineness.FILE), Timing.of(ours));
        print(
                "%-26s %8d %8d %9d %9.2f %9.2f %9.2f",
                part.name(),
                measured.features(),
                measured.solid.vertexCount(),
                measured.solid.triangleCount(),
                measured.ours.median(),
                measured.ours.p95(),
                measured.ours.least());
        kernel.ifPresent(
                other -> compared.add(new Compared(measured, Timing.of(theirs), way.orElseThrow(), other.size(part))));
    }

    private static void row(Compared compared) {
        var measured = compared.measured;
        print(
                "%-26s %8d %9.2f %9.2f %7.2f %9d %10d %12.4f  %s",
                measured.part.name(),
                measured.features(),
                measured.ours.median(),
                compared.theirs.median(),
                measured.ours.median() / compared.theirs.median(),
                measured.solid.triangleCount(),
                compared.size.simplified(),
                measured.solid.volume() - compared.size.volume(),
                compared.size.status().equals("NoError") ? compared.way : compared.size.status());
    }

    static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
