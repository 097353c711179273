package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Range;

/** The worktop of one stand with all that is cut into it, and the machine that stands on it. */
public final class Top {
    private final Frame frame;
    private final MachineBolts bolts;
    private final Optional<Plate> plate;

    public Top(Frame frame) {
        this.frame = frame;
        this.bolts = new MachineBolts(frame);
        this.plate = frame.design().worktop().plate().map(measured -> new Plate(frame, measured));
    }

    /** Where the machine stands; nothing when its work surface is the worktop. */
    public Optional<MachineLayout> machine() {
        return new MachinePlace(frame).layout();
    }

    /** The worktop's layers, nothing cut into them yet. */
    public Group worktop() {
        return new WorktopMaker(frame).group(plate.map(Plate::block).stream().toList());
    }

    /** The machine, the shims under it and what shows of its bolts below the sub-top. */
    public Group standing() {
        var blocks = new ArrayList<Block>();
        machine().ifPresent(layout -> blocks.addAll(new MachinePlace(frame).blocks(layout)));
        blocks.addAll(bolts.blocks());
        return Group.fixed("machine", List.of(), blocks);
    }

    /**
     * The same groups with everything cut into worktop, sub-top and back.
     *
     * @param groups all groups of the stand, with one named 'carcass' that holds parts named 'sub-top' and 'back'
     * @throws org.standwright.design.ImpossibleDesignException when a bolt, the plate or a cut-out has no room
     */
    public List<Group> cut(List<Group> groups, List<BayLayout> bays) {
        var carcass = groups.stream()
                .filter(group -> group.name().equals("carcass"))
                .findFirst()
                .orElseThrow();
        var under = new UnderTop(carcass);
        new BoltFit(frame, bolts, under).check();
        plate.ifPresent(place -> new PlateFit(frame, place, Surroundings.ofWorktop(frame, under, bolts), bays).check());
        new CutoutFit(frame).check(under, bolts, plate);
        return new TopCuts(frame, bolts, plate).into(groups);
    }

    public List<Hardware> hardware() {
        var list = new ArrayList<>(bolts.hardware());
        plate.ifPresent(place -> list.addAll(place.hardware()));
        machine().flatMap(layout -> frame.design().place().shims()).ifPresent(shims -> list.add(shims(shims)));
        return list;
    }

    private Hardware shims(Range shims) {
        var units = frame.design().unit();
        return new Hardware(
                "set of shims, thin pieces that make up to " + units.length(shims.most()) + " together",
                1,
                "under the machine, beside its bolts");
    }
}
