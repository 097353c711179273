package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.built.Furniture;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.words.CuttingOrder;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.packet.words.SecondStage;
import org.standwright.part.Material;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;

/** The list that goes to the saw: set-up by set-up, what waits for the second stage at the end. */
final class CuttingOrderSection implements Section<Furniture> {
    private static final List<String> CAUTIONS = List.of(
            "The saw's own manual and its guards come before this list. Pull the plug before the blade is changed or "
                    + "touched.",
            "Whole sheets take two people, or stands on the infeed and the outfeed side. Both halves of every cut are "
                    + "supported; nothing is trapped between blade and fence.",
            "Never rip freehand. Long narrow pieces are never pushed along the fence end-on, nor does the fence stop a "
                    + "piece on the mitre gauge: it jams. Crosscut them on the mitre gauge or a sled with a stop block "
                    + "clamped ahead of the blade: rows marked 'sled'. Push stick for strips narrower than a hand.",
            "Measure the first piece of every set-up before the others are cut.");

    @Override
    public void print(Contents<? extends Furniture> contents, Flow flow) {
        var jobs = jobs(contents);
        if (jobs.stream().allMatch(job -> job.order().all().isEmpty())) {
            return;
        }
        flow.freshPage();
        flow.heading("Cutting order");
        flow.paragraph("Take this list to the saw. A set-up is sawn through on every sheet before the fence moves. The "
                + "fence is set from the edge named, as the panel lies on its drawing, to the near side of the kerf. "
                + "Write each label on its piece as it falls free.");
        flow.paragraph("Pieces marked '(rest)' are what remains beyond the cut; no setting gives their size. Check it "
                + "with a tape before they are used.");
        CAUTIONS.forEach(caution -> flow.item(Mark.BOX_ONLY, caution));
        if (jobs.stream().anyMatch(Job::isHandSawn)) {
            CuttingAdvice.HAND_HELD.forEach(words -> flow.item(Mark.BOX_ONLY, words));
        }
        for (var job : jobs) {
            print("Cutting order: ", job.plan(), job.order().now(), contents, flow);
        }
        if (jobs.stream().anyMatch(job -> !job.order().later().isEmpty())) {
            flow.heading("Cutting order, second stage");
            flow.paragraph("Wait until the carcass is glued and its openings are measured. Then check each size here "
                    + "against the measured one: the panels that these cuts divide were left whole until now.");
            jobs.forEach(job -> print("Second stage: ", job.plan(), job.order().later(), contents, flow));
        }
    }

    private record Job(MaterialPlan plan, CuttingOrder order) {
        boolean isHandSawn() {
            return order.all().stream().anyMatch(setUp -> tool(setUp) == Cut.Tool.BREAK_DOWN_SAW);
        }
    }

    private static List<Job> jobs(Contents<?> contents) {
        var waiting = SecondStage.of(contents.furniture()).labels(contents.cutList());
        return contents.plan().materials().stream()
                .map(plan -> new Job(plan, CuttingOrder.of(plan, waiting)))
                .toList();
    }

    private static void print(
            String stage, MaterialPlan plan, List<NumberedSetUp> setUps, Contents<?> contents, Flow flow) {
        if (!setUps.isEmpty()) {
            flow.heading(stage + plan.material().name());
            new StageWarnings(plan, setUps).print(contents, flow);
            runs(setUps).forEach(run -> table(plan.material(), run, contents, flow));
            new BevelSteps(contents).print(setUps, flow);
        }
    }

    private static void table(Material material, List<NumberedSetUp> run, Contents<?> contents, Flow flow) {
        flow.lead(CuttingAdvice.of(material, run, contents));
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

    private static Cut.Tool tool(NumberedSetUp setUp) {
        return setUp.setUp().tool();
    }
}
