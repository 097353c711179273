package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.kit.Screw;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Making;
import org.standwright.design.wall.RandomWalls;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.WallDraft;
import org.standwright.design.wall.built.HungHolder;

/** Random walls with panels and shelves of any mass on them, each where the planner hung it once. */
final class RandomHung {
    private final SplittableRandom random;
    private final List<Holder> holders = new ArrayList<>();

    private RandomHung(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** Nothing where the walls of a seed take no holders. */
    static Optional<WallDesign> design(long seed) {
        var random = new RandomHung(seed);
        int count = random.random.nextInt(1, 7);
        IntStream.range(0, count).forEach(random::hold);
        try {
            var loose = made(RandomWalls.buildable(seed), random.holders);
            var hung = Hung.hung(loose).wall();
            var fixed = hung.holders().stream()
                    .map(holder ->
                            holder.made().holder().accept(new HolderWith(Optional.of(spot(loose, holder)), false)))
                    .toList();
            return fixed.isEmpty() ? Optional.empty() : Optional.of(loose.with(fixed));
        } catch (ImpossibleDesignException refused) {
            return Optional.empty();
        }
    }

    private static Spot spot(WallDesign design, HungHolder holder) {
        return new Spot(design.walls().get(holder.wall() - 1).name(), holder.row(), holder.x());
    }

    private void hold(int number) {
        var things = new Things(
                1 + random.nextInt(3),
                random.nextInt(40, 150),
                random.nextInt(40, 250),
                random.nextInt(40, 200),
                random.nextDouble(0.1, 12),
                Things.Use.WEEKLY,
                false);
        var name = "holder " + (number + 1);
        holders.add(
                random.nextBoolean()
                        ? new Holder.Shelf(name, things, Optional.empty(), false, OptionalDouble.empty(), 0)
                        : new Holder.Panel(name, things, Optional.empty(), false, random.nextInt(460, 700), 500));
    }

    /** The same walls with holders of 18 mm, for which there is a screw of any length. */
    static WallDesign made(WallDesign design, List<Holder> holders) {
        var lengths = IntStream.rangeClosed(16, 45)
                .mapToObj(length -> (double) length)
                .toList();
        var making = new Making(
                WallDraft.sheet(18), WallDraft.sheet(6), new Screw("screw 4.2", 4.2, 2.5, 4.5, lengths), 0.2);
        return new WallDesign(
                design.name(),
                design.unit(),
                design.levelLine(),
                design.person(),
                design.walls(),
                design.cleat(),
                design.rows(),
                design.fixing(),
                making,
                holders,
                design.saw(),
                design.router(),
                design.stock(),
                design.cutting(),
                design.rules());
    }

    /** The same with other masses of all things of a holder, kg. */
    static WallDesign weighing(WallDesign design, ToDoubleFunction<Holder> mass) {
        return design.with(design.holders().stream()
                .map(holder -> weighing(holder, mass.applyAsDouble(holder)))
                .toList());
    }

    private static Holder weighing(Holder holder, double mass) {
        var old = holder.things();
        var things = new Things(
                old.count(), old.width(), old.depth(), old.height(), mass / old.count(), old.use(), old.flammable());
        return holder instanceof Holder.Shelf shelf
                ? new Holder.Shelf(shelf.name(), things, shelf.place(), shelf.lock(), shelf.width(), shelf.lip())
                : panel((Holder.Panel) holder, things);
    }

    private static Holder panel(Holder.Panel old, Things things) {
        return new Holder.Panel(old.name(), things, old.place(), old.lock(), old.width(), old.height());
    }
}
