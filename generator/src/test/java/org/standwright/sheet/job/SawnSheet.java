package org.standwright.sheet.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.standwright.sheet.job.PieceType.Ways;

/** A sheet of 2440 x 1220 mm sawn at random by cuts from edge to edge, its pieces handed back shuffled. Tenths of a mm. */
public final class SawnSheet {
    private static final int KERF = 32;
    private static final int LENGTH = 24400 + KERF;
    private static final int WIDTH = 12200 + KERF;
    /** Shorter panels are not cut any more. */
    private static final int LEAST = 1000;

    private final Random random;
    private final List<PieceType> panels = new ArrayList<>();

    private SawnSheet(long seed) {
        this.random = new Random(seed);
        panels.add(panel(LENGTH, WIDTH));
    }

    /** A job that can be done with one sheet; sizes are enlarged by the kerf. */
    public static PackingJob random(long seed, int pieces) {
        var sheet = new SawnSheet(seed);
        while (sheet.panels.size() < pieces) {
            sheet.cut();
        }
        Collections.shuffle(sheet.panels, sheet.random);
        var kind = new BoardKind(LENGTH, WIDTH, BoardKind.UNLIMITED, 1, true);
        return new PackingJob(sheet.panels, List.of(kind), CutRules.free(KERF));
    }

    /** Any panel at 20 to 80 % of its length or width, the longer the likelier. */
    private void cut() {
        int index = random.nextInt(panels.size());
        var panel = panels.get(index);
        boolean along = random.nextInt(panel.length() + panel.width()) < panel.length();
        int extent = along ? panel.length() : panel.width();
        if (extent < LEAST) {
            return;
        }
        int first = (int) (extent * (0.2 + 0.6 * random.nextDouble()));
        panels.set(index, along ? panel(first, panel.width()) : panel(panel.length(), first));
        panels.add(along ? panel(extent - first, panel.width()) : panel(panel.length(), extent - first));
    }

    private static PieceType panel(int length, int width) {
        return new PieceType(length, width, 1, Ways.EITHER, false);
    }
}
