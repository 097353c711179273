package org.standwright.design.wall;

/** What is done with each kind of holder. */
public interface HolderVisitor<R> {
    R shelf(Holder.Shelf shelf);

    R bin(Holder.Bin bin);

    R tray(Holder.Tray tray);

    R slots(Holder.Slots slots);

    R bores(Holder.Bores bores);

    R pegs(Holder.Pegs pegs);

    R clampBar(Holder.ClampBar bar);

    R hooks(Holder.Hooks hooks);

    R panel(Holder.Panel panel);

    R cabinet(Holder.Cabinet cabinet);
}
