package org.standwright.export.step;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import org.standwright.export.step.StepProducts.Product;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;
import org.standwright.solid.exact.ExactSolids;

/**
 * STEP files in millimetres, z up: one part in its own frame, or an assembly of all parts where they belong. No clock:
 * the header says the same whenever it is written.
 */
public final class StepWriter {
    /** Parts that are one product: of one mesh, name and material. */
    private record Kind(Solid solid, String name, Material material) {
        static Kind of(PlacedSolid placed) {
            return new Kind(placed.solid(), placed.part().part().name(), placed.material());
        }
    }

    private StepWriter() {}

    /** One part in its own frame. */
    public static void write(String name, Part part, Solid solid, OutputStream out) throws IOException {
        var text = new StepText();
        var products = new StepProducts(text);
        products.part(name, ExactSolids.of(part, solid), part.material().colour());
        products.finish();
        write(name, text, out);
    }

    /** All parts where they belong; equal ones once, with a place for each. */
    public static void write(AssemblySolids assembly, OutputStream out) throws IOException {
        var text = new StepText();
        var products = new StepProducts(text);
        var parts = new LinkedHashMap<Kind, Product>();
        var places = new ArrayList<Integer>();
        for (var placed : assembly.solids()) {
            parts.computeIfAbsent(Kind.of(placed), kind -> part(placed, products));
            places.add(products.place(placed.part().placement()));
        }
        var whole = products.assembly(assembly.name(), places);
        for (int i = 0; i < places.size(); i++) {
            var placed = assembly.solids().get(i);
            products.occurs(parts.get(Kind.of(placed)), whole, places.get(i), placed.label());
        }
        products.finish();
        write(assembly.name(), text, out);
    }

    private static Product part(PlacedSolid placed, StepProducts products) {
        var part = placed.part().part();
        return products.part(part.name(), ExactSolids.of(part, placed.solid()), placed.colour());
    }

    private static void write(String name, StepText text, OutputStream out) throws IOException {
        var called = StepString.of(name);
        var head = "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((" + called + "),'2;1');\nFILE_NAME(" + called
                + ",'2000-01-01T00:00:00',(''),(''),'Standwright','Standwright','');\n"
                + "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));\nENDSEC;\nDATA;\n";
        out.write((head + text + "ENDSEC;\nEND-ISO-10303-21;\n").getBytes(StandardCharsets.US_ASCII));
    }
}
