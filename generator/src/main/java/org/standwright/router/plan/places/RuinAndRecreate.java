package org.standwright.router.plan.places;

import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.lane.Layout;
import org.standwright.sheet.lane.Move;

/** Takes some pieces off, single ones or all that lies between two, and lays them again. */
final class RuinAndRecreate implements Move<Board> {
    private static final int MEAN_REMOVALS = 4;
    /** One removal in so many takes all off that lies between two pieces. */
    private static final int WINDOW_ONE_IN = 3;

    private final Dice dice;
    private final Recreation recreation;

    RuinAndRecreate(Terms terms, Dice dice) {
        this.dice = dice;
        this.recreation = new Recreation(terms, dice);
    }

    @Override
    public void change(Layout<Board> layout, long limit) {
        int removals = 1 + dice.below(2 * MEAN_REMOVALS - 1);
        for (int i = 0; i < removals && layout.count() > 0; i++) {
            int index = dice.below(layout.count());
            int pieces = layout.board(index).pieces();
            if (pieces > 0) {
                remove(layout, index, pieces);
            }
        }
        layout.dropEach(board -> board.pieces() == 0 && !board.isNarrow());
        for (int i = 0; i < layout.count(); i++) {
            layout.board(i).refresh();
        }
        recreation.fill(layout, limit);
    }

    private void remove(Layout<Board> layout, int index, int pieces) {
        if (dice.oneIn(WINDOW_ONE_IN)) {
            int first = dice.below(pieces);
            int second = dice.below(pieces);
            layout.takeOff(index, (board, missing) -> board.removeAround(first, second, missing));
        } else {
            int piece = dice.below(pieces);
            layout.takeOff(index, (board, missing) -> board.remove(piece, missing));
        }
    }
}
