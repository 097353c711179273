package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standwright.cutlist.CutLine;
import org.standwright.geom.Grid;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;

/**
 * Strips that come in pairs from one rip with the blade tilted.
 *
 * @param lines of the two strips, equal or not
 * @param rise by how much both overlap in the board, measured at their finished width: t tan(tilt) of sharp strips, less by
 *     what comes off the tips of both once they are parted, mm
 * @param tilt of the blade from square, degrees
 */
record BevelPairs(List<CutLine> lines, int count, double rise, double tilt) {
    /** What strips of one pair have in common; sizes in 1/10 µm, so that equal ones are equal. */
    private record Alike(long length, long tilt, long depth) {
        private static final double PER_MM = 10_000;

        static Alike of(CutLine line, Bevel bevel) {
            return new Alike(
                    Math.round(line.part().roughLength() * PER_MM),
                    Math.round(bevel.tilt() * PER_MM),
                    Math.round(bevel.depth() * PER_MM));
        }
    }

    /** Pairs within each line, then odd ones with each other; what is left over stays by itself. */
    static List<BevelPairs> of(Map<CutLine, Integer> pieces) {
        var pairs = new ArrayList<BevelPairs>();
        var odd = new LinkedHashMap<Alike, CutLine>();
        pieces.forEach((line, count) -> bevel(line).ifPresent(bevel -> {
            if (count > 1) {
                pairs.add(pair(line, line, count / 2, bevel));
            }
            if (count % 2 == 1) {
                var alike = Alike.of(line, bevel);
                var other = odd.remove(alike);
                if (other == null) {
                    odd.put(alike, line);
                } else {
                    pairs.add(pair(other, line, 1, bevel));
                }
            }
        }));
        return pairs;
    }

    private static BevelPairs pair(CutLine first, CutLine second, int count, Bevel bevel) {
        double blunted = bevel.blunted(first.part().thickness()).orElse(0);
        return new BevelPairs(List.of(first, second), count, bevel.setback() - blunted, bevel.tilt());
    }

    /** The bevel of a strip that has one along one edge, through but for a blunted tip, and leaves the sheet at its size. */
    private static Optional<Bevel> bevel(CutLine line) {
        var part = line.part();
        var bevels = part.features().stream()
                .filter(Bevel.class::isInstance)
                .map(Bevel.class::cast)
                .toList();
        boolean isStrip = bevels.size() == 1
                && (bevels.get(0).edge() == Edge.Y0 || bevels.get(0).edge() == Edge.Y1)
                && bevels.get(0).blunted(part.thickness()).isPresent()
                && Grid.same(part.roughWidth(), part.width());
        return isStrip ? Optional.of(bevels.get(0)) : Optional.empty();
    }
}
