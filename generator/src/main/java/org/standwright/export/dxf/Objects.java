package org.standwright.export.dxf;

import org.standwright.drawing.plot.Plot;

/** The objects that are no part of the drawing but that every R2000 file has: dictionaries, layouts, the plain plot style. */
final class Objects {
    /** Handles that are known before their objects are written; those that are given out begin far below. */
    static final String MODEL_LAYOUT = "F0000001";

    static final String PAPER_LAYOUT = "F0000002";
    static final String PLOT_STYLE = "F0000003";
    private static final String ROOT = "F0000010";
    private static final String GROUPS = "F0000011";
    private static final String LAYOUTS = "F0000012";
    private static final String MULTILINES = "F0000013";
    private static final String MULTILINE = "F0000014";
    private static final String PLOT_SETTINGS = "F0000015";
    private static final String PLOT_STYLES = "F0000016";
    /** More than any handle. */
    static final String SEED = "F0000100";

    private final Pairs pairs;

    Objects(Pairs pairs) {
        this.pairs = pairs;
    }

    void write(Plot plot, String modelSpace, String paperSpace) {
        pairs.section("OBJECTS");
        dictionary(ROOT, "0")
                .add(3, "ACAD_GROUP")
                .add(350, GROUPS)
                .add(3, "ACAD_LAYOUT")
                .add(350, LAYOUTS)
                .add(3, "ACAD_MLINESTYLE")
                .add(350, MULTILINES)
                .add(3, "ACAD_PLOTSETTINGS")
                .add(350, PLOT_SETTINGS)
                .add(3, "ACAD_PLOTSTYLENAME")
                .add(350, PLOT_STYLES);
        dictionary(GROUPS, ROOT);
        dictionary(LAYOUTS, ROOT)
                .add(3, "Model")
                .add(350, MODEL_LAYOUT)
                .add(3, "Layout1")
                .add(350, PAPER_LAYOUT);
        dictionary(MULTILINES, ROOT).add(3, "Standard").add(350, MULTILINE);
        dictionary(PLOT_SETTINGS, ROOT);
        object("ACDBDICTIONARYWDFLT", PLOT_STYLES, ROOT)
                .add(100, "AcDbDictionary")
                .add(281, 1)
                .add(3, "Normal")
                .add(350, PLOT_STYLE)
                .add(100, "AcDbDictionaryWithDefault")
                .add(340, PLOT_STYLE);
        object("ACDBPLACEHOLDER", PLOT_STYLE, PLOT_STYLES);
        multiline();
        layout(MODEL_LAYOUT, "Model", 1024, 0, modelSpace, plot.width(), plot.height());
        layout(PAPER_LAYOUT, "Layout1", 0, 1, paperSpace, plot.width(), plot.height());
        pairs.end("ENDSEC");
    }

    private Pairs object(String type, String handle, String owner) {
        return pairs.add(0, type).add(5, handle).add(330, owner);
    }

    private Pairs dictionary(String handle, String owner) {
        return object("DICTIONARY", handle, owner).add(100, "AcDbDictionary").add(281, 1);
    }

    private void multiline() {
        object("MLINESTYLE", MULTILINE, MULTILINES)
                .add(100, "AcDbMlineStyle")
                .add(2, "Standard")
                .add(70, 0)
                .add(3, "")
                .add(62, 256)
                .add(51, 90.0)
                .add(52, 90.0)
                .add(71, 2)
                .add(49, 0.5)
                .add(62, 256)
                .add(6, "BYLAYER")
                .add(49, -0.5)
                .add(62, 256)
                .add(6, "BYLAYER");
    }

    private void layout(String handle, String name, int flags, int tab, String block, double width, double height) {
        object("LAYOUT", handle, LAYOUTS).add(100, "AcDbPlotSettings");
        pairs.add(1, "").add(2, "none_device").add(4, "").add(6, "");
        for (int code = 40; code <= 49; code++) {
            pairs.add(code, 0.0);
        }
        pairs.add(140, 0.0).add(141, 0.0).add(142, 1.0).add(143, 1.0);
        pairs.add(70, flags).add(72, 1).add(73, 0).add(74, 0).add(7, "").add(75, 16);
        pairs.add(147, 1.0).add(148, 0.0).add(149, 0.0);
        pairs.add(100, "AcDbLayout").add(1, name).add(70, 1).add(71, tab);
        pairs.flatPoint(10, 0, 0).flatPoint(11, width, height).point(12, 0, 0);
        pairs.point(14, 0, 0).point(15, width, height).add(146, 0.0);
        pairs.point(13, 0, 0).point(16, 1, 0).add(17, 0.0).add(27, 1.0).add(37, 0.0);
        pairs.add(76, 0).add(330, block);
    }
}
