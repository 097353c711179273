package org.standwright.design.drawer;

import org.standwright.design.FrontGrain;
import org.standwright.design.Grip;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.geom.Rect;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/**
 * The panel that is seen of a drawer or a door: banded all round, with a notch in its upper edge if that is its grip.
 * An inset panel is cut over and trimmed last, to the opening as it turned out.
 */
public final class FrontPanel {
    /** What an inset panel is cut over on every edge, mm; common practice, no source. */
    private static final double INSET_CUT_OVER = 1;
    /** The largest corner radius of a notch, mm. */
    private static final double NOTCH_RADIUS = 10;

    private final StandDesign design;

    public FrontPanel(StandDesign design) {
        this.design = design;
    }

    /** Of a drawer. Part frame: x to the right, y upwards; with its grain upright, that of a door. */
    public Part drawer(double width, double height) {
        if (isUpright()) {
            return upright("drawer front", width, height);
        }
        var panel = blank("drawer front", width, height);
        if (!(design.drawers().grip() instanceof Grip.Notch notch)) {
            return panel;
        }
        double left = (width - notch.width()) / 2;
        return panel.with(cut(new Rect(left, height - notch.depth(), left + notch.width(), height)));
    }

    /** Whether a drawer's grain is upright. */
    boolean isUpright() {
        return design.drawers().frontGrain() == FrontGrain.UPRIGHT;
    }

    /** Of a door, its grain upright. Part frame: x upwards, y to the left. */
    public Part door(double width, double height) {
        return upright("door", width, height);
    }

    private Part upright(String name, double width, double height) {
        var panel = blank(name, height, width);
        if (!(design.drawers().grip() instanceof Grip.Notch notch)) {
            return panel;
        }
        double right = (width - notch.width()) / 2;
        return panel.with(cut(new Rect(height - notch.depth(), right, height, right + notch.width())));
    }

    private Part blank(String name, double length, double width) {
        var edging = design.edges().fronts().map(edge -> new Banding(edge.name(), edge.thickness()));
        var blank = Part.blank(name, design.drawers().front().material(), length, width)
                .banded(Bands.around(edging));
        return design.drawers().mount() == Mount.INSET ? blank.cutOver(INSET_CUT_OVER) : blank;
    }

    /** A notch as round as this one can be. */
    static Pocket cut(Rect area) {
        double radius = Math.min(NOTCH_RADIUS, Math.min(area.height(), area.width()) / 2);
        return Pocket.through(area, radius, "finger notch");
    }
}
