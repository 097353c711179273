package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/** The boards of one holder: a back, a hanger behind it, and before it what its kind asks for. */
public final class HolderMaker {
    /** What every holder takes some of. */
    public static final String GLUE = "wood glue";
    /** Purpose of the holes in a back for the screws in its hanger. */
    public static final String HANGER_SCREW = "hanger screw";
    /** Purpose of the holes in a back for the screws that lock it to its strip. */
    public static final String LOCK_SCREW = Lock.PURPOSE;

    private final WallDesign design;

    public HolderMaker(WallDesign design) {
        this.design = design;
    }

    /**
     * Throws {@link org.standwright.design.ImpossibleDesignException} for what cannot be made.
     *
     * @param field JSON pointer of the holder: '/holders/3'
     */
    public MadeHolder make(Holder holder, String field) {
        var frame = new HolderFrame(design, holder, field);
        frame.check();
        var body = holder.accept(new Kinds(frame));
        var hanger = new Hanger(frame, body.width());
        var back = back(frame, body, hanger);
        var parts = new ArrayList<PlacedPart>();
        parts.add(hanger.placed());
        parts.add(frame.lay().facing("back", back, 0, -frame.cleat(), body.bottom()));
        parts.addAll(boards(frame, body, back));
        new SheetRoom(frame).check(parts);
        var hardware = new ArrayList<Hardware>(List.of(hanger.hardware()));
        hardware.addAll(body.hardware());
        if (holder.lock()) {
            hardware.add(new Lock(frame).hardware());
        }
        hardware.add(new Hardware(GLUE, 1, holder.name() + ", " + body.glued()));
        var boxes = new ArrayList<Box3>(List.of(body.things()));
        parts.forEach(part -> boxes.add(part.box()));
        return new MadeHolder(
                holder,
                Box3.around(boxes),
                new Rect(0, body.bottom(), body.width(), frame.top()),
                parts,
                hardware,
                body.centre(),
                body.reach(),
                hanger.screws().size());
    }

    private static List<PlacedPart> boards(HolderFrame frame, Body body, Part back) {
        if (!frame.holder().lock()) {
            return body.boards();
        }
        var locks = new ArrayList<Hole>();
        for (var feature : back.features()) {
            if (feature instanceof Hole hole && hole.purpose().equals(Lock.PURPOSE)) {
                locks.add(hole);
            }
        }
        return new Lock(frame).reached(body.boards(), locks, body.bottom());
    }

    /**
     * Whether its back reaches far enough below the strip that it hangs on for a spacer; one that does not is backed by
     * that strip.
     */
    public boolean takesSpacer(MadeHolder made) {
        return !Grid.less(-design.cleat().height(), made.back().y0() + HolderFrame.SPACER);
    }

    /** A strip along the lower edge of the back that fills the gap to the wall; only for one that takes it. */
    public PlacedPart spacer(MadeHolder made) {
        if (!takesSpacer(made)) {
            throw new IllegalArgumentException("back of '" + made.holder().name() + "' ends "
                    + design.unit().length(-made.back().y0())
                    + " below the high edge of its strip, where that strip itself backs it; leave the spacer out.");
        }
        return new Spacer(design, made).placed();
    }

    /** What holds its spacer to its back. */
    public List<Hardware> spacerHardware(MadeHolder made) {
        return new Spacer(design, made).hardware();
    }

    /** Length of the screws that hold hangers to backs, mm. */
    public double hangerScrew() {
        return new Screwing(design)
                .through(
                        design.making().sheet().material().thickness(),
                        design.cleat().thickness(),
                        "A hanger");
    }

    private static Part back(HolderFrame frame, Body body, Hanger hanger) {
        var back = Part.blank("holder back", frame.sheet(), body.width(), frame.top() - body.bottom())
                .with(body.inBack())
                .with(hanger.inBack(body.bottom()));
        return frame.holder().lock() ? back.with(new Lock(frame).holes(back, body.bottom())) : back;
    }
}
