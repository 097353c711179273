package org.standwright.design.wall.place;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Things.Use;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.design.wall.built.Unplaced;

/**
 * Where all holders of a design hang.
 *
 * @param hung in the order of the design
 * @param unplaced in the order of the design
 */
public record Arrangement(List<HungHolder> hung, List<Unplaced> unplaced) {
    public Arrangement {
        hung = List.copyOf(hung);
        unplaced = List.copyOf(unplaced);
    }

    /**
     * Hangs every holder that has a place chosen by its maker, and finds one for the others. Refuses a chosen place that
     * does not do.
     *
     * @param made one for each holder of the design, in its order
     */
    public static Arrangement of(WallDesign design, List<CleatedWall> walls, List<MadeHolder> made) {
        if (made.size() != design.holders().size()) {
            throw new IllegalArgumentException(made.size() + " holders are made, but the design has "
                    + design.holders().size() + "; make each one.");
        }
        var all = IntStream.range(0, made.size())
                .mapToObj(at -> ToHang.of(at, made.get(at), design.cleat().headroom()))
                .toList();
        Predicate<ToHang> used = holder -> holder.use() != Use.UNUSED;
        Predicate<ToHang> chosen = ToHang::isByHand;

        var empty = new EmptyWalls(walls, design.cleat(), all);
        var board = new Board(empty);
        var byHand = new ByHand(board, design.unit())
                .all(all.stream().filter(used.and(chosen)).toList());
        var search = new Search(walls, new Cost(design.person()), Tape.of(design.unit()));
        var found = new Hanging(search)
                .all(all.stream().filter(used.and(chosen.negate())).toList(), board);
        var why = new WhyNot(empty, design.unit());
        return new Arrangement(
                Stream.concat(byHand.stream(), found.layout().all().stream())
                        .sorted(Comparator.comparingInt(Hung::at))
                        .map(board::told)
                        .toList(),
                Stream.concat(all.stream().filter(used.negate()), found.left().stream())
                        .sorted(Comparator.comparingInt(ToHang::at))
                        .map(why::of)
                        .toList());
    }
}
