package org.standwright.sheet.search;

import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.lane.Layout;
import org.standwright.sheet.lane.Move;

/** Takes some pieces and splits off, any of them, and lays them again where few places remain for them. */
final class RuinAndRecreate implements Move<Board> {
    private static final int MEAN_REMOVALS = 4;

    private final Dice dice;
    private final Recreation recreation;
    private final Patterns patterns;

    /** @param patterns collects good boards */
    RuinAndRecreate(Terms terms, Dice dice, Patterns patterns) {
        this.dice = dice;
        this.recreation = new Recreation(terms, dice, true);
        this.patterns = patterns;
    }

    @Override
    public void change(Layout<Board> layout, long limit) {
        int removals = 1 + dice.below(2 * MEAN_REMOVALS - 1);
        for (int i = 0; i < removals && layout.count() > 0; i++) {
            int index = dice.below(layout.count());
            if (layout.board(index).pieceArea() > 0) {
                remove(layout, index, layout.board(index).any(dice));
            }
        }
        recreation.fill(layout, limit);
    }

    /** A board that is whole again goes back to the stack, or one whose first cuts are not those asked for. */
    private static void remove(Layout<Board> layout, int index, int node) {
        layout.takeOff(index, (board, missing) -> board.remove(node, missing));
        var board = layout.board(index);
        if (board.isWhole() || board.startsAcross() && !board.hasSpanningPiece()) {
            layout.clear(index);
        }
    }

    @Override
    public void accepted(Layout<Board> layout) {
        patterns.collect(layout);
    }
}
