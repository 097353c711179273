package org.standwright.export.dxf;

import java.util.List;
import org.standwright.drawing.plot.Plot;

/** The tables of a DXF file: those that every file has, and the plot's layers. */
final class Tables {
    /** One layer as it is named in the file. */
    record NamedLayer(String name, int colour) {}

    private final Pairs pairs;
    private final String modelSpace;
    private final String paperSpace;

    Tables(Pairs pairs, String modelSpace, String paperSpace) {
        this.pairs = pairs;
        this.modelSpace = modelSpace;
        this.paperSpace = paperSpace;
    }

    void write(Plot plot, List<NamedLayer> layers, String plotStyle) {
        pairs.section("TABLES");
        viewport(plot);
        var linetypes = table("LTYPE", 3);
        linetype(linetypes, "ByBlock", "");
        linetype(linetypes, "ByLayer", "");
        linetype(linetypes, "Continuous", "Solid line");
        pairs.end("ENDTAB");
        var owner = table("LAYER", layers.size());
        layers.forEach(layer -> layer(owner, layer, plotStyle));
        pairs.end("ENDTAB");
        style();
        table("VIEW", 0);
        pairs.end("ENDTAB");
        table("UCS", 0);
        pairs.end("ENDTAB");
        record(table("APPID", 1), "APPID", 5, "AcDbRegAppTableRecord", "ACAD").add(70, 0);
        pairs.end("ENDTAB");
        dimensions();
        blocks();
        pairs.end("ENDSEC");
    }

    private String table(String name, int count) {
        var handle = pairs.handle();
        pairs.add(0, "TABLE")
                .add(2, name)
                .add(5, handle)
                .add(330, "0")
                .add(100, "AcDbSymbolTable")
                .add(70, count);
        return handle;
    }

    private Pairs record(String owner, String type, int handleCode, String subclass, String name) {
        return pairs.add(0, type)
                .add(handleCode, pairs.handle())
                .add(330, owner)
                .add(100, "AcDbSymbolTableRecord")
                .add(100, subclass)
                .add(2, name);
    }

    /** The whole plot is seen when the file is opened. */
    private void viewport(Plot plot) {
        double high = Math.max(plot.height(), plot.width() / 1.5) * 1.1;
        record(table("VPORT", 1), "VPORT", 5, "AcDbViewportTableRecord", "*Active")
                .add(70, 0)
                .flatPoint(10, 0, 0)
                .flatPoint(11, 1, 1)
                .flatPoint(12, plot.width() / 2, plot.height() / 2)
                .flatPoint(13, 0, 0)
                .flatPoint(14, 10, 10)
                .flatPoint(15, 10, 10)
                .add(16, 0.0)
                .add(26, 0.0)
                .add(36, 1.0)
                .point(17, 0, 0)
                .add(40, high)
                .add(41, 1.5)
                .add(42, 50.0)
                .add(43, 0.0)
                .add(44, 0.0)
                .add(50, 0.0)
                .add(51, 0.0)
                .add(71, 0)
                .add(72, 1000)
                .add(73, 1)
                .add(74, 3)
                .add(75, 0)
                .add(76, 0)
                .add(77, 0)
                .add(78, 0);
        pairs.end("ENDTAB");
    }

    private void linetype(String owner, String name, String description) {
        record(owner, "LTYPE", 5, "AcDbLinetypeTableRecord", name)
                .add(70, 0)
                .add(3, description)
                .add(72, 65)
                .add(73, 0)
                .add(40, 0.0);
    }

    private void layer(String owner, NamedLayer layer, String plotStyle) {
        record(owner, "LAYER", 5, "AcDbLayerTableRecord", layer.name)
                .add(70, 0)
                .add(62, layer.colour)
                .add(6, "Continuous")
                .add(370, -3)
                .add(390, plotStyle);
    }

    private void style() {
        record(table("STYLE", 1), "STYLE", 5, "AcDbTextStyleTableRecord", "Standard")
                .add(70, 0)
                .add(40, 0.0)
                .add(41, 1.0)
                .add(50, 0.0)
                .add(71, 0)
                .add(42, 2.5)
                .add(3, "txt")
                .add(4, "");
        pairs.end("ENDTAB");
    }

    private void dimensions() {
        var owner = table("DIMSTYLE", 1);
        pairs.add(100, "AcDbDimStyleTable");
        record(owner, "DIMSTYLE", 105, "AcDbDimStyleTableRecord", "Standard").add(70, 0);
        pairs.end("ENDTAB");
    }

    private void blocks() {
        var owner = table("BLOCK_RECORD", 2);
        block(owner, modelSpace, "*Model_Space", Objects.MODEL_LAYOUT);
        block(owner, paperSpace, "*Paper_Space", Objects.PAPER_LAYOUT);
        pairs.end("ENDTAB");
    }

    private void block(String owner, String handle, String name, String layout) {
        pairs.add(0, "BLOCK_RECORD")
                .add(5, handle)
                .add(330, owner)
                .add(100, "AcDbSymbolTableRecord")
                .add(100, "AcDbBlockTableRecord")
                .add(2, name)
                .add(340, layout);
    }
}
