package org.standwright.viewer.scene;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.standwright.assembly.Pose;
import org.standwright.viewer.scene.section.SectionPlane;
import org.standwright.viewer.scene.section.SectionPlane.Across;
import org.standwright.viewer.scene.section.SectionPlane.Kept;

/** Has cuts made away from the screen's thread. */
final class Sectioning {
    /** By then the window is up. */
    private static final Executor LATER = CompletableFuture.delayedExecutor(2, TimeUnit.SECONDS);

    private final Newest<Asked, Cuts> newest;
    private boolean warm;

    private record Asked(Scenery scenery, Pose pose, SectionPlane plane) {
        Cuts cuts() {
            return Cuts.of(scenery, pose, plane);
        }
    }

    /** @param shown gets them when they are made */
    Sectioning(Consumer<Cuts> shown) {
        newest = new Newest<>(Asked::cuts, shown);
    }

    void ask(Scenery scenery, Pose pose, SectionPlane plane) {
        warm = true;
        newest.ask(new Asked(scenery, pose, plane));
    }

    /** Makes one that nobody sees, once: the first takes as long as thirty others. */
    void warmUp(Scenery scenery, Pose pose) {
        if (!warm) {
            warm = true;
            var middle =
                    new SectionPlane(Across.Y, scenery.assembly().box().centre().y(), Kept.HIGHER);
            LATER.execute(() -> new Asked(scenery, pose, middle).cuts());
        }
    }
}
