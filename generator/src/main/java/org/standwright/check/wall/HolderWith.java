package org.standwright.check.wall;

import java.util.List;
import java.util.Optional;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.HolderVisitor;
import org.standwright.design.wall.Spot;

/** A holder like another at another place, or locked. */
record HolderWith(Optional<Spot> place, boolean lock) implements HolderVisitor<Holder> {

    /** The same walls with one holder locked to its strip; empty where it is. */
    static Optional<WallDesign> locked(WallDesign design, String name) {
        return design.holders().stream()
                .filter(holder -> holder.name().equals(name) && !holder.lock())
                .findFirst()
                .map(holder -> replaced(design, holder, new HolderWith(holder.place(), true)));
    }

    /** The same walls, the place of one holder left to the planner; empty where it is. */
    static Optional<WallDesign> placedAnew(WallDesign design, String name) {
        return design.holders().stream()
                .filter(holder -> holder.name().equals(name) && holder.place().isPresent())
                .findFirst()
                .map(holder -> replaced(design, holder, new HolderWith(Optional.empty(), holder.lock())));
    }

    private static WallDesign replaced(WallDesign design, Holder old, HolderWith change) {
        List<Holder> holders = design.holders().stream()
                .map(holder -> holder.equals(old) ? holder.accept(change) : holder)
                .toList();
        return design.with(holders);
    }

    @Override
    public Holder shelf(Holder.Shelf old) {
        return new Holder.Shelf(old.name(), old.things(), place, lock, old.width(), old.lip());
    }

    @Override
    public Holder bin(Holder.Bin old) {
        return new Holder.Bin(old.name(), old.things(), place, lock, old.width(), old.front());
    }

    @Override
    public Holder tray(Holder.Tray old) {
        return new Holder.Tray(old.name(), old.things(), place, lock, old.width(), old.rim());
    }

    @Override
    public Holder slots(Holder.Slots old) {
        return new Holder.Slots(old.name(), old.things(), place, lock, old.slot());
    }

    @Override
    public Holder bores(Holder.Bores old) {
        return new Holder.Bores(old.name(), old.things(), place, lock, old.bore());
    }

    @Override
    public Holder pegs(Holder.Pegs old) {
        return new Holder.Pegs(old.name(), old.things(), place, lock, old.dowel());
    }

    @Override
    public Holder clampBar(Holder.ClampBar old) {
        return new Holder.ClampBar(old.name(), old.things(), place, lock, old.bar());
    }

    @Override
    public Holder hooks(Holder.Hooks old) {
        return new Holder.Hooks(old.name(), old.things(), place, lock, old.hook(), old.reach());
    }

    @Override
    public Holder panel(Holder.Panel old) {
        return new Holder.Panel(old.name(), old.things(), place, lock, old.width(), old.height());
    }

    @Override
    public Holder cabinet(Holder.Cabinet old) {
        return new Holder.Cabinet(old.name(), old.things(), place, lock, old.drawers(), old.width());
    }
}
