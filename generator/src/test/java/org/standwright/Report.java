package org.standwright;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.standwright.design.StandDesign;
import org.standwright.make.Product;

/** A stand's report and what is true of the whole stand, read from the decisions in it; it knows nothing of the builder. */
record Report(Entry entry) {
    static Report of(StandDesign design) {
        return of(Product.of(design));
    }

    static Report of(Product product) {
        var out = new ByteArrayOutputStream();
        try {
            product.writeReport(out);
            return new Report(new Entry(new JsonMapper().readTree(out.toByteArray())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double number(String pointer) {
        return entry.number(pointer);
    }

    List<Entry> list(String pointer) {
        return entry.list(pointer);
    }

    /** Of the sheet for this use. */
    double thickness(String use) {
        return number("/design/sheets/" + use + "/thickness");
    }

    double panel() {
        return thickness("carcass");
    }

    double gap() {
        return number("/design/gap");
    }

    boolean isInset() {
        return entry.text("/design/mount").equals("inset");
    }

    boolean isMirrored() {
        return entry.text("/design/layout").equals("mirrored");
    }

    boolean hasMachineOnTop() {
        return !entry.text("/design/machine/reference/kind").equals("worktop");
    }

    /** The step of the tape that the maker reads, mm: 1 mm or 1/16 in. */
    double tape() {
        return entry.text("/design/unit").equals("mm") ? 1 : 25.4 / 16;
    }

    double tapeUp(double mm) {
        return Math.ceil(mm / tape() - 1e-9) * tape();
    }

    double tapeDown(double mm) {
        return Math.floor(mm / tape() + 1e-9) * tape();
    }

    /** Written bays, from left to right, in the order in which they are built. */
    List<Entry> asBuilt(List<Entry> bays) {
        var order = new ArrayList<>(bays);
        if (isMirrored()) {
            Collections.reverse(order);
        }
        return order;
    }

    /** The side of a written figure at this side of the stand. */
    String written(String side) {
        return !isMirrored() ? side : side.equals("left") ? "right" : side.equals("right") ? "left" : side;
    }

    /** How far the worktop reaches over the carcass at this side of the stand, mm. */
    double overhang(String side) {
        return number("/design/overhang/" + written(side));
    }

    /** Width and depth of the machine's base as it is turned. */
    double base(boolean width) {
        boolean across = number("/design/place/turn") % 180 != 0;
        return number("/design/machine/base/" + (width != across ? "width" : "depth"));
    }

    /** Outside of the carcass: as given, or base and margins less overhang. */
    double plan(boolean width) {
        var sides = width ? List.of("left", "right") : List.of("front", "back");
        double follows = base(width);
        for (var side : sides) {
            follows += entry.number("/design/place/margins/" + side, 0) - number("/design/overhang/" + side);
        }
        return entry.number("/design/plan/" + (width ? "width" : "depth"), follows);
    }
}
