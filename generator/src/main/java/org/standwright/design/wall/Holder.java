package org.standwright.design.wall;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.kit.Dowel;

/** Something that hangs on a cleat and holds things. */
public sealed interface Holder {
    /** What its maker calls it, once in a design. */
    String name();

    Things things();

    /** Where it hangs, if its maker says so. */
    Optional<Spot> place();

    /** Whether a screw keeps it from being lifted off. */
    boolean lock();

    <R> R accept(HolderVisitor<R> visitor);

    /**
     * A board that things stand on in one line.
     *
     * @param width along the wall, mm; without one what its things need
     * @param lip height of the edge that keeps them from walking off, above the board, mm; 0 for none
     */
    record Shelf(String name, Things things, Optional<Spot> place, boolean lock, OptionalDouble width, double lip)
            implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.shelf(this);
        }
    }

    /**
     * A box that is open at the top, its front lower than its back.
     *
     * @param front height of the front above the bottom, mm
     */
    record Bin(String name, Things things, Optional<Spot> place, boolean lock, OptionalDouble width, double front)
            implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.bin(this);
        }
    }

    /**
     * A flat bottom with a low rim all round.
     *
     * @param rim height of the rim above the bottom, mm
     */
    record Tray(String name, Things things, Optional<Spot> place, boolean lock, OptionalDouble width, double rim)
            implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.tray(this);
        }
    }

    /**
     * A board with slots open at its front, for chisels and the like, which rest on it by their handles.
     *
     * @param slot width of each slot, mm
     */
    record Slots(String name, Things things, Optional<Spot> place, boolean lock, double slot) implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.slots(this);
        }
    }

    /**
     * A board with a row of bored holes, for screwdrivers, bits and the like.
     *
     * @param bore diameter of each hole, mm
     */
    record Bores(String name, Things things, Optional<Spot> place, boolean lock, double bore) implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.bores(this);
        }
    }

    /**
     * Dowels that stand out from a board, two for each thing, which hangs between them or on them.
     *
     * @param dowel its diameter and its length, part of which is in the board
     */
    record Pegs(String name, Things things, Optional<Spot> place, boolean lock, Dowel dowel) implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.pegs(this);
        }
    }

    /**
     * A bar that stands off on brackets, so that clamps are clamped to it.
     *
     * @param bar height of the bar, mm
     */
    record ClampBar(String name, Things things, Optional<Spot> place, boolean lock, double bar) implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.clampBar(this);
        }
    }

    /**
     * A board with bought hooks, one for each thing.
     *
     * @param hook what to buy
     * @param reach how far the middle of what hangs on it is from the board, mm
     */
    record Hooks(String name, Things things, Optional<Spot> place, boolean lock, String hook, double reach)
            implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.hooks(this);
        }
    }

    /** A plain board of a given size that its maker screws things to. */
    record Panel(String name, Things things, Optional<Spot> place, boolean lock, double width, double height)
            implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.panel(this);
        }
    }

    /**
     * A small cabinet of equal drawers one above the other that slide in dados on their bottoms; the things lie in the
     * drawers, shared evenly.
     *
     * @param drawers how many
     * @param width of the cabinet over all, mm
     */
    record Cabinet(String name, Things things, Optional<Spot> place, boolean lock, int drawers, double width)
            implements Holder {
        @Override
        public <R> R accept(HolderVisitor<R> visitor) {
            return visitor.cabinet(this);
        }
    }
}
