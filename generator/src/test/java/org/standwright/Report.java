package org.standwright;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.StreamSupport;
import org.standwright.design.StandDesign;
import org.standwright.make.Product;

/** A stand worked out again from its report alone, the way a maker would on paper; it knows nothing of the builder. */
final class Report {
    private final JsonNode json;

    private Report(JsonNode json) {
        this.json = json;
    }

    static Report of(StandDesign design) {
        var out = new ByteArrayOutputStream();
        try {
            Product.of(design).writeReport(out);
            return new Report(new JsonMapper().readTree(out.toByteArray()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double number(String pointer) {
        var node = json.at(pointer);
        if (!node.isNumber()) {
            throw new AssertionError("the report has no number at " + pointer);
        }
        return node.doubleValue();
    }

    List<JsonNode> list(String pointer) {
        return StreamSupport.stream(json.at(pointer).spliterator(), false).toList();
    }

    double thickness(String use) {
        return number("/design/sheets/" + use + "/thickness");
    }

    boolean isInset() {
        return json.at("/design/mount").asText().equals("inset");
    }

    /** Floor to the underside of the carcass. */
    double support() {
        double blocks = 2 * thickness("carcass");
        return switch (json.at("/design/support/kind").asText()) {
            case "casters" -> number("/design/support/caster/height") + blocks;
            case "levelers" -> number("/design/support/leveler/height/usual") + blocks;
            case "plinth" -> number("/design/support/pads") + number("/design/support/height");
            default -> number("/design/support/pads");
        };
    }

    /** Top of the carcass to the surface that has to come to the working height. */
    double overCarcass() {
        double worktop = number("/design/worktopLayers") * thickness("worktop");
        boolean machine = !json.at("/design/machine/reference/kind").asText().equals("worktop");
        return worktop + (machine ? number("/design/machine/feet") : 0) + number("/design/machine/reference/height");
    }

    double carcassHeight() {
        return number("/design/workingHeight/height") - support() - overCarcass();
    }

    /** What a bay without a width of its own gets: the plan less sides, partitions and given widths, shared evenly. */
    double sharedOpening() {
        var bays = list("/design/bays");
        double given =
                bays.stream().mapToDouble(bay -> bay.path("width").asDouble(0)).sum();
        long sharing = bays.stream().filter(bay -> !bay.has("width")).count();
        return (number("/design/plan/width") - (bays.size() + 1) * thickness("carcass") - given) / sharing;
    }

    /** The longest slide between the front's back or the carcass's edge, and the inside of the back. */
    double longestSlide() {
        double room = number("/design/plan/depth")
                - thickness("back")
                - (isInset() ? thickness("front") : 0)
                - number("/design/hang/slide/setBack")
                - number("/design/hang/slide/rearSpace");
        return list("/design/hang/slide/lengths").stream()
                .mapToDouble(size -> size.get("length").doubleValue())
                .filter(length -> length <= room + 1e-6)
                .max()
                .orElseThrow();
    }
}
