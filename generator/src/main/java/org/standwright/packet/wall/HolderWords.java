package org.standwright.packet.wall;

import java.util.stream.Collectors;
import org.standwright.assembly.Hardware;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.HolderVisitor;
import org.standwright.drawing.holder.EqualHolders;
import org.standwright.unit.Units;

/** What a holder is, what it holds and what holds it together, in words. */
record HolderWords(EqualHolders holder, Units units) {
    /** 'glue shelf: shelf'; 'racks A and B: board with slots, 2 alike'. */
    String title() {
        int count = holder.names().size();
        return holder.title() + ": " + kind() + (count > 1 ? ", " + count + " alike" : "");
    }

    /** What it holds, which screws, glued where; for each one where several are alike. */
    String line() {
        return (holder.names().size() > 1 ? "Each: holds " : "Holds ") + things() + ". "
                + holder.hardware().stream().map(this::words).collect(Collectors.joining("; "))
                + ".";
    }

    private String things() {
        var things = holder.made().holder().things();
        return things.count() + " of " + units.bareLength(things.width()) + " × " + units.bareLength(things.depth())
                + " × " + units.bareLength(things.height()) + ", together " + units.mass(things.wholeMass());
    }

    private String words(Hardware hardware) {
        var use = holder.use(hardware);
        return hardware.item().equals("wood glue")
                ? "wood glue: " + use
                : hardware.count() + " × " + hardware.item() + ": " + use;
    }

    private String kind() {
        return holder.made().holder().accept(new Kind());
    }

    private static final class Kind implements HolderVisitor<String> {
        @Override
        public String shelf(Holder.Shelf shelf) {
            return "shelf";
        }

        @Override
        public String bin(Holder.Bin bin) {
            return "bin";
        }

        @Override
        public String tray(Holder.Tray tray) {
            return "tray";
        }

        @Override
        public String slots(Holder.Slots slots) {
            return "board with slots";
        }

        @Override
        public String bores(Holder.Bores bores) {
            return "board with bores";
        }

        @Override
        public String pegs(Holder.Pegs pegs) {
            return "pegs";
        }

        @Override
        public String clampBar(Holder.ClampBar bar) {
            return "clamp bar";
        }

        @Override
        public String hooks(Holder.Hooks hooks) {
            return "hooks";
        }

        @Override
        public String panel(Holder.Panel panel) {
            return "panel";
        }

        @Override
        public String cabinet(Holder.Cabinet cabinet) {
            return "cabinet of drawers";
        }
    }
}
