package org.standwright.export.step;

import java.util.ArrayList;
import java.util.List;
import org.standwright.part.Colour;

/** Colours of solids. */
final class StepColours {
    private static final double WHOLE = 255;

    private final StepText text;
    private final int units;
    private final List<Integer> styled = new ArrayList<>();

    StepColours(StepText text, int units) {
        this.text = text;
        this.units = units;
    }

    void paint(int item, Colour colour) {
        int rgb = text.share("COLOUR_RGB(''," + share(colour.red()) + "," + share(colour.green()) + ","
                + share(colour.blue()) + ")");
        int fill = text.share("FILL_AREA_STYLE_COLOUR('',#" + rgb + ")");
        int area = text.share("FILL_AREA_STYLE('',(#" + fill + "))");
        int surface = text.share("SURFACE_STYLE_FILL_AREA(#" + area + ")");
        int side = text.share("SURFACE_SIDE_STYLE('',(#" + surface + "))");
        int usage = text.share("SURFACE_STYLE_USAGE(.BOTH.,#" + side + ")");
        int style = text.share("PRESENTATION_STYLE_ASSIGNMENT((#" + usage + "))");
        styled.add(text.add("STYLED_ITEM('',(#" + style + "),#" + item + ")"));
    }

    private static String share(int part) {
        return StepReal.of(part / WHOLE);
    }

    void finish() {
        text.add("MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION(''," + StepText.list(styled) + ",#" + units
                + ")");
    }
}
