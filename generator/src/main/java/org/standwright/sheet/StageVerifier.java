package org.standwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.Cut.Purpose;

/**
 * Judges how often the cutting direction of one board turns, and how it begins. Cuts that true an edge do not count;
 * pieces that leave in one strip count as one.
 */
final class StageVerifier {
    /**
     * How far a panel has come.
     *
     * @param turns stages so far
     * @param last direction of its last dividing cut
     * @param within the panel that it was when the last stage began
     */
    private record Stage(int turns, Optional<Direction> last, Area within) {}

    private final PlannedSheet sheet;
    private final Saw saw;
    /** What has to leave the board: pieces, and strips of pieces. */
    private final List<Area> units = new ArrayList<>();

    private final Map<Area, Stage> stages = new HashMap<>();
    private final List<String> faults = new ArrayList<>();

    private StageVerifier(PlannedSheet sheet, List<Area> strips, Saw saw) {
        this.sheet = sheet;
        this.saw = saw;
        units.addAll(strips);
        sheet.pieces().stream()
                .map(PlacedPiece::area)
                .filter(area -> strips.stream().noneMatch(strip -> strip.holds(area)))
                .forEach(units::add);
    }

    /** @param strips what leaves the board as one strip */
    static List<String> faults(PlannedSheet sheet, List<Area> strips, Saw saw) {
        var verifier = new StageVerifier(sheet, strips, saw);
        verifier.count();
        verifier.checkFirst();
        return verifier.faults;
    }

    private void count() {
        var board = sheet.board();
        stages.put(board, new Stage(0, Optional.empty(), board));
        for (var sawn : CutReplay.of(sheet).sawn()) {
            var panel = sawn.panel().area();
            var stage = stages.get(panel);
            boolean counts =
                    sawn.cut().purpose() == Purpose.DIVIDE && units.stream().noneMatch(unit -> unit.holds(panel));
            var next = counts ? after(stage, sawn.cut().direction(), panel) : stage;
            sawn.halves().forEach(half -> stages.put(half.area(), next));
            if (counts) {
                checkTurns(sawn, next);
            }
        }
    }

    private static Stage after(Stage stage, Direction direction, Area panel) {
        return stage.last().equals(Optional.of(direction))
                ? stage
                : new Stage(stage.turns() + 1, Optional.of(direction), panel);
    }

    /** One stage more may free a single piece from what nobody asked for. */
    private void checkTurns(CutReplay.Sawn sawn, Stage stage) {
        saw.stages().ifPresent(most -> {
            boolean trims = stage.turns() == most + 1
                    && units.stream().filter(stage.within()::holds).count() <= 1;
            if (stage.turns() > most && !trims) {
                faults.add("cut " + sawn.cut().number() + " is stage " + stage.turns() + " of " + most + ".");
            }
        });
    }

    private void checkFirst() {
        if (saw.first() == First.EITHER) {
            return;
        }
        var asked = saw.first() == First.RIP ? Direction.RIP : Direction.CROSSCUT;
        sheet.cuts().stream()
                .filter(cut -> cut.purpose() == Purpose.DIVIDE)
                .findFirst()
                .filter(cut -> cut.direction() != asked && units.stream().noneMatch(unit -> spans(unit, asked)))
                .ifPresent(cut -> faults.add("cut " + cut.number() + " divides the board first, but is a "
                        + cut.direction().name().toLowerCase(Locale.ROOT) + "."));
    }

    /** Whether no cut of this direction passes it. */
    private boolean spans(Area unit, Direction direction) {
        var trimmed = sheet.trimmed(saw);
        return direction == Direction.RIP
                ? unit.y() == trimmed.y() && unit.endY() == trimmed.endY()
                : unit.x() == trimmed.x() && unit.endX() == trimmed.endX();
    }
}
