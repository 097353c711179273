package org.standwright.export.step;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.export.step.StepProducts.Product;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;
import org.standwright.solid.exact.ExactSolid;
import org.standwright.solid.exact.ExactSolids;

/**
 * STEP files in millimetres, z up: one part in its own frame, or an assembly of all parts where they belong. No clock:
 * the header says the same whenever it is written, and names the parts that keep flat facets for a round face.
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
        var exact = ExactSolids.of(part, solid);
        products.part(name, exact, part.material().colour());
        products.finish();
        write(name, faceted(part, exact).toList(), text, out);
    }

    /** All parts where they belong; equal ones once, with a place for each. */
    public static void write(AssemblySolids assembly, OutputStream out) throws IOException {
        var text = new StepText();
        var products = new StepProducts(text);
        var parts = new LinkedHashMap<Kind, Product>();
        var places = new ArrayList<Integer>();
        var notes = new ArrayList<String>();
        for (var placed : assembly.solids()) {
            parts.computeIfAbsent(Kind.of(placed), kind -> part(placed, products, notes));
            places.add(products.place(placed.part().placement()));
        }
        var whole = products.assembly(assembly.name(), places);
        for (int i = 0; i < places.size(); i++) {
            var placed = assembly.solids().get(i);
            products.occurs(parts.get(Kind.of(placed)), whole, places.get(i), placed.label());
        }
        products.finish();
        write(assembly.name(), notes, text, out);
    }

    private static Product part(PlacedSolid placed, StepProducts products, List<String> notes) {
        var part = placed.part().part();
        var exact = ExactSolids.of(part, placed.solid());
        faceted(part, exact).forEach(notes::add);
        return products.part(part.name(), exact, placed.colour());
    }

    /** 'side: 24 flat facets in place of round faces'; nothing for a part that is exact. */
    private static Stream<String> faceted(Part part, ExactSolid exact) {
        return exact.isExact()
                ? Stream.empty()
                : Stream.of(part.name() + ": " + exact.facets() + " flat facets in place of round faces");
    }

    private static void write(String name, List<String> notes, StepText text, OutputStream out) throws IOException {
        var called = StepString.of(name);
        var description = Stream.concat(Stream.of(name), notes.stream())
                .map(StepString::of)
                .collect(Collectors.joining(","));
        var head = "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((" + description + "),'2;1');\nFILE_NAME(" + called
                + ",'2000-01-01T00:00:00',(''),(''),'Standwright','Standwright','');\n"
                + "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));\nENDSEC;\nDATA;\n";
        out.write((head + text + "ENDSEC;\nEND-ISO-10303-21;\n").getBytes(StandardCharsets.US_ASCII));
    }
}
