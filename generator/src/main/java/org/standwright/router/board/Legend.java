package org.standwright.router.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.StockSheet;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Plot;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;
import org.standwright.part.Face;
import org.standwright.router.RoutedSheet;
import org.standwright.router.machining.Kind;
import org.standwright.router.machining.Mm;
import org.standwright.router.machining.Work;

/** What an operator has to know about one board. */
final class Legend {
    private final String title;
    private final RoutedSheet sheet;
    private final Router router;
    private final List<Worked> worked;
    private final List<Vec2> dowels;
    private final Plot top;
    private final Optional<Plot> bottom;
    private final List<String> lines = new ArrayList<>();

    Legend(
            String title,
            RoutedSheet sheet,
            Router router,
            List<Worked> worked,
            List<Vec2> dowels,
            Plot top,
            Optional<Plot> bottom) {
        this.title = title;
        this.sheet = sheet;
        this.router = router;
        this.worked = worked;
        this.dowels = dowels;
        this.top = top;
        this.bottom = bottom;
    }

    List<String> lines() {
        board();
        bottom.ifPresent(plot -> {
            turning();
            layers("Layers of the bottom, cut first:", plot);
        });
        layers(bottom.isPresent() ? "Layers of the top, cut then:" : "Layers:", top);
        parts();
        cautions();
        return lines.stream().map(Legend::onOneLine).toList();
    }

    /** Names that people gave may hold anything. */
    private static String onOneLine(String words) {
        return words.replaceAll("[\\p{Cntrl}\u2028\u2029]+", " ");
    }

    private void board() {
        StockSheet from = sheet.from();
        lines.add(title);
        lines.add("=".repeat(title.codePointCount(0, title.length())));
        lines.add("board: " + from.name() + ", " + Mm.of(from.length()) + " x " + Mm.of(from.width()) + " mm, "
                + Mm.of(from.thickness()) + " mm thick as measured; measure it again before cutting");
        lines.add("zero: x 0, y 0 at the lower left corner, x along the board's length; all in mm");
        lines.add("bit: " + Mm.of(router.bit()) + " mm; parts lie " + Mm.of(router.spacing())
                + " mm apart and from the edges (bit and margin)");
        lines.add("lines are those of the finished cut: the program offsets them by half of the bit, outlines outwards,"
                + " cutouts, pockets and channels inwards");
        if (router.skin() > 0) {
            lines.add("outlines leave a skin of " + Mm.of(router.skin()) + " mm that holds the parts");
        }
        router.tabs()
                .ifPresent(tabs -> lines.add("tabs " + Mm.of(tabs.height()) + " mm high and " + Mm.of(tabs.length())
                        + " mm long hold the parts: short lines on the outline where the bit stays that high"));
        if (Grid.same(router.skin(), 0)) {
            lines.add("through cuts go " + Mm.of(router.below()) + " mm below the board: lay waste under it");
        }
    }

    private void turning() {
        lines.add("");
        lines.add("TWO SIDES: cut the bottom first, then turn the board over side to side, about its long middle line"
                + " (x stays, y becomes " + Mm.of(sheet.from().width()) + " - y), and cut the top");
        if (dowels.isEmpty()) {
            lines.add(
                    "no room for two dowels in the waste: line the board up by its edges against a fence, with the same"
                            + " end against the same stop");
            return;
        }
        lines.add("dowels: two holes of " + Mm.of(router.dowel())
                + " mm, through the board and into the bed below it, at "
                + places(new Turning(sheet.from().width())) + " of the bottom; before the top is cut, bore those of the"
                + " top into the bed, at " + places(at -> at) + ", and lay the turned board on dowels there");
        if (!Dowels.areFarApart(dowels, sheet)) {
            lines.add("the dowels are less than half of the board's length apart: check the far end by its edge too");
        }
    }

    private String places(UnaryOperator<Vec2> image) {
        return dowels.stream()
                .map(image)
                .map(at -> "(" + Mm.of(at.x()) + ", " + Mm.of(at.y()) + ")")
                .collect(Collectors.joining(" and "));
    }

    private void layers(String head, Plot plot) {
        lines.add("");
        lines.add(head);
        Map<String, Work> works = new LinkedHashMap<>();
        worked.forEach(one -> one.machining()
                .operations()
                .forEach(operation -> works.put(operation.work().layer(), operation.work())));
        for (var layer : plot.layers()) {
            lines.add("  " + layer.name() + ": "
                    + Optional.ofNullable(works.get(layer.name()))
                            .map(work -> words(work, layer))
                            .orElseGet(() -> words(layer)));
        }
    }

    private String words(Work work, Layer layer) {
        var deep = work.depth().isPresent() ? ", " + Mm.of(work.depth().getAsDouble()) + " mm deep" : "";
        return layer.marks().size() + " x " + work.kind().words() + deep + tool(work, layer);
    }

    /** A hole narrower than the bit is bored with a tool of its own, a wider one milled. */
    private String tool(Work work, Layer layer) {
        if (work.kind() != Kind.BORE) {
            return "";
        }
        double wide = layer.marks().get(0).accept(new Widths());
        return Grid.less(wide, router.bit())
                ? "; narrower than the bit: bore it with a tool of " + Mm.of(wide) + " mm"
                : "; bored, or milled round with the bit";
    }

    private String words(Layer layer) {
        return switch (layer.name()) {
            case "sheet" -> "the board's edge; not cut";
            case "label" -> "lettering; not cut";
            default -> layer.marks().size() + " x hole for a dowel to turn the board over on";
        };
    }

    private void parts() {
        lines.add("");
        lines.add("Parts (places in a part are x along its grain and y across it, seen from its show face):");
        var said = new LinkedHashSet<String>();
        for (var one : worked) {
            if (!said.add(one.name())) {
                continue;
            }
            var part = one.piece().part();
            lines.add("  " + one.name() + ": " + Mm.of(part.roughLength()) + " x " + Mm.of(part.roughWidth()) + " mm, "
                    + facesUp(one.name()));
            one.machining().remarks().forEach(remark -> lines.add("    - " + remark));
            one.machining().byHand().forEach(work -> lines.add("    - not from above: " + work));
        }
    }

    /** '2 show face up, 1 bench face up'. */
    private String facesUp(String name) {
        return Stream.of(Face.SHOW, Face.BENCH)
                .map(face -> Map.entry(face, count(name, face)))
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> entry.getValue() + " " + entry.getKey().name().toLowerCase(Locale.ROOT) + " face up")
                .collect(Collectors.joining(", "));
    }

    private long count(String name, Face up) {
        return worked.stream()
                .filter(other -> other.name().equals(name) && other.up() == up)
                .count();
    }

    private void cautions() {
        lines.add("");
        lines.add(
                "This is a drawing, no machine code. Your CAM program and its operator own tools, speeds, feeds, depth of"
                        + " each pass, order, clamps and safety.");
        lines.add(
                "Mind: parts and what falls out of cutouts can come loose and be thrown; keep clamps, screws and dowels out"
                        + " of the bit's way; run it in the air first.");
        lines.add(
                "Wear eye and hearing protection and take the dust away. The machine's manual and local rules come first.");
    }
}
