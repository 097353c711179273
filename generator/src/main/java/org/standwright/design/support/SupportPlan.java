package org.standwright.design.support;

import java.util.List;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Size2;
import org.standwright.part.Hole;

/** What one kind of support adds to a stand. */
public sealed interface SupportPlan permits CasterSupport, LevelerSupport, PlinthSupport, PadSupport {
    /** Its layers in the height stack, from the floor up. */
    List<Term> terms();

    /** Its parts and blocks under a carcass of this frame. */
    Group group(Frame frame);

    /** What has to be bought for it. */
    List<Hardware> hardware(Frame frame);

    /** Holes in the bottom panel through which it is screwed on, in the assembly's x and y; none where it only lies. */
    default List<Hole> bottomHoles(Frame frame) {
        return List.of();
    }

    /** The smallest plan it goes under, mm. */
    Size2 leastPlan();

    /**
     * The plan for what a design stands on.
     *
     * @throws org.standwright.design.ImpossibleDesignException when its own figures do not go together
     */
    static SupportPlan of(StandDesign design) {
        if (design.support() instanceof Support.Casters casters) {
            return CasterSupport.of(casters, design);
        }
        if (design.support() instanceof Support.Levelers levelers) {
            return LevelerSupport.of(levelers, design);
        }
        if (design.support() instanceof Support.Plinth plinth) {
            return PlinthSupport.of(plinth, design);
        }
        return new PadSupport(((Support.None) design.support()).pads());
    }
}
