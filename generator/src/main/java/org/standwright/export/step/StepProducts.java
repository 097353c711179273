package org.standwright.export.step;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Placement;
import org.standwright.geom.Vec3;
import org.standwright.part.Colour;
import org.standwright.solid.exact.ExactSolid;

/** Products, their shapes, and which is in which where, by the schema of AP214. */
final class StepProducts {
    /** A product's definition, and the representation of its shape. */
    record Product(int definition, int shape) {}

    private final StepText text;
    private final int application;
    private final int productContext;
    private final int definitionContext;
    private final int units;
    private final int zero;
    private final StepColours colours;
    private int occurrences;

    StepProducts(StepText text) {
        this.text = text;
        application = text.add("APPLICATION_CONTEXT('core data for automotive mechanical design processes')");
        text.add("APPLICATION_PROTOCOL_DEFINITION('international standard','automotive_design',2000,#" + application
                + ")");
        productContext = text.add("PRODUCT_CONTEXT('',#" + application + ",'mechanical')");
        definitionContext = text.add("PRODUCT_DEFINITION_CONTEXT('part definition',#" + application + ",'design')");
        units = StepUnits.millimetres(text);
        zero = text.frame(Vec3.ZERO, new Vec3(0, 0, 1), new Vec3(1, 0, 0));
        colours = new StepColours(text, units);
    }

    /** A part of one piece of wood, or of as many as it falls into. */
    Product part(String name, ExactSolid solid, Colour colour) {
        var solids = StepSolid.write(text, solid, name);
        solids.forEach(one -> colours.paint(one, colour));
        var items = new ArrayList<>(List.of(zero));
        items.addAll(solids);
        return product(name, "ADVANCED_BREP_SHAPE_REPRESENTATION", items);
    }

    /** What things are put together in. Their places have to be known before it. */
    Product assembly(String name, List<Integer> places) {
        var items = new ArrayList<>(List.of(zero));
        items.addAll(places);
        return product(name, "SHAPE_REPRESENTATION", items);
    }

    private Product product(String name, String kind, List<Integer> items) {
        var called = StepString.of(name);
        int product = text.add("PRODUCT(" + called + "," + called + ",'',(#" + productContext + "))");
        text.add("PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,(#" + product + "))");
        int formation = text.add("PRODUCT_DEFINITION_FORMATION('','',#" + product + ")");
        int definition = text.add("PRODUCT_DEFINITION('design','',#" + formation + ",#" + definitionContext + ")");
        int whole = text.add("PRODUCT_DEFINITION_SHAPE('','',#" + definition + ")");
        int shape = text.add(kind + "(" + called + "," + StepText.list(items) + ",#" + units + ")");
        text.add("SHAPE_DEFINITION_REPRESENTATION(#" + whole + ",#" + shape + ")");
        return new Product(definition, shape);
    }

    /** The frame of a part where it stands in its assembly. */
    int place(Placement placement) {
        return text.frame(
                placement.origin(),
                placement.through().unit(),
                placement.along().unit());
    }

    /** One occurrence of a part in an assembly. */
    void occurs(Product part, Product assembly, int place, String label) {
        occurrences++;
        var called = StepString.of(label);
        int occurrence = text.add("NEXT_ASSEMBLY_USAGE_OCCURRENCE('" + occurrences + "'," + called + "," + called + ",#"
                + assembly.definition() + ",#" + part.definition() + ",$)");
        int shape = text.add("PRODUCT_DEFINITION_SHAPE(" + called + ",$,#" + occurrence + ")");
        int turned = text.add("ITEM_DEFINED_TRANSFORMATION('','',#" + zero + ",#" + place + ")");
        int relation = text.add("(REPRESENTATION_RELATIONSHIP('','',#" + part.shape() + ",#" + assembly.shape()
                + ")REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION(#" + turned
                + ")SHAPE_REPRESENTATION_RELATIONSHIP())");
        text.add("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(#" + relation + ",#" + shape + ")");
    }

    /** What has to come after all parts. */
    void finish() {
        colours.finish();
    }
}
