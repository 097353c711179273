package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.standwright.sheet.Area;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.SetUp;
import org.standwright.sheet.SetUp.Made;

/**
 * All cuts of one material in the order in which they are sawn, set-up by set-up.
 *
 * @param now what is cut at once
 * @param later what waits until the openings are measured; its set-ups count on
 */
public record CuttingOrder(List<NumberedSetUp> now, List<NumberedSetUp> later) {
    public CuttingOrder {
        now = List.copyOf(now);
        later = List.copyOf(later);
    }

    /** @param waiting labels of the pieces of the second stage */
    public static CuttingOrder of(MaterialPlan material, Set<String> waiting) {
        return new Sorting(material, waiting).order();
    }

    /** Both stages, one after the other. */
    public List<NumberedSetUp> all() {
        return Stream.concat(now.stream(), later.stream()).toList();
    }

    /** A panel waits when it was part of one that does, or all of its pieces wait. */
    private record Sorting(MaterialPlan material, Set<String> waiting, List<Left> left) {
        /** A panel that is left whole. */
        private record Left(int sheet, Area area) {}

        Sorting(MaterialPlan material, Set<String> waiting) {
            this(material, waiting, new ArrayList<>());
        }

        CuttingOrder order() {
            var now = new ArrayList<SetUp>();
            var later = new ArrayList<SetUp>();
            for (var setUp : material.setUps()) {
                var cutLater = setUp.cuts().stream().filter(this::waits).toList();
                var cutNow = setUp.cuts().stream()
                        .filter(made -> !cutLater.contains(made))
                        .toList();
                add(setUp, cutNow, now);
                add(setUp, cutLater, later);
            }
            return new CuttingOrder(numbered(now, 1), numbered(later, now.size() + 1));
        }

        private boolean waits(Made made) {
            var pieces = material.sheets().get(made.sheet()).pieces().stream()
                    .filter(piece -> made.panel().holds(piece.area()))
                    .toList();
            boolean waits = left.stream()
                            .anyMatch(panel -> panel.sheet() == made.sheet()
                                    && panel.area().holds(made.panel()))
                    || !pieces.isEmpty() && pieces.stream().allMatch(this::waits);
            if (waits) {
                left.add(new Left(made.sheet(), made.panel()));
            }
            return waits;
        }

        private boolean waits(PlacedPiece piece) {
            return piece.parts().stream().allMatch(part -> waiting.contains(part.label()));
        }

        private static void add(SetUp setUp, List<Made> cuts, List<SetUp> setUps) {
            if (!cuts.isEmpty()) {
                setUps.add(new SetUp(setUp.tool(), setUp.direction(), setUp.setting(), cuts));
            }
        }

        private static List<NumberedSetUp> numbered(List<SetUp> setUps, int first) {
            var numbered = new ArrayList<NumberedSetUp>();
            for (var setUp : setUps) {
                numbered.add(new NumberedSetUp(first + numbered.size(), setUp));
            }
            return numbered;
        }
    }
}
