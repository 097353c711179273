package org.standwright.router;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.standwright.Presets;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Vec2;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.router.board.RouterPlots;
import org.standwright.unit.Units;

/** Boards with parts laid out by hand: in rows, each part lying in another way than the one before it. */
public final class SampleBoards {
    private SampleBoards() {}

    /** A label and a part. */
    public record Named(String label, Part part) {}

    /** Every distinct part of every preset that is cut from sheets; worked out once. */
    public static List<Part> presetParts() {
        return PresetParts.ALL;
    }

    private static final class PresetParts {
        private static final List<Part> ALL = Presets.furniture().stream()
                .flatMap(furniture -> flat(CutList.of(furniture)).stream())
                .map(CutLine::part)
                .distinct()
                .toList();
    }

    /** Those lines of a cut list that are cut from sheets. */
    public static List<CutLine> flat(CutList list) {
        return list.lines().stream().filter(line -> !line.material().isBar()).toList();
    }

    public static StockSheet board(Material material, double length, double width) {
        return new StockSheet(
                "board",
                material,
                length,
                width,
                material.thickness(),
                OptionalInt.empty(),
                Optional.empty(),
                StockSheet.Source.BOUGHT);
    }

    /** One board that is just large enough for all parts, in rows. */
    public static RoutedSheet of(List<Named> parts, Router router, int firstWay) {
        double rowLength = 2440;
        for (var named : parts) {
            rowLength = Math.max(rowLength, Math.max(named.part.roughLength(), named.part.roughWidth()) + 40);
        }
        double gap = router.spacing();
        double edge = gap + 20;
        double x = edge;
        double y = edge;
        double high = 0;
        int way = firstWay;
        var pieces = new ArrayList<RoutedPiece>();
        for (var named : parts) {
            var lie = new Lie(way % 8 >= 4, way % 4, Vec2.ZERO);
            way++;
            var box = CutOutline.of(named.part).moved(lie).bounds();
            if (x + box.width() + edge > rowLength) {
                x = edge;
                y += high + gap;
                high = 0;
            }
            pieces.add(new RoutedPiece(named.label, named.part, lie.moved(new Vec2(x - box.x0(), y - box.y0()))));
            x += box.width() + gap;
            high = Math.max(high, box.height());
        }
        var material = parts.get(0).part.material();
        return new RoutedSheet(board(material, rowLength, y + high + edge), pieces);
    }

    /** The plots of a board, all in millimetres. */
    public static RouterPlots plots(String title, RoutedSheet sheet, Router router) {
        return RouterPlots.of(title, sheet, router, Units.MM, piece -> piece.label() + ".dxf");
    }
}
