package org.standwright.design;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Fixing;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Making;
import org.standwright.design.wall.Person;
import org.standwright.design.wall.Rows;
import org.standwright.design.wall.Wall;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/**
 * What a maker decided about one wall of French cleats, or several that meet in inside corners.
 *
 * @param unit what the maker writes and reads
 * @param levelLine height of the level line struck round the room above the floor's highest point, mm
 * @param walls from left to right
 * @param rules what is stricter than usual, and what is accepted as it is
 */
public record WallDesign(
        String name,
        Units unit,
        double levelLine,
        Person person,
        List<Wall> walls,
        Cleat cleat,
        Rows rows,
        Fixing fixing,
        Making making,
        List<Holder> holders,
        Saw saw,
        Optional<Router> router,
        StockPlan stock,
        CuttingPlan cutting,
        List<RuleChoice> rules)
        implements Design {
    public WallDesign {
        walls = List.copyOf(walls);
        holders = List.copyOf(holders);
        rules = List.copyOf(rules);
    }

    @Override
    public WallDesign readIn(Units other) {
        return new WallDesign(
                name, other, levelLine, person, walls, cleat, rows, fixing, making, holders, saw, router, stock,
                cutting, rules);
    }

    /** The same walls with other strips. */
    public WallDesign with(Cleat other) {
        return new WallDesign(
                name, unit, levelLine, person, walls, other, rows, fixing, making, holders, saw, router, stock, cutting,
                rules);
    }

    /** The same walls, their strips held otherwise. */
    public WallDesign with(Fixing other) {
        return new WallDesign(
                name, unit, levelLine, person, walls, cleat, rows, other, making, holders, saw, router, stock, cutting,
                rules);
    }

    /** The same walls with other things hanging on them. */
    public WallDesign with(List<Holder> others) {
        return new WallDesign(
                name, unit, levelLine, person, walls, cleat, rows, fixing, making, others, saw, router, stock, cutting,
                rules);
    }

    @Override
    public List<SheetGood> sheets() {
        return Stream.of(cleat.sheet(), making.sheet(), making.thin())
                .distinct()
                .toList();
    }

    @Override
    public List<Bar> bars() {
        return List.of();
    }

    @Override
    public double fit() {
        return making.fit();
    }

    @Override
    public <R> R accept(DesignVisitor<R> visitor) {
        return visitor.wall(this);
    }
}
