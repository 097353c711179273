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
public interface SupportPlan {
    /** Its layers in the height stack, from the floor up. */
    List<Term> terms();

    /** Its parts and blocks under a carcass of this frame. */
    Group group(Frame frame);

    /** What has to be bought for it. */
    List<Hardware> hardware(Frame frame);

    /** Holes in the bottom panel through which it is screwed on, in the assembly's x and y. */
    List<Hole> bottomHoles(Frame frame);

    /** The smallest plan it goes under, mm. */
    Size2 leastPlan();

    /** Throws an {@link org.standwright.design.ImpossibleDesignException} when its own figures do not go together. */
    void check(StandDesign design);

    static SupportPlan of(StandDesign design) {
        if (design.support() instanceof Support.Casters casters) {
            return new CasterSupport(casters.caster(), new BlockStrips("caster block", design));
        }
        if (design.support() instanceof Support.Levelers levelers) {
            return new LevelerSupport(levelers.leveler(), new BlockStrips("leveler block", design));
        }
        if (design.support() instanceof Support.Plinth plinth) {
            return new PlinthSupport(plinth, design);
        }
        return new PadSupport(((Support.None) design.support()).pads());
    }
}
