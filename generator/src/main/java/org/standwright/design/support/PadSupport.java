package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** The carcass on pads under its sides and partitions: no bare plywood on concrete. */
record PadSupport(double height) implements SupportPlan {
    /** Side of a square pad, mm. */
    private static final double SIZE = 40;

    @Override
    public List<Term> terms() {
        return List.of(Term.fixed("pads", height));
    }

    @Override
    public Group group(Frame frame) {
        return Group.fixed("support", List.of(), blocks(frame, 0));
    }

    @Override
    public List<Hardware> hardware(Frame frame) {
        return height > 0
                ? List.of(new Hardware(
                        "pad " + frame.design().unit().length(height) + " high, for damp floors",
                        blocks(frame, 0).size(),
                        "under the stand"))
                : List.of();
    }

    @Override
    public Size2 leastPlan() {
        return new Size2(2 * SIZE, 2 * SIZE);
    }

    /** One pad at the front and one at the rear of every upright, the front ones {@code back} behind the front edge. */
    List<Block> blocks(Frame frame, double back) {
        var blocks = new ArrayList<Block>();
        if (height <= 0) {
            return blocks;
        }
        pair(blocks, "left", 0, frame, back);
        for (int i = 0; i < frame.partitions().size(); i++) {
            double centre = frame.partitions().get(i) + frame.panel() / 2;
            pair(blocks, "partition " + (i + 1), centre - SIZE / 2, frame, back);
        }
        pair(blocks, "right", frame.width() - SIZE, frame, back);
        return blocks;
    }

    private void pair(List<Block> blocks, String where, double x, Frame frame, double back) {
        for (double y : new double[] {back, frame.depth() - SIZE}) {
            blocks.add(new Block(
                    where + (y == back ? " front pad" : " rear pad"),
                    Block.Kind.PAD,
                    new Box3(new Vec3(x, y, 0), new Vec3(x + SIZE, y + SIZE, height))));
        }
    }
}
