package org.standwright.viewer.scene;

import atlantafx.base.theme.PrimerLight;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Pose;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.viewer.scene.section.Section;
import org.standwright.viewer.scene.section.SectionPlane;
import org.standwright.viewer.scene.section.SectionPlane.Across;
import org.standwright.viewer.scene.section.SectionPlane.Kept;

/**
 * Prints how many pictures a second a turning stand gets in a window of 1000 × 700 pixels, and how long {@code show} takes
 * on the screen's thread, and a section away from it. Start it with {@code -Djavafx.animation.fullspeed=true} so as not to wait for the screen, and
 * with {@code -Dprism.forceGPU=true} where there is no graphics card.
 */
final class SceneBench {
    private static final int WARM_UP = 20;
    private static final double SECONDS = 3;
    private static final OperatingSystemMXBean SYSTEM =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private final AssemblyView view = new AssemblyView();
    private final Stage stage = new Stage();
    private final Deque<Run> runs = new ArrayDeque<>();

    private record Run(int parts, boolean edges, boolean roughly) {}

    public static void main(String[] arguments) {
        Platform.startup(() -> new SceneBench().start());
    }

    private void start() {
        Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
        stage.setScene(new Scene(view, 1000, 700));
        stage.show();
        printf("parts  edges    pictures/s  processor ms/picture%n");
        for (int parts : new int[] {60, 100, 500}) {
            runs.add(new Run(parts, false, false));
            runs.add(new Run(parts, true, false));
            runs.add(new Run(parts, true, true));
        }
        next();
    }

    private void next() {
        if (runs.isEmpty()) {
            showTimes();
            sectionTimes();
            System.exit(0);
        }
        var run = runs.poll();
        var copies = copies(run.parts());
        view.show(Scenery.of(copies, AssemblySolids.of(copies, Fineness.SCREEN)));
        view.model().edgesProperty().set(run.edges());
        view.drawRoughly(run.roughly());
        view.fit();
        new Turning(run).start();
    }

    private final class Turning extends AnimationTimer {
        private final Run run;
        private int pictures;
        private long started;
        private long cpu;

        Turning(Run run) {
            this.run = run;
        }

        @Override
        public void handle(long now) {
            view.model().viewpoint().turn(1, 0);
            pictures++;
            if (pictures == WARM_UP) {
                started = System.nanoTime();
                cpu = SYSTEM.getProcessCpuTime();
            }
            double seconds = (System.nanoTime() - started) / 1e9;
            if (pictures > WARM_UP && seconds > SECONDS) {
                stop();
                int counted = pictures - WARM_UP;
                printf(
                        "%5d  %-7s  %10.1f  %10.1f%n",
                        run.parts(),
                        run.roughly() ? "roughly" : run.edges() ? "shown" : "hidden",
                        counted / seconds,
                        (SYSTEM.getProcessCpuTime() - cpu) / 1e6 / counted);
                next();
            }
        }
    }

    /** From one state of a stand of 100 parts to another that differs by one drawer, and back. */
    private void showTimes() {
        var before = copies(100);
        var solids = AssemblySolids.of(before, Fineness.SCREEN);
        var after = withAnotherDrawer(before);
        var states = List.of(Scenery.of(before, solids), Scenery.of(after, solids.rebuilt(after)));
        var times = IntStream.range(0, 60)
                .mapToDouble(i -> {
                    long from = System.nanoTime();
                    view.show(states.get(i % 2));
                    return (System.nanoTime() - from) / 1e6;
                })
                .skip(WARM_UP)
                .sorted()
                .toArray();
        printf(
                "show with one drawer changed: median %.2f ms, slowest %.2f ms of %d%n",
                times[times.length / 2], Arrays.stream(times).max().orElseThrow(), times.length);
    }

    /** A slider that goes through a stand of 72 parts. */
    private static void sectionTimes() {
        var planer = Presets.scenery(Presets.stand("planer-stand"));
        var solids = planer.boards().stream().map(Scenery.Board::placed).toList();
        var pose = Pose.closed(planer.assembly());
        var times = IntStream.range(0, 200)
                .mapToDouble(i -> {
                    long from = System.nanoTime();
                    Section.of(solids, pose, new SectionPlane(Across.Y, 5 + 2.5 * i, Kept.HIGHER));
                    return (System.nanoTime() - from) / 1e6;
                })
                .skip(WARM_UP)
                .sorted()
                .toArray();
        printf("section of %d parts: median %.2f ms%n", solids.size(), times[times.length / 2]);
    }

    private static Assembly copies(int parts) {
        var stand = Presets.stand("mitre-saw-stand");
        var step = stand.box().size();
        var groups = new ArrayList<Group>();
        int left = parts;
        for (int copy = 0; left > 0; copy++) {
            var shift = new Vec3(copy % 3 * (step.x() + 100), copy / 3 * (step.y() + 300), 0);
            var suffix = " of " + copy;
            for (var group : stand.groups()) {
                var kept = group.parts().stream()
                        .limit(left)
                        .map(part -> new PlacedPart(
                                part.label() + suffix,
                                part.part(),
                                part.placement().moved(shift)))
                        .toList();
                left -= kept.size();
                groups.add(new Group(group.name() + suffix, group.travel(), kept, List.of()));
            }
        }
        return new Assembly("copies", groups, List.of());
    }

    private static Assembly withAnotherDrawer(Assembly before) {
        var groups = new ArrayList<>(before.groups());
        int drawer = IntStream.range(0, groups.size())
                .filter(i -> groups.get(i).moves())
                .findFirst()
                .orElseThrow();
        var group = groups.get(drawer);
        var parts = group.parts().stream()
                .map(part -> new PlacedPart(
                        part.label(), part.part().with(Hole.through(20, 20, 5, "another")), part.placement()))
                .toList();
        groups.set(drawer, new Group(group.name(), group.travel(), parts, group.blocks()));
        return new Assembly(before.name(), groups, before.hardware());
    }

    private static void printf(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
