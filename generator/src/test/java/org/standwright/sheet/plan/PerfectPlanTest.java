package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PerfectPlanTest {
    private static final double KERF = 3.2;
    private static final int PIECES = 10;

    /** Measured: 168 of the first 200. */
    @Test
    void findsMostSheetsAgainThatWereSawnIntoTenPieces() {
        long seeds = Seeds.fewOrMany(40, 1000).count();

        long found = Seeds.fewOrMany(40, 1000).filter(this::foundAgain).count();

        assertThat(found).isGreaterThanOrEqualTo(seeds * 3 / 4);
    }

    private boolean foundAgain(long seed) {
        var job = SheetJob.sheet(2440, 1220).kerf(KERF);
        var panels = sawn(new SplittableRandom(seed));
        for (int i = 0; i < panels.size(); i++) {
            job = job.pieces("P" + i, panels.get(i)[0], panels.get(i)[1], 1);
        }
        var plan = job.plan();
        assertThat(plan.proof().least()).isEqualTo(1);
        assertThat(plan.sheets().size()).isLessThanOrEqualTo(2);
        return plan.sheets().size() == 1;
    }

    /** Length and width of what random cuts leave of a sheet, in tenths of a millimetre. */
    private static List<double[]> sawn(SplittableRandom random) {
        var panels = new ArrayList<double[]>(List.of(new double[] {2440, 1220}));
        while (panels.size() < PIECES) {
            var panel = panels.remove(random.nextInt(panels.size()));
            int side = panel[0] > panel[1] ? 0 : 1;
            if (panel[side] < 200) {
                panels.add(panel);
                continue;
            }
            var first = panel.clone();
            var second = panel.clone();
            first[side] = Math.round(panel[side] * random.nextDouble(0.2, 0.8) * 10) / 10.0;
            second[side] = Math.round((panel[side] - first[side] - KERF) * 10) / 10.0;
            panels.addAll(List.of(first, second));
        }
        return panels;
    }
}
