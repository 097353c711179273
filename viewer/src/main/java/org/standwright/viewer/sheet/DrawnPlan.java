package org.standwright.viewer.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standwright.drawing.Point;
import org.standwright.make.SheetPaper;
import org.standwright.packet.words.SecondStage;
import org.standwright.sheet.MaterialPlan;
import org.standwright.unit.Units;
import org.standwright.viewer.work.Job;

/**
 * The sheets of a job drawn, with what lies on them and how they are sawn.
 *
 * @param papers every sheet, material by material
 * @param parts at their places
 * @param steps cuts of each material in their order
 */
record DrawnPlan(Job job, List<SheetPaper> papers, List<LaidPart> parts, Map<MaterialPlan, List<CutStep>> steps) {
    DrawnPlan {
        papers = List.copyOf(papers);
        parts = List.copyOf(parts);
        steps = Map.copyOf(steps);
    }

    /** Takes some tenths of a second. */
    static DrawnPlan of(Job job) {
        var papers = SheetPaper.of(job.furniture(), job.cutList(), job.plan());
        var waiting = SecondStage.of(job.furniture()).labels(job.cutList());
        var steps = new LinkedHashMap<MaterialPlan, List<CutStep>>();
        job.plan().materials().forEach(material -> steps.put(material, CutStep.of(material, waiting)));
        return new DrawnPlan(job, papers, LaidPart.of(job.cutList(), papers), steps);
    }

    Units units() {
        return job.furniture().design().unit();
    }

    List<CutStep> steps(SheetPaper paper) {
        return steps.get(paper.material());
    }

    /** Parts on one sheet. */
    List<LaidPart> on(int paper) {
        return parts.stream().filter(laid -> laid.paper() == paper).toList();
    }

    /** Where a part of this label lies, if it is cut from a sheet. */
    Optional<LaidPart> find(String part) {
        return parts.stream().filter(laid -> laid.part().equals(part)).findFirst();
    }

    /** What lies at a point of a sheet's paper, mm. */
    Optional<LaidPart> at(int paper, Point point) {
        var board = papers.get(paper).onBoard(point);
        return on(paper).stream().filter(laid -> laid.isAt(board)).findFirst();
    }

    /** Index of a material's sheet among all papers. */
    int paper(MaterialPlan material, int sheet) {
        for (int i = 0; i < papers.size(); i++) {
            if (papers.get(i).material() == material && papers.get(i).index() == sheet) {
                return i;
            }
        }
        throw new IllegalArgumentException(
                "'" + material.material().name() + "' has no sheet " + (sheet + 1) + " in this plan.");
    }
}
