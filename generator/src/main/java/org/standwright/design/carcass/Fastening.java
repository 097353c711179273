package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Hardware;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Joint;
import org.standwright.design.StandDesign;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;

/** What one fastener takes out of two panels of the carcass's sheet, one's end against the other's face. */
sealed interface Fastening permits JointScrew, JointDowel, JointConnector {
    /** Where every refusal of a joint points. */
    String FIELD = "/carcass/joint";
    /** Wood between a bore on the centre line of a panel and either face, mm; common practice, no source. */
    double BESIDE = 3;
    /** Between two screws or connectors at most, mm; common practice, no source. */
    double SPACING = 150;

    /** As the parts list and messages call it. */
    String name();

    /** Of its thickest part within the wood, mm. */
    double diameter();

    /** Between two at most, mm. */
    double spacing();

    /** Holes at a place of the panel whose face is met. */
    List<Hole> inFace(Face outer, double x, double y);

    /** The hole on the centre line of the panel whose end meets that face, at {@code along}. */
    EdgeHole inEnd(Edge end, double along);

    /** That many of them. */
    Hardware hardware(int count);

    /** What the stand's glue is for. */
    String glued();

    /**
     * The fastening that a maker chose, none where the panels are housed.
     *
     * @throws ImpossibleDesignException when it does not suit the carcass's sheet
     */
    static Optional<Fastening> of(StandDesign design) {
        var joint = design.carcass().joint();
        if (joint instanceof Joint.Screwed) {
            return Optional.of(JointScrew.of(design));
        }
        if (joint instanceof Joint.Doweled doweled) {
            return Optional.of(JointDowel.of(doweled.dowel(), design));
        }
        return joint instanceof Joint.Connected connected
                ? Optional.of(JointConnector.of(connected.connector(), design))
                : Optional.empty();
    }

    static double panel(StandDesign design) {
        return design.carcass().sheet().material().thickness();
    }

    static ImpossibleDesignException refusal(StandDesign design, String reason, List<String> ways) {
        var all = new ArrayList<>(ways);
        if (new JointFit(design).takesDados()) {
            all.add((all.isEmpty() ? "Give" : "Or give") + " the carcass the joint \"dado\".");
        }
        return new ImpossibleDesignException(FIELD, reason, all);
    }
}
