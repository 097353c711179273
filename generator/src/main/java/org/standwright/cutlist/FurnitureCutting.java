package org.standwright.cutlist;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.KeptTogether;
import org.standwright.design.built.Furniture;
import org.standwright.design.built.PartsTogether;
import org.standwright.part.Run;

/** What the design of a piece of furniture asks of the cutting, part by part, told of its cut lines. */
final class FurnitureCutting {
    private final Furniture furniture;
    private final List<CutLine> lines;

    FurnitureCutting(Furniture furniture, List<CutLine> lines) {
        this.furniture = furniture;
        this.lines = lines;
    }

    Cutting asked() {
        var later = furniture.later();
        var housed = HousedParts.of(furniture.assembly().parts());
        var anyGrain = furniture.design().cutting().anyGrain();
        return new Cutting(
                labels(line -> later.containsAll(line.members())),
                labels(line -> anyGrain.contains(line.part().name())),
                labels(line -> line.members().stream().anyMatch(housed::contains)),
                furniture.together().stream().map(this::together).toList());
    }

    private Set<String> labels(Predicate<CutLine> which) {
        return lines.stream().filter(which).map(CutLine::label).collect(Collectors.toUnmodifiableSet());
    }

    private Together together(PartsTogether parts) {
        double over = parts.as() instanceof KeptTogether.OneBlank blank ? blank.over() : 0;
        return new Together(
                kind(parts.as()),
                parts.parts().stream().map(this::label).toList(),
                parts.run() == Run.ALONG ? Together.Along.LENGTH : Together.Along.WIDTH,
                over);
    }

    private static Together.Kind kind(KeptTogether as) {
        if (as instanceof KeptTogether.OneStrip) {
            return Together.Kind.ONE_STRIP;
        }
        return as instanceof KeptTogether.OneSheet ? Together.Kind.ONE_SHEET : Together.Kind.ONE_BLANK;
    }

    private String label(PlacedPart part) {
        return lines.stream()
                .filter(line -> line.members().contains(part.label()))
                .findFirst()
                .orElseThrow()
                .label();
    }
}
