package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Cutout;
import org.standwright.design.Edges;
import org.standwright.design.Hung;
import org.standwright.design.Place;
import org.standwright.design.PlateOpening;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.frame.PlanSize;

/**
 * A design with left and right changed over: bays, doors' hinges, margins, overhang, covered edges, cut-outs and the
 * plate. The machine itself is not mirrored, only its place.
 */
final class Mirrored {
    private static final Pattern BAY = Pattern.compile("bays/(\\d+)|contents/(\\d+)");

    private final StandDesign design;

    Mirrored(StandDesign design) {
        this.design = design;
    }

    StandDesign design() {
        return Redesign.of(design)
                .place(place())
                .worktop(worktop())
                .cutouts(design.cutouts().stream().map(this::cutout).toList())
                .bays(bays(design.bays()))
                .edges(edges())
                .done();
    }

    /** The JSON pointer of a field, as written, for one of the mirrored design. */
    String written(String pointer) {
        var bays = new ArrayList<List<Bay>>(List.of(design.bays()));
        var bay = new ArrayList<Bay>();
        return BAY.matcher(pointer).replaceAll(match -> written(match, bays, bay));
    }

    private static String written(MatchResult match, List<List<Bay>> bays, List<Bay> bay) {
        if (match.group(1) == null) {
            var content = bay.get(bay.size() - 1).contents().get(Integer.parseInt(match.group(2)));
            if (content instanceof Content.Divided divided) {
                bays.add(divided.bays());
            }
            return match.group();
        }
        var level = bays.get(bays.size() - 1);
        int index = level.size() - 1 - Integer.parseInt(match.group(1));
        bay.add(level.get(index));
        return "bays/" + index;
    }

    private Place place() {
        var margins = design.place().margins();
        return new Place(
                design.place().turn(),
                new Place.Margins(margins.front(), margins.back(), margins.right(), margins.left()),
                design.place().shims());
    }

    private Worktop worktop() {
        var worktop = design.worktop();
        var over = worktop.overhang();
        double width = PlanSize.of(design).width();
        return new Worktop(
                worktop.sheet(),
                worktop.layers(),
                new Worktop.Overhang(over.front(), over.back(), over.right(), over.left()),
                worktop.plate()
                        .map(plate -> new PlateOpening(
                                plate.name(),
                                over.left() + width + over.right() - plate.x(),
                                plate.y(),
                                plate.width(),
                                plate.depth(),
                                plate.thickness(),
                                plate.radius(),
                                plate.fit(),
                                plate.ledge())));
    }

    private Cutout cutout(Cutout cutout) {
        double x = PlanSize.of(design).width() - cutout.x();
        if (cutout instanceof Cutout.Round round) {
            return new Cutout.Round(round.use(), round.in(), x, round.y(), round.diameter());
        }
        var size = (Cutout.Rectangular) cutout;
        return new Cutout.Rectangular(size.use(), size.in(), x, size.y(), size.width(), size.height(), size.radius());
    }

    private static List<Bay> bays(List<Bay> bays) {
        var mirrored = new ArrayList<Bay>();
        for (var bay : bays) {
            mirrored.add(new Bay(
                    bay.width(), bay.contents().stream().map(Mirrored::content).toList()));
        }
        Collections.reverse(mirrored);
        return mirrored;
    }

    private static Content content(Content content) {
        if (content instanceof Content.Divided divided) {
            return new Content.Divided(divided.height(), bays(divided.bays()));
        }
        return content instanceof Content.Door door
                ? new Content.Door(door.height(), door.hinge(), hung(door.hung()), door.shelves())
                : content;
    }

    private static Hung hung(Hung hung) {
        return switch (hung) {
            case LEFT -> Hung.RIGHT;
            case RIGHT -> Hung.LEFT;
            case PAIR -> Hung.PAIR;
        };
    }

    private Edges edges() {
        var worktop = design.edges().worktop();
        return new Edges(
                design.edges().carcass(),
                design.edges().fronts(),
                new Edges.TopEdges(worktop.front(), worktop.back(), worktop.right(), worktop.left()));
    }
}
