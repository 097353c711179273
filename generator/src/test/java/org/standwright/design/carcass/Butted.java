package org.standwright.design.carcass;

import java.util.List;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Draft;
import org.standwright.design.Joint;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Connector;
import org.standwright.design.kit.Dowel;
import org.standwright.part.SheetGood;

/** Designs with another joint. */
final class Butted {
    static final Dowel DOWEL = new Dowel("dowel 8 x 30", 8, 30);
    static final Connector CONNECTOR = new Connector("connector 7 x 50", 50, 5, 7, 10, 4);
    static final Joint SCREWS = new Joint.Screwed();
    static final Joint DOWELS = new Joint.Doweled(DOWEL);
    static final Joint CONNECTORS = new Joint.Connected(CONNECTOR);
    static final List<Joint> KINDS = List.of(SCREWS, DOWELS, CONNECTORS);

    private Butted() {}

    static StandDesign with(Joint joint, StandDesign design) {
        return with(joint, design.carcass().sheet(), design.carcass().housing(), design);
    }

    static StandDesign with(Joint joint, SheetGood sheet, double housing, StandDesign design) {
        return Draft.of(
                design,
                draft -> draft.carcass =
                        new CarcassPlan(sheet, draft.carcass.back(), housing, draft.carcass.fit(), joint));
    }
}
