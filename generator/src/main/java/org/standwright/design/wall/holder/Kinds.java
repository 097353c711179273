package org.standwright.design.wall.holder;

import org.standwright.design.wall.Holder;
import org.standwright.design.wall.HolderVisitor;

/** Which class makes which kind of holder. */
record Kinds(HolderFrame frame) implements HolderVisitor<Body> {
    @Override
    public Body shelf(Holder.Shelf shelf) {
        return new ShelfBody(frame, shelf).body();
    }

    @Override
    public Body bin(Holder.Bin bin) {
        return new BinBody(frame, bin).body();
    }

    @Override
    public Body tray(Holder.Tray tray) {
        return new TrayBody(frame, tray).body();
    }

    @Override
    public Body slots(Holder.Slots slots) {
        return new SlotsBody(frame, slots).body();
    }

    @Override
    public Body bores(Holder.Bores bores) {
        return new BoresBody(frame, bores).body();
    }

    @Override
    public Body pegs(Holder.Pegs pegs) {
        return new PegsBody(frame, pegs).body();
    }

    @Override
    public Body clampBar(Holder.ClampBar bar) {
        return new ClampBarBody(frame, bar).body();
    }

    @Override
    public Body hooks(Holder.Hooks hooks) {
        return new HooksBody(frame, hooks).body();
    }

    @Override
    public Body panel(Holder.Panel panel) {
        return new PanelBody(frame, panel).body();
    }

    @Override
    public Body cabinet(Holder.Cabinet cabinet) {
        return new CabinetBody(frame, cabinet).body();
    }
}
