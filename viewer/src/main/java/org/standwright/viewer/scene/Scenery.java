package org.standwright.viewer.scene;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Placement;
import org.standwright.assembly.Pose;
import org.standwright.geom.Box3;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Solid;

/**
 * All there is to see of an assembly.
 *
 * @param boards every part as a solid; equal parts share one
 * @param box around everything
 */
public record Scenery(List<Board> boards, List<Block> blocks, Box3 box) {
    public Scenery {
        boards = List.copyOf(boards);
        blocks = List.copyOf(blocks);
    }

    /** One part at its place. */
    record Board(String label, Tone tone, Solid solid, Placement placement) {}

    /**
     * What there is to see in a pose.
     *
     * @param solids of the pose's assembly
     */
    public static Scenery of(AssemblySolids solids, Pose pose) {
        var assembly = pose.assembly();
        var moving =
                assembly.groups().stream().filter(Group::moves).map(Group::name).collect(Collectors.toSet());
        var boards = solids.solids().stream()
                .map(placed -> new Board(
                        placed.label(),
                        Tone.of(placed, moving.contains(placed.group())),
                        placed.solid(),
                        placed.placement(pose)))
                .toList();
        var blocks = assembly.groups().stream()
                .flatMap(group -> group.blocks().stream()
                        .map(block -> new Block(block.label(), block.kind(), pose.moved(group.name(), block.box()))))
                .toList();
        return new Scenery(boards, blocks, pose.box());
    }
}
