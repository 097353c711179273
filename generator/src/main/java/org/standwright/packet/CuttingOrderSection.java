package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.words.CuttingOrder;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.packet.words.SawWords;
import org.standwright.packet.words.SecondStage;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlacedPiece.Parting;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/** The list that goes to the saw: set-up by set-up, what waits for the second stage at the end. */
final class CuttingOrderSection implements Section {
    private static final List<String> CAUTIONS = List.of(
            "The saw's own manual and its guards come before this list. Pull the plug before the blade is changed or "
                    + "touched.",
            "Whole sheets take two people, or stands on the infeed and the outfeed side. Both halves of every cut are "
                    + "supported; nothing is trapped between blade and fence.",
            "Never rip freehand, and never crosscut against the fence with the mitre gauge too: the piece jams. Push "
                    + "stick for strips narrower than a hand.",
            "Measure the first piece of every set-up before the others are cut.");

    @Override
    public void print(Contents contents, Flow flow) {
        var jobs = jobs(contents);
        if (jobs.stream().allMatch(job -> job.order().all().isEmpty())) {
            return;
        }
        flow.freshPage();
        flow.heading("Cutting order");
        flow.paragraph("Take this list to the saw. A set-up is sawn through on every sheet before the fence moves. The "
                + "fence is set from the edge named, as the panel lies on its drawing, to the near side of the kerf. "
                + "Write each label on its piece as it falls free.");
        CAUTIONS.forEach(caution -> flow.item(Mark.BOX_ONLY, caution));
        for (var job : jobs) {
            print("Cutting order: " + job.material(), job.order().now(), contents, flow);
            shortCuts(job.plan(), contents, flow);
            blanks(job.plan(), contents, flow);
        }
        if (jobs.stream().anyMatch(job -> !job.order().later().isEmpty())) {
            flow.heading("Cutting order, second stage");
            flow.paragraph("Wait until the carcass is glued and its openings are measured. Then check each size here "
                    + "against the measured one: the panels that these cuts divide were left whole until now.");
            jobs.forEach(
                    job -> print("Second stage: " + job.material(), job.order().later(), contents, flow));
        }
    }

    private record Job(MaterialPlan plan, CuttingOrder order) {
        String material() {
            return plan.material().name();
        }
    }

    private static List<Job> jobs(Contents contents) {
        var waiting = SecondStage.of(contents.stand()).labels(contents.cutList());
        return contents.plan().materials().stream()
                .map(plan -> new Job(plan, CuttingOrder.of(plan, waiting)))
                .toList();
    }

    private static void print(String heading, List<NumberedSetUp> setUps, Contents contents, Flow flow) {
        if (!setUps.isEmpty()) {
            flow.heading(heading);
            runs(setUps).forEach(run -> table(run, contents, flow));
        }
    }

    private static void table(List<NumberedSetUp> run, Contents contents, Flow flow) {
        flow.lead(advice(run, contents));
        flow.table(SetUpTable.of(run, contents.units()));
    }

    /** Set-ups of one tool that follow each other. */
    private static List<List<NumberedSetUp>> runs(List<NumberedSetUp> setUps) {
        var runs = new ArrayList<List<NumberedSetUp>>();
        int from = 0;
        for (int to = 1; to <= setUps.size(); to++) {
            if (to == setUps.size() || tool(setUps.get(to)) != tool(setUps.get(from))) {
                runs.add(setUps.subList(from, to));
                from = to;
            }
        }
        return runs;
    }

    private static String advice(List<NumberedSetUp> run, Contents contents) {
        boolean crosscuts = run.stream().anyMatch(setUp -> setUp.setUp().direction() == Cut.Direction.CROSSCUT);
        var score = crosscuts ? " Score the line of each crosscut with a knife first." : "";
        if (tool(run.get(0)) == Cut.Tool.SAW) {
            return "Saw: good face up." + score;
        }
        var allowance = contents.plan()
                .saw()
                .breakDown()
                .map(saw -> " Its cuts leave " + contents.exact(saw.allowance()) + " that is recut at the saw.")
                .orElse("");
        return "Hand-held saw along a track or a straight edge: good face down." + score + allowance;
    }

    private static Cut.Tool tool(NumberedSetUp setUp) {
        return setUp.setUp().tool();
    }

    /** What is too short along the fence to be pushed safely. */
    private static void shortCuts(MaterialPlan plan, Contents contents, Flow flow) {
        var found = plan.shortCuts(contents.plan().saw());
        if (!found.isEmpty()) {
            var numbers = found.stream().map(cut -> cut.cut().number()).sorted().toList();
            var parts = found.stream()
                    .flatMap(cut -> cut.parts().stream())
                    .distinct()
                    .collect(Collectors.joining(", "));
            flow.paragraph(
                    "Caution, " + (numbers.size() == 1 ? "cut " : "cuts ") + SawWords.runs(numbers) + " (" + parts
                            + "): what is pushed lies along the fence for less than "
                            + contents.units().length(contents.plan().saw().smallestPiece())
                            + ", the least for this saw. Clamp it in a sled, or cut it by hand.");
        }
    }

    /** What leaves the sheet whole and becomes several pieces on the bench. */
    private static void blanks(MaterialPlan plan, Contents contents, Flow flow) {
        plan.sheets().stream()
                .flatMap(sheet -> sheet.pieces().stream())
                .filter(piece -> piece.parting() != Parting.NONE)
                .map(piece -> blank(piece, contents.units()))
                .distinct()
                .forEach(words -> flow.item(Mark.BOX_ONLY, words));
    }

    private static String blank(PlacedPiece blank, Units units) {
        var size = units.bareLength(SheetUnit.mm(blank.area().length())) + " × "
                + units.bareLength(SheetUnit.mm(blank.area().width()));
        return "Blank " + blank.label() + ", " + size + ": "
                + (blank.parting() == Parting.BEVEL
                        ? "one rip with the blade tilted away from the fence gives both strips; support both, trap "
                                + "nothing."
                        : "machine it whole, then part it into its pieces with the saw's sled or by hand.");
    }
}
