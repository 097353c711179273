package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.standwright.geom.Grid;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.words.CuttingOrder;
import org.standwright.packet.words.SecondStage;
import org.standwright.packet.words.SetUp;
import org.standwright.sheet.Cut;

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
        jobs.forEach(
                job -> print("Cutting order: " + job.material(), job.order().now(), contents, flow));
        if (jobs.stream().anyMatch(job -> !job.order().later().isEmpty())) {
            flow.heading("Cutting order, second stage");
            flow.paragraph("Wait until the carcass is glued and its openings are measured. Then check each size here "
                    + "against the measured one: the panels that these cuts divide were left whole until now.");
            jobs.forEach(
                    job -> print("Second stage: " + job.material(), job.order().later(), contents, flow));
        }
    }

    private record Job(String material, CuttingOrder order) {}

    private static List<Job> jobs(Contents contents) {
        var waiting = SecondStage.of(contents.stand()).labels(contents.cutList());
        var saw = contents.plan().saw();
        return contents.plan().materials().stream()
                .map(plan -> new Job(plan.material().name(), CuttingOrder.of(plan, saw, waiting)))
                .toList();
    }

    private static void print(String heading, List<SetUp> setUps, Contents contents, Flow flow) {
        if (!setUps.isEmpty()) {
            flow.heading(heading);
            runs(setUps).forEach(run -> table(run, contents, flow));
        }
    }

    private static void table(List<SetUp> run, Contents contents, Flow flow) {
        flow.lead(advice(run, contents));
        flow.table(SetUpTable.of(run, contents.units()));
        small(run, contents).ifPresent(flow::paragraph);
    }

    /** Set-ups of one tool that follow each other. */
    private static List<List<SetUp>> runs(List<SetUp> setUps) {
        var runs = new ArrayList<List<SetUp>>();
        int from = 0;
        for (int to = 1; to <= setUps.size(); to++) {
            if (to == setUps.size() || setUps.get(to).tool() != setUps.get(from).tool()) {
                runs.add(setUps.subList(from, to));
                from = to;
            }
        }
        return runs;
    }

    private static String advice(List<SetUp> run, Contents contents) {
        boolean crosscuts = run.stream().anyMatch(setUp -> setUp.direction() == Cut.Direction.CROSSCUT);
        var score = crosscuts ? " Score the line of each crosscut with a knife first." : "";
        if (run.get(0).tool() == Cut.Tool.SAW) {
            return "Saw: good face up." + score;
        }
        var allowance = contents.plan()
                .saw()
                .breakDown()
                .map(saw -> " Its cuts leave " + contents.exact(saw.allowance()) + " that is recut at the saw.")
                .orElse("");
        return "Hand-held saw along a track or a straight edge: good face down." + score + allowance;
    }

    /** What is too short along the fence to be pushed safely. */
    private static Optional<String> small(List<SetUp> run, Contents contents) {
        double least = contents.plan().saw().smallestPiece();
        var cuts = run.stream()
                .filter(setUp -> setUp.tool() == Cut.Tool.SAW)
                .flatMap(setUp -> setUp.cuts().stream())
                .filter(cut -> Grid.less(cut.alongFence(), least))
                .map(cut -> String.valueOf(cut.cut().number()))
                .distinct()
                .collect(Collectors.joining(", "));
        return cuts.isEmpty()
                ? Optional.empty()
                : Optional.of("Caution, cuts " + cuts + ": the panel lies along the fence for less than "
                        + contents.units().length(least) + ", the least that is pushed through this saw. Hold it in a "
                        + "sled with clamps, or cut these pieces by hand.");
    }
}
