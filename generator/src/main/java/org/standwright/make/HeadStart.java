package org.standwright.make;

import java.util.concurrent.CompletableFuture;
import org.standwright.drawing.TextMeasure;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.Solids;

/**
 * Loads, on another core, what every run needs once its design file is read: the typeface and what builds solids. A run
 * of a few seconds spends a good part of them on loading.
 */
public final class HeadStart {
    private HeadStart() {}

    /** Returns at once; nothing waits for the outcome. */
    public static void begin() {
        CompletableFuture.runAsync(() -> {
            var board = Part.blank("board", new Material("board", 18, 600, Grain.NONE), 200, 100);
            Solids.of(board.with(
                    Channel.across(Face.SHOW, 50, 68, 100, 6),
                    Hole.blind(Face.SHOW, 60, 50, 20, 9, "hole"),
                    Hole.through(150, 50, 5, "hole")));
            TextMeasure.shipped();
        });
    }
}
