package org.standwright.viewer.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;

/**
 * All there is to see of an assembly.
 *
 * @param boards every part as a solid; equal parts share one
 * @param bought everything that is not made, as blocks, the large ones last
 * @param moving names of the groups that move
 */
public record Scenery(Assembly assembly, List<Board> boards, List<Bought> bought, Set<String> moving) {
    /** No label of the assembly has a line's end in it. */
    private static final String TABLE = "\n" + MachineTable.TONE.name();

    public Scenery {
        boards = List.copyOf(boards);
        bought = List.copyOf(bought);
        moving = Set.copyOf(moving);
    }

    /** One part at its place. */
    record Board(String label, Tone tone, PlacedSolid placed) {}

    /**
     * One bought thing.
     *
     * @param key as its label, but once in an assembly
     */
    record Bought(String key, String group, Tone tone, Block block) {}

    /** @param solids of the assembly */
    public static Scenery of(Assembly assembly, AssemblySolids solids) {
        var moving =
                assembly.groups().stream().filter(Group::moves).map(Group::name).collect(Collectors.toSet());
        var boards = solids.solids().stream()
                .map(placed -> new Board(placed.label(), Tone.of(placed, moving.contains(placed.group())), placed))
                .toList();
        return new Scenery(assembly, boards, bought(assembly), moving);
    }

    /** Whether anything moves. */
    public boolean opens() {
        return !moving.isEmpty();
    }

    /** The board of a label. */
    Optional<PlacedSolid> solid(String label) {
        return boards.stream()
                .filter(board -> board.label().equals(label))
                .map(Board::placed)
                .findFirst();
    }

    /** The group that moves and has the part in it. */
    Optional<String> movingWith(String label) {
        return boards.stream()
                .filter(board -> board.label().equals(label))
                .map(board -> board.placed().group())
                .filter(moving::contains)
                .findFirst();
    }

    /** Labels of everything. */
    Set<String> labels() {
        return Stream.concat(
                        boards.stream().map(Board::label),
                        bought.stream().map(thing -> thing.block().label()))
                .collect(Collectors.toSet());
    }

    private static List<Bought> bought(Assembly assembly) {
        var keys = new HashSet<String>();
        var all = new ArrayList<Bought>();
        for (var group : assembly.groups()) {
            for (var block : group.blocks()) {
                var key = block.label();
                for (int again = 2; !keys.add(key); again++) {
                    key = block.label() + " (" + again + ")";
                }
                all.add(new Bought(key, group.name(), Tone.of(block), block));
            }
            MachineTable.of(group)
                    .ifPresent(table -> all.add(new Bought(TABLE, group.name(), MachineTable.TONE, table)));
        }
        all.sort(Comparator.comparingDouble(thing -> volume(thing.block()))); // what lies within another comes first
        return all;
    }

    private static double volume(Block block) {
        var size = block.box().size();
        return size.x() * size.y() * size.z();
    }
}
