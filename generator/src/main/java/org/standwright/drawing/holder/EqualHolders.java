package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.design.wall.holder.HolderMaker;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;

/**
 * Holders that are built alike: the same boards at the same places, held by the same hardware.
 *
 * @param names in the order of the design
 * @param made the first of them
 * @param boards of the first, spacer included, in the frame of a made holder
 * @param hardware of the first, that of its spacer included
 */
public record EqualHolders(List<String> names, MadeHolder made, List<PlacedPart> boards, List<Hardware> hardware) {
    public EqualHolders {
        names = List.copyOf(names);
        boards = List.copyOf(boards);
        hardware = List.copyOf(hardware);
    }

    /** All that hang, those that are equal together, in the order of the first of each. */
    public static List<EqualHolders> of(CleatWall walls) {
        var maker = new HolderMaker(walls.design());
        var kinds = new LinkedHashMap<Likeness, List<HungHolder>>();
        walls.holders()
                .forEach(hung -> kinds.computeIfAbsent(Likeness.of(hung, maker), first -> new ArrayList<>())
                        .add(hung));
        return kinds.values().stream()
                .map(equal -> new EqualHolders(
                        equal.stream().map(HungHolder::name).toList(),
                        equal.get(0).made(),
                        boards(equal.get(0), maker),
                        hardware(equal.get(0), maker)))
                .toList();
    }

    /** 'left side', without the name of the holder. */
    public String label(PlacedPart board) {
        return bare(board.label(), made);
    }

    /** 'lip, into the board's edge', without the name of the holder. */
    public String use(Hardware item) {
        return bare(item.use(), made);
    }

    /** Around all its boards. */
    public Box3 box() {
        return Box3.around(boards.stream().map(PlacedPart::box).toList());
    }

    /** Behind its back, against the wall or the strip. */
    public boolean isBehind(PlacedPart board) {
        return !Grid.less(board.box().min().y(), back().box().max().y());
    }

    /** The board that faces the wall. */
    public PlacedPart back() {
        return boards.stream()
                .filter(board -> label(board).equals("back"))
                .findFirst()
                .orElseThrow();
    }

    /** All boards before its back. */
    List<PlacedPart> before() {
        return boards.stream()
                .filter(board ->
                        Grid.less(board.box().min().y(), back().box().min().y()))
                .toList();
    }

    /** 'chisel rack and file rack'. */
    public String title() {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private static List<PlacedPart> boards(HungHolder hung, HolderMaker maker) {
        var boards = new ArrayList<>(hung.made().parts());
        if (hung.backing().by() == Backing.By.SPACER) {
            boards.add(maker.spacer(hung.made()));
        }
        return boards;
    }

    private static List<Hardware> hardware(HungHolder hung, HolderMaker maker) {
        var hardware = new ArrayList<>(hung.made().hardware());
        if (hung.backing().by() == Backing.By.SPACER) {
            hardware.addAll(maker.spacerHardware(hung.made()));
        }
        return hardware;
    }

    private static String bare(String words, MadeHolder made) {
        var name = made.holder().name();
        return words.startsWith(name) ? words.substring(name.length()).replaceFirst("^[, ]+", "") : words;
    }

    /** All that equal holders have in common. */
    private record Likeness(Class<?> kind, Box3 box, Things things, List<PlacedPart> boards, List<Hardware> hardware) {
        static Likeness of(HungHolder hung, HolderMaker maker) {
            var made = hung.made();
            return new Likeness(
                    made.holder().getClass(),
                    made.box(),
                    made.holder().things(),
                    EqualHolders.boards(hung, maker).stream()
                            .map(board -> new PlacedPart(bare(board.label(), made), board.part(), board.placement()))
                            .toList(),
                    EqualHolders.hardware(hung, maker).stream()
                            .map(item -> new Hardware(item.item(), item.count(), bare(item.use(), made)))
                            .toList());
        }
    }
}
