package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.HoldWord;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.built.Backing;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;

/** From the empty wall to what hangs on it. Common practice, no source. */
final class StepsPage implements WallPages.Page {
    @Override
    public void print(WallPaper paper, Flow flow) {
        flow.freshPage();
        flow.heading("Order of work");
        var steps = new ArrayList<String>();
        steps.addAll(before(paper));
        steps.addAll(strips(paper));
        if (!paper.walls().holders().isEmpty()) {
            steps.addAll(holders(paper));
        }
        steps.add("Tighten the screws again after the first weeks, and after the first heating season.");
        for (int i = 0; i < steps.size(); i++) {
            flow.item(Mark.step(i + 1), steps.get(i));
        }
    }

    private static List<String> before(WallPaper paper) {
        return List.of(
                framings(paper).map(StepsPage::finding).collect(Collectors.joining(" "))
                        + " Measure the obstacles again " + "too.",
                "Locate cables and pipes before driving anything, with a detector and from every outlet, switch and "
                        + "tap upwards, downwards and sideways; switch the circuit off. Nothing is driven where one "
                        + "may lie. Boxes, panels and wiring are not moved or covered: that is for licensed practice "
                        + "and local codes, which come before anything printed here.",
                "Strike the level line round the room "
                        + paper.units().length(paper.design().levelLine())
                        + " above the highest point of the floor, with a laser or a water level; its ends must meet.",
                "Make the story stick and transfer every row to every "
                        + framings(paper).map(HoldWord::one).collect(Collectors.joining(" and every ")) + ".");
    }

    private static List<String> strips(WallPaper paper) {
        var steps = new ArrayList<String>();
        steps.add(
                "Rip the bevels, take off the tips, then bore and sink the screw holes of all strips on the bench, at "
                        + "the places of the strip tables.");
        framings(paper).forEach(framing -> {
            steps.add(hanging(framing, paper));
            steps.add(driving(framing, paper));
        });
        if (Corners.areReached(paper.walls())) {
            steps.add(
                    "In the corners that they reach, the strips of the left wall run through; those of the right wall "
                            + "stop short of them, so that hangers pass.");
        }
        steps.add(
                "Check: before anything hangs on it, pull each strip firmly, downwards and away from the wall. Nothing "
                        + "may move; a strip that does comes down again.");
        return steps;
    }

    /** Each kind of wall once, in order. */
    private static Stream<HoldWord> framings(WallPaper paper) {
        return paper.walls().walls().stream()
                .map(wall -> HoldWord.of(wall.wall().framing()))
                .distinct();
    }

    private static String finding(HoldWord hold) {
        return hold == HoldWord.ANCHOR
                ? "Sound the masonry and mark where it takes an anchor, at the places of the drawings; where it does not, "
                        + "change the design before anything is cut."
                : "Find the " + hold.many() + " and mark both edges and the centre of each, low and high; a thin nail "
                        + "where a strip will cover the hole tells more than a finder. Where they lie otherwise than "
                        + "drawn, change the design before anything is cut.";
    }

    private static String hanging(HoldWord hold, WallPaper paper) {
        var on = framings(paper).count() > 1 ? " on " + hold.many() : "";
        var up = "Put up the strips" + on
                + " from the lowest row, or from the one you reach best, each with its bevel at "
                + "the top and falling towards the wall: two people or two nails under it, high edge on the mark, ";
        return hold == HoldWord.ANCHOR
                ? up + "level. Mark the masonry through every bore and take the strip down again. " + drilling(paper)
                : up + "level it, one screw at the middle " + hold.one() + ", level it again.";
    }

    private static String drilling(WallPaper paper) {
        return paper.walls().walls().stream()
                .map(wall -> wall.wall().framing())
                .filter(Framing.Masonry.class::isInstance)
                .map(Framing.Masonry.class::cast)
                .map(masonry -> "Drill " + paper.exact(masonry.drill()) + " holes for " + masonry.anchor()
                        + ", blow out the dust, and set each anchor as its maker says.")
                .distinct()
                .collect(Collectors.joining(" "));
    }

    private static String driving(HoldWord hold, WallPaper paper) {
        var fixing = paper.design().fixing();
        var bites = switch (hold) {
            case STUD -> "a screw that does not bite in wood is pulled out";
            case STEEL_STUD -> "a screw that spins in the steel is pulled out";
            case ANCHOR -> "an anchor that turns or slips is given up";
        };
        return "Drive " + fixing.screwName() + ", "
                + paper.units().length(paper.walls().screwing().length())
                + fixing.washer().stream()
                        .mapToObj(washer -> ", with washer " + paper.units().length(washer))
                        .collect(Collectors.joining())
                + ", " + (fixing.perStud() == 1 ? "one" : "two") + " at every listed " + hold.one()
                + ", none beside it: " + bites + " and the place written down, and the strip carries less.";
    }

    private static List<String> holders(WallPaper paper) {
        var steps = new ArrayList<String>();
        steps.add("Holders: cut, try dry, glue, and screw through faces, never into edges alone.");
        steps.add("Screw each hanger to its back at the listed places: its short face on the back, its bevel "
                + "below, the tip to the wall. Hang it on a scrap of strip and see that it draws tight.");
        if (paper.walls().holders().stream().anyMatch(hung -> hung.backing().by() == Backing.By.SPACER)) {
            steps.add("Glue the spacers flush with the lower edges of the backs; screw those that are bored for it.");
        }
        steps.add("Hang the holders, heavy ones first and lowest, and see that each lifts off by "
                + paper.exact(paper.design().cleat().headroom()) + " without touching anything.");
        if (paper.design().holders().stream().anyMatch(Holder::lock)) {
            steps.add("Drive the lock screws of the holders that have them.");
        }
        return steps;
    }
}
