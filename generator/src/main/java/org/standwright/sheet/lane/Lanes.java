package org.standwright.sheet.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Searches side by side, each with its own seed. They tell each other the best only between rounds of steps, so that the
 * answer does not depend on the number of threads; they run in the pool of the calling thread.
 */
public final class Lanes<B extends BoardInWork<B>> {
    /** Makes what changes a layout. */
    public interface Moves<B extends BoardInWork<B>> {
        /** @param lane from 0 on; each has two searches, one of them to clear a rest in the end */
        Move<B> of(int lane, Dice dice);
    }

    private final Tally tally;
    private final Moves<B> moves;
    private final long seed;
    private final Consumer<Layout<B>> improved;
    private final List<Lane<B>> lanes;
    private Layout<B> best;

    /**
     * @param first complete, or with pieces missing when the stock is scarce
     * @param improved is told each better layout
     */
    public Lanes(Tally tally, Layout<B> first, Budget budget, Moves<B> moves, Consumer<Layout<B>> improved) {
        this.tally = tally;
        this.moves = moves;
        this.seed = budget.seed();
        this.improved = improved;
        this.best = first;
        int count = budget.lanes();
        this.lanes = IntStream.range(0, count)
                .mapToObj(lane -> new Lane<>(first, search(lane, seed + lane, lane, count)))
                .toList();
    }

    /** @param owner the searches of all lanes share boards, so each needs owners of its own */
    private LateAcceptance<B> search(int lane, long searchSeed, int owner, int count) {
        return new LateAcceptance<>(tally, moves.of(lane, new Dice(searchSeed)), owner, 2 * count);
    }

    /** The cheapest layout so far. Pieces are missing from it only while none without was found. */
    public Layout<B> best() {
        return best;
    }

    public int count() {
        return lanes.size();
    }

    public Lane<B> lane(int lane) {
        return lanes.get(lane);
    }

    /**
     * So many steps in each lane, fewer where the goal is met.
     *
     * @param beside runs at the same time
     */
    public void run(int steps, long goal, Runnable beside) {
        var work = new ArrayList<Runnable>();
        lanes.forEach(lane -> work.add(() -> lane.run(steps, goal)));
        work.add(beside);
        work.parallelStream().forEach(Runnable::run);
        lanes.forEach(lane -> offer(lane.best()));
    }

    /** Takes a layout as the best if it is better. */
    public void offer(Layout<B> layout) {
        if (layout.isBetter(best)) {
            best = layout;
            improved.accept(best);
        }
    }

    /** Lanes that are behind go on from the best. */
    public void share() {
        for (var lane : lanes) {
            if (best.isBetter(lane.best())) {
                lane.adopt(best);
            }
        }
    }

    /**
     * What is made of each lane's best with another search, in the order of the lanes.
     *
     * @throws ScarceStockException when pieces are missing
     */
    public <R> List<R> finish(BiFunction<Layout<B>, LateAcceptance<B>, R> finish) {
        if (!best.isComplete()) {
            throw new ScarceStockException(best.missingArea());
        }
        int count = lanes.size();
        return IntStream.range(0, count)
                .parallel()
                .mapToObj(
                        lane -> finish.apply(lanes.get(lane).best(), search(lane, ~(seed + lane), count + lane, count)))
                .toList();
    }
}
