package org.standwright.export.mesh;

import java.util.List;
import java.util.Locale;
import org.standwright.assembly.Placement;
import org.standwright.export.Digits;
import org.standwright.export.SafeNames;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Solid;

/** The model part of a 3MF: resource 1 is the palette, then comes an object for each body, last the assembly. */
final class ThreeMfModel {
    private static final int PALETTE = 1;
    private static final int FIRST_BODY = 2;

    private final AssemblySolids assembly;
    private final List<Body> bodies;
    private final Palette palette;
    private final SafeNames names = SafeNames.ofAnyLetters();
    private final StringBuilder text = new StringBuilder();

    ThreeMfModel(AssemblySolids assembly) {
        this.assembly = assembly;
        bodies = Body.of(assembly);
        palette = Palette.of(assembly, SafeNames.ofAnyLetters());
    }

    String text() {
        text.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model unit=\"millimeter\" xml:lang=\"en\""
                + " xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n<metadata name=\"Title\">");
        text.append(escaped(SafeNames.printable(assembly.name())));
        text.append("</metadata>\n<metadata name=\"Application\">Standwright</metadata>\n<resources>\n");
        if (!bodies.isEmpty()) {
            palette();
            for (int i = 0; i < bodies.size(); i++) {
                body(FIRST_BODY + i, bodies.get(i));
            }
            assembly();
        }
        text.append("</resources>\n<build>\n");
        if (!bodies.isEmpty()) {
            reference("item", FIRST_BODY + bodies.size(), new Placement(Axis.X_PLUS, Axis.Y_PLUS, aside()));
        }
        return text.append("</build>\n</model>\n").toString();
    }

    private void palette() {
        text.append("<basematerials id=\"").append(PALETTE).append("\">\n");
        for (int i = 0; i < palette.size(); i++) {
            text.append("<base name=\"").append(escaped(palette.name(i)));
            text.append("\" displaycolor=\"")
                    .append(palette.colour(i).toString().toUpperCase(Locale.ROOT))
                    .append("\"/>\n");
        }
        text.append("</basematerials>\n");
    }

    private void body(int id, Body body) {
        object(id, body.name());
        text.append(" pid=\"").append(PALETTE);
        text.append("\" pindex=\"").append(palette.index(body.material())).append("\">\n<mesh>\n");
        vertices(body.solid());
        triangles(body.solid());
        text.append("</mesh>\n</object>\n");
    }

    private void object(int id, String name) {
        text.append("<object id=\"").append(id);
        text.append("\" type=\"model\" name=\"").append(escaped(names.of(name))).append('"');
    }

    private void vertices(Solid solid) {
        text.append("<vertices>\n");
        for (int i = 0; i < solid.vertexCount(); i++) {
            var vertex = solid.vertex(i);
            Digits.grid(vertex.x(), text.append("<vertex x=\""));
            Digits.grid(vertex.y(), text.append("\" y=\""));
            Digits.grid(vertex.z(), text.append("\" z=\"")).append("\"/>\n");
        }
        text.append("</vertices>\n");
    }

    private void triangles(Solid solid) {
        text.append("<triangles>\n");
        for (int t = 0; t < solid.triangleCount(); t++) {
            text.append("<triangle v1=\"").append(solid.corner(t, 0));
            text.append("\" v2=\"").append(solid.corner(t, 1));
            text.append("\" v3=\"").append(solid.corner(t, 2)).append("\"/>\n");
        }
        text.append("</triangles>\n");
    }

    private void assembly() {
        object(FIRST_BODY + bodies.size(), assembly.name());
        text.append(">\n<components>\n");
        for (int i = 0; i < bodies.size(); i++) {
            for (var part : bodies.get(i).parts()) {
                reference("component", FIRST_BODY + i, part.placement());
            }
        }
        text.append("</components>\n</object>\n");
    }

    /** A point is a row before the matrix, so the rows are where the object's axes point, then its origin. */
    private void reference(String kind, int object, Placement placement) {
        text.append('<').append(kind).append(" objectid=\"").append(object).append("\" transform=\"");
        Coordinates.append(placement.along().unit(), text);
        Coordinates.append(placement.across().unit(), text.append(' '));
        Coordinates.append(placement.through().unit(), text.append(' '));
        Coordinates.append(placement.origin(), text.append(' '));
        text.append("\"/>\n");
    }

    /** What brings all of it to coordinates of 0 and more, which printers like best. */
    private Vec3 aside() {
        var boxes = assembly.solids().stream().map(part -> part.inPlace().box());
        return Box3.around(boxes.toList()).min().times(-1);
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
