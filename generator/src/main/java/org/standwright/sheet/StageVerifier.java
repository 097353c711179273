package org.standwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.cutlist.Together;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.Cut.Purpose;

/**
 * Judges how often the cutting direction of one board turns, and how it begins. Cuts that true an edge do not count;
 * pieces that leave in one block count as one.
 */
final class StageVerifier {
    /**
     * How far a panel has come.
     *
     * @param turns stages so far
     * @param last direction of its last dividing cut
     * @param within the panel that it was when the last stage began
     */
    private record Stage(int turns, Optional<Direction> last, Area within) {
        Stage after(Direction direction, Area panel) {
            return last.equals(Optional.of(direction)) ? this : new Stage(turns + 1, Optional.of(direction), panel);
        }
    }

    /** A dividing cut and the stage that it belongs to. */
    private record Turn(CutReplay.Sawn sawn, Stage stage) {}

    private final PlannedSheet sheet;
    private final Saw saw;
    private final CutReplay replay;

    private StageVerifier(PlannedSheet sheet, Saw saw) {
        this.sheet = sheet;
        this.saw = saw;
        this.replay = CutReplay.of(sheet);
    }

    /** @param groups what is to leave boards of this material together */
    static List<String> faults(PlannedSheet sheet, List<Together> groups, Saw saw) {
        if (saw.stages().isEmpty() && saw.first() == First.EITHER) {
            return List.of();
        }
        var verifier = new StageVerifier(sheet, saw);
        var blocks = BlockPanels.of(sheet, verifier.replay, groups);
        var single = verifier.late(List.of());
        var late = verifier.late(blocks.latest(groups, panel -> count(single, panel)));
        var faults = new ArrayList<String>();
        late.forEach(turn -> faults.add("cut " + turn.sawn.cut().number() + " is stage " + turn.stage.turns + " of "
                + saw.stages().orElseThrow() + "."));
        verifier.wrongStart(blocks.all()).ifPresent(faults::add);
        return faults;
    }

    /** @param blocks panels whose cuts do not count */
    private List<Turn> turns(List<Area> blocks) {
        var turns = new ArrayList<Turn>();
        var stages = new HashMap<Area, Stage>(Map.of(sheet.board(), new Stage(0, Optional.empty(), sheet.board())));
        for (var sawn : replay.sawn()) {
            var panel = sawn.panel().area();
            boolean counts =
                    sawn.cut().purpose() == Purpose.DIVIDE && blocks.stream().noneMatch(block -> block.holds(panel));
            var stage = stages.get(panel);
            var next = counts ? stage.after(sawn.cut().direction(), panel) : stage;
            sawn.halves().forEach(half -> stages.put(half.area(), next));
            if (counts) {
                turns.add(new Turn(sawn, next));
            }
        }
        return turns;
    }

    private static int count(List<Turn> turns, Area panel) {
        return (int) turns.stream()
                .filter(turn -> panel.holds(turn.sawn.panel().area()))
                .count();
    }

    /**
     * The cuts beyond the last stage.
     *
     * @param blocks what counts as one piece
     */
    private List<Turn> late(List<Area> blocks) {
        if (saw.stages().isEmpty()) {
            return List.of();
        }
        int most = saw.stages().getAsInt();
        var units = units(blocks);
        return turns(blocks).stream()
                .filter(turn -> turn.stage.turns > most && !trims(turn.stage, most, units))
                .toList();
    }

    /** One stage more may free a single piece from what nobody asked for. */
    private static boolean trims(Stage stage, int most, List<Area> units) {
        return stage.turns == most + 1
                && units.stream().filter(stage.within::holds).count() <= 1;
    }

    /** What has to leave the board: blocks, and the pieces beside them. */
    private List<Area> units(List<Area> blocks) {
        var beside = sheet.pieces().stream()
                .map(PlacedPiece::area)
                .filter(area -> blocks.stream().noneMatch(block -> block.holds(area)));
        return Stream.concat(blocks.stream(), beside).toList();
    }

    private Optional<String> wrongStart(List<Area> blocks) {
        if (saw.first() == First.EITHER) {
            return Optional.empty();
        }
        var asked = saw.first() == First.RIP ? Direction.RIP : Direction.CROSSCUT;
        var units = units(blocks);
        return sheet.cuts().stream()
                .filter(cut -> cut.purpose() == Purpose.DIVIDE)
                .findFirst()
                .filter(cut -> cut.direction() != asked && units.stream().noneMatch(unit -> spans(unit, asked)))
                .map(cut -> "cut " + cut.number() + " divides the board first, but is a "
                        + cut.direction().name().toLowerCase(Locale.ROOT) + ".");
    }

    /** Whether no cut of this direction passes it; a block may have an edge that is not trimmed yet. */
    private boolean spans(Area unit, Direction direction) {
        var trimmed = sheet.trimmed(saw);
        return direction == Direction.RIP
                ? unit.y() <= trimmed.y() && unit.endY() >= trimmed.endY()
                : unit.x() <= trimmed.x() && unit.endX() >= trimmed.endX();
    }
}
