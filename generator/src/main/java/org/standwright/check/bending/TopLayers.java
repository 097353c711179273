package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.geom.Axis;

/**
 * Sub-top and worktop as they bend from left to right. Two worktop layers are glued and bend as one; the worktop is only
 * screwed to the sub-top, so their stiffnesses add.
 */
record TopLayers(PlacedPart subTop, List<PlacedPart> worktop) {
    TopLayers {
        worktop = List.copyOf(worktop);
    }

    static TopLayers of(Stand stand) {
        var worktop = stand.assembly().groups().stream()
                .filter(group -> group.name().equals("worktop"))
                .flatMap(group -> group.parts().stream())
                .toList();
        return new TopLayers(Named.part(stand, "sub-top"), worktop);
    }

    /**
     * E I of a strip from left to right, N·mm².
     *
     * @param ofWorktop depth of the worktop in it, mm; 0 for none
     * @param ofSubTop depth of the sub-top in it, mm; 0 for none
     */
    double stiffness(double ofWorktop, double ofSubTop) {
        var loose = new ArrayList<Section>();
        if (ofWorktop > 0) {
            worktop.stream()
                    .map(layer -> GrainWay.section(layer, Axis.X_PLUS, ofWorktop))
                    .reduce(Section::glued)
                    .ifPresent(loose::add);
        }
        if (ofSubTop > 0) {
            loose.add(GrainWay.section(subTop, Axis.X_PLUS, ofSubTop));
        }
        return Section.loose(loose);
    }

    /** Its own weight, N per mm from left to right. */
    double weight(double ofWorktop, double ofSubTop) {
        return worktop.stream()
                        .mapToDouble(layer -> LayerWeight.of(layer.part().material()) * ofWorktop)
                        .sum()
                + LayerWeight.of(subTop.part().material()) * ofSubTop;
    }

    /** The greater creep of the two sheets. */
    Creep creep() {
        return new Creep(Stream.concat(Stream.of(subTop), worktop.stream())
                .mapToDouble(part -> GrainWay.creep(part).kdef())
                .max()
                .orElseThrow());
    }
}
