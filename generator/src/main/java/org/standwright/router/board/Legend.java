package org.standwright.router.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Plot;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RoutedSheet;
import org.standwright.router.machining.Kind;
import org.standwright.router.machining.Mm;
import org.standwright.router.machining.Sizes;
import org.standwright.router.machining.Work;

/** What an operator has to know about one board. */
final class Legend {
    private final String title;
    private final RoutedSheet sheet;
    private final Router router;
    private final Sizes sizes;
    private final Function<RoutedPiece, String> drawing;
    private final List<Worked> worked;
    private final Dowels dowels;
    private final Plot top;
    private final Optional<Plot> bottom;
    private final List<String> lines = new ArrayList<>();

    Legend(
            String title,
            RoutedSheet sheet,
            Router router,
            Sizes sizes,
            Function<RoutedPiece, String> drawing,
            List<Worked> worked,
            Dowels dowels,
            Plot top,
            Optional<Plot> bottom) {
        this.title = title;
        this.sheet = sheet;
        this.router = router;
        this.sizes = sizes;
        this.drawing = drawing;
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
        boardCautions();
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
        lines.add(title);
        lines.add("=".repeat(title.codePointCount(0, title.length())));
        lines.add("board: " + size() + ", " + Mm.of(sheet.from().thickness())
                + " mm thick as measured; measure it again before cutting");
        lines.add("zero: x 0, y 0 at the lower left corner, x along the board's length; all in mm"
                + (sheet.from().material().grain() == Grain.NONE ? "" : "; the grain runs along x"));
        lines.add("bit: " + sizes.bore(router.bit()) + "; parts lie " + Mm.of(router.spacing())
                + " mm apart and from the edges (bit and margin)");
        lines.add("lines are those of the finished cut: the program offsets them by half of the bit, outlines outwards,"
                + " cutouts, pockets and channels inwards");
        if (router.skin() > 0) {
            lines.add("outlines leave a skin of " + sizes.of(router.skin()) + " that holds the parts");
        }
        router.tabs()
                .ifPresent(tabs -> lines.add("tabs " + sizes.of(tabs.height()) + " high and " + Mm.of(tabs.length())
                        + " mm long hold the parts: short red lines on the outline where the bit stays that high"));
        if (goesThrough()) {
            lines.add("through cuts go " + sizes.of(router.below()) + " below the board: lay waste under it");
        }
        lines.add("order of work: marks, bores, pockets and channels first, cutouts next, outlines last"
                + (bottom.isPresent() ? "; the bottom before the top" : ""));
        faces();
    }

    /** Its name, which may hold the size already. */
    private String size() {
        var from = sheet.from();
        var size = Mm.of(from.length()) + " x " + Mm.of(from.width()) + " mm";
        boolean isSaid =
                from.name().contains(Mm.of(from.length())) && from.name().contains(Mm.of(from.width()));
        return isSaid ? from.name() : from.name() + ", " + size;
    }

    private boolean goesThrough() {
        double thickness = sheet.from().thickness();
        return worked.stream()
                .flatMap(piece -> Stream.concat(piece.above(), piece.below()))
                .anyMatch(placing -> placing.work().goesThrough(thickness));
    }

    /** Which parts lie the other way up than most would expect, where there are both. */
    private void faces() {
        var down = worked.stream()
                .filter(piece -> piece.up() == Face.BENCH)
                .map(piece -> piece.piece().label())
                .distinct()
                .toList();
        if (!down.isEmpty() && worked.stream().anyMatch(piece -> piece.up() == Face.SHOW)) {
            lines.add("show face down on this board: " + String.join(", ", down)
                    + "; all others lie show face up, so mind which face of the board is the better one");
        }
    }

    private void turning() {
        lines.add("");
        lines.add("TWO SIDES: cut the bottom first, then turn the board over side to side, about its long middle line"
                + " (x stays, y becomes " + Mm.of(sheet.from().width()) + " - y), and cut the top; set no new zero"
                + " after turning; the drawings say which long edge lies towards you");
        if (dowels.places().isEmpty()) {
            lines.add(
                    "no room for two dowels in the waste: line the board up by its edges against a fence, with the same"
                            + " end against the same stop");
            return;
        }
        lines.add("dowels: two holes of " + sizes.bore(router.dowel())
                + "; with the bottom up bore them through the board" + " (layer 'dowel'), at "
                + places(new Turning(sheet.from().width())));
        lines.add("bed dowels: take the board off, bore the holes of the top's layer 'bed dowel' "
                + Mm.of(Dowels.IN_BED) + " mm deep into the bare bed, at " + places(at -> at)
                + ", and lay the turned board on dowels there; do not run this layer again with the board in place");
        if (dowels.tellTheWay()) {
            lines.add("a board turned end over end lies " + Mm.of(dowels.misplaced())
                    + " mm out of place on the dowels: check one edge before cutting");
        }
    }

    private String places(UnaryOperator<Vec2> image) {
        return dowels.places().stream()
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
                ? "; narrower than the bit: bore it with a tool of " + sizes.bore(wide)
                : "; bored, or milled round with the bit";
    }

    private String words(Layer layer) {
        return switch (layer.name()) {
            case "sheet" -> "the board's edge; not cut";
            case "label" -> "lettering; not cut";
            default ->
                layer.marks().size() + " x "
                        + (layer.name().startsWith("bed")
                                ? "hole for a dowel, into the bare bed before the board is laid on it; not run again"
                                : "hole for a dowel to turn the board over on, through the board")
                        + (Grid.less(router.dowel(), router.bit())
                                ? "; narrower than the bit: bore it with a tool of " + sizes.bore(router.dowel())
                                : "");
        };
    }

    private void boardCautions() {
        var cautions = new Cautions(sheet, router, sizes, worked, dowels).lines();
        if (!cautions.isEmpty()) {
            lines.add("");
            lines.add("CAUTIONS:");
            cautions.forEach(caution -> lines.add("  - " + caution));
        }
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
            if (one.machining().goesOnAfterTrim()) {
                lines.add("    - made after the trim, by its own drawing " + drawing.apply(one.piece()));
            }
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
