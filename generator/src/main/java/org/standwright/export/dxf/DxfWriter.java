package org.standwright.export.dxf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.plot.Plot;

/**
 * One plot as DXF R2000 in millimetres: closed polylines with true arcs, circles, points and texts in named layers. Plain
 * ASCII, lines end in \n, the same bytes every time.
 */
public final class DxfWriter {
    /** Points are shown as a cross in a circle, 4 mm wide. */
    private static final int POINT_STYLE = 34;

    private static final double POINT_SIZE = 4;

    private DxfWriter() {}

    public static void write(Plot plot, OutputStream out) throws IOException {
        out.write(text(plot).getBytes(StandardCharsets.US_ASCII));
    }

    private static String text(Plot plot) {
        var pairs = new Pairs();
        var modelSpace = pairs.handle();
        var paperSpace = pairs.handle();
        var names = new Words.Names();
        var layers = plot.layers().stream()
                .map(layer -> new Tables.NamedLayer(names.of(layer.name()), ColourIndex.of(layer.colour())))
                .toList();
        header(pairs, plot);
        pairs.section("CLASSES").end("ENDSEC");
        var all = new ArrayList<>(List.of(new Tables.NamedLayer("0", 7)));
        all.addAll(layers);
        new Tables(pairs, modelSpace, paperSpace).write(plot, all, Objects.PLOT_STYLE);
        pairs.section("BLOCKS");
        block(pairs, "*Model_Space", modelSpace);
        block(pairs, "*Paper_Space", paperSpace);
        pairs.end("ENDSEC").section("ENTITIES");
        for (int i = 0; i < layers.size(); i++) {
            var entities = new Entities(pairs, modelSpace, layers.get(i).name());
            plot.layers().get(i).marks().forEach(mark -> mark.accept(entities));
        }
        pairs.end("ENDSEC");
        new Objects(pairs).write(plot, modelSpace, paperSpace);
        return pairs.end("EOF").toString();
    }

    private static void header(Pairs pairs, Plot plot) {
        pairs.section("HEADER");
        pairs.add(9, "$ACADVER").add(1, "AC1015");
        pairs.add(9, "$DWGCODEPAGE").add(3, "ANSI_1252");
        pairs.add(9, "$EXTMIN").point(10, 0, 0);
        pairs.add(9, "$EXTMAX").point(10, plot.width(), plot.height());
        pairs.add(9, "$LIMMIN").flatPoint(10, 0, 0);
        pairs.add(9, "$LIMMAX").flatPoint(10, plot.width(), plot.height());
        pairs.add(9, "$LUNITS").add(70, 2);
        pairs.add(9, "$LUPREC").add(70, 3);
        pairs.add(9, "$PDMODE").add(70, POINT_STYLE);
        pairs.add(9, "$PDSIZE").add(40, POINT_SIZE);
        pairs.add(9, "$HANDSEED").add(5, Objects.SEED);
        pairs.add(9, "$MEASUREMENT").add(70, 1);
        pairs.add(9, "$INSUNITS").add(70, 4);
        pairs.end("ENDSEC");
    }

    private static void block(Pairs pairs, String name, String owner) {
        pairs.add(0, "BLOCK")
                .add(5, pairs.handle())
                .add(330, owner)
                .add(100, "AcDbEntity")
                .add(8, "0")
                .add(100, "AcDbBlockBegin")
                .add(2, name)
                .add(70, 0)
                .point(10, 0, 0)
                .add(3, name)
                .add(1, "");
        pairs.add(0, "ENDBLK")
                .add(5, pairs.handle())
                .add(330, owner)
                .add(100, "AcDbEntity")
                .add(8, "0")
                .add(100, "AcDbBlockEnd");
    }
}
