package org.standwright.export;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.standwright.advice.Advice;
import org.standwright.check.Finding;
import org.standwright.check.rules.RulesOf;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.HardwareLine;
import org.standwright.design.built.Furniture;
import org.standwright.packet.words.BarsToBuy;
import org.standwright.packet.words.SecondStage;
import org.standwright.router.RouterPlan;
import org.standwright.sheet.SheetPlan;
import org.standwright.solid.AssemblySolids;

/**
 * Everything about one piece of furniture as data, enough to work it out again from this file alone. JSON in UTF-8; lengths are exact
 * doubles in mm, masses kg, densities kg/m³, in the frames of the packages part, assembly and sheet. {@code design} is as
 * written, all the rest as built. {@code routerPlan}, for a design with a router: a piece's origin is where its part's
 * origin lies on the board, its quarter turns count to the left after it was turned over about its x axis. Mass, centre of mass and inertia (kg·mm², about that centre) are those of the boards.
 *
 * <p>{@code weights}: everything that weighs, {@code what} it is, its {@code kind}, the {@code group} it moves with, its
 * {@code mass} and its {@code centre} with everything closed; of a wall, each holder with its wood and its things in kg and
 * the place of their centre, {@code out} in front of the wall and {@code along} it, and {@code stripLimits} and
 * {@code holderLimits}: the most that may hang there in kg, and what gives first beyond it. {@code rules}: every
 * rule with {@code name}, {@code question}, {@code formula}, {@code assumptions} and {@code source}, the formula and the assumptions empty where nothing is worked
 * out. {@code findings}: the heaviest first, {@code fine} ones included. One that was measured has its {@code quantity}, its
 * {@code figure}, the {@code limit} ({@code side}, and {@code caution} and {@code stop} as far as there are such) and the
 * {@code ratio} of the first limit that is used, 1 at the limit, missing where it is beyond all numbers; {@code inputs} are
 * the numbers put into the formula, each with its own quantity. A {@code cure} was built and checked; its {@code figure} is
 * the one after it. {@code waived} is why its maker accepts it. Figures are in mm (length, sag), kg (mass), N (force), N/mm²
 * (stress), N/mm (line-load), N·mm (moment), N·mm² (stiffness), kg/m³ (density), degrees (angle), or plain numbers (ratio,
 * count).
 */
public final class ReportJsonWriter {
    private static final int VERSION = 1;

    private ReportJsonWriter() {}

    public static void write(
            Furniture furniture,
            CutList cutList,
            SheetPlan plan,
            Optional<RouterPlan> routed,
            List<Finding> findings,
            Optional<Advice> savings,
            AssemblySolids solids,
            OutputStream out)
            throws IOException {
        var lines = new DefaultIndenter("  ", "\n");
        var printer = new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        var report = report(furniture, cutList, plan, routed, findings, savings, solids);
        out.write(JsonShapes.JSON.writer(printer).writeValueAsBytes(report));
        out.write("\n".getBytes(StandardCharsets.UTF_8));
    }

    private static ObjectNode report(
            Furniture furniture,
            CutList cutList,
            SheetPlan plan,
            Optional<RouterPlan> routed,
            List<Finding> findings,
            Optional<Advice> savings,
            AssemblySolids solids) {
        var parts = new ReportParts(furniture.assembly(), solids);
        var report = JsonShapes.object()
                .put("version", VERSION)
                .put("kind", "report")
                .put("unit", "mm")
                .put("units", "mm, kg, N, N/mm², N/mm, N·mm, N·mm², kg/m³, degrees")
                .put("name", furniture.design().name());
        report.setAll(furniture.accept(new ReportShape()));
        report.set("materials", JsonShapes.list(furniture.design().sheets(), ReportSheets::good));
        report.set("groups", parts.groups());
        report.set("parts", parts.parts());
        var wood = solids.massProperties();
        report.put("mass", wood.mass());
        report.set("centreOfMass", JsonShapes.point(wood.centre()));
        report.set("inertia", JsonShapes.plain(wood.inertia()));
        report.set("cutList", JsonShapes.list(cutList.lines(), ReportJsonWriter::line));
        report.set("bars", JsonShapes.list(BarsToBuy.of(furniture.design(), cutList), ReportBars::bars));
        report.set("edgings", JsonShapes.list(cutList.edgings(), ReportBars::edging));
        report.set("hardware", JsonShapes.list(cutList.hardware(), ReportJsonWriter::hardware));
        report.set(
                "sheetPlan", ReportSheets.plan(plan, SecondStage.of(furniture).labels(cutList)));
        routed.ifPresent(sheets -> report.set("routerPlan", ReportRouter.plan(sheets)));
        report.setAll(furniture.accept(new ReportWeighed(solids, savings)));
        report.set("rules", JsonShapes.list(RulesOf.of(furniture), ReportChecks::rule));
        report.set("findings", JsonShapes.list(findings, ReportChecks::finding));
        return report;
    }

    private static ObjectNode line(CutLine line) {
        var node = JsonShapes.object()
                .put("label", line.label())
                .put("count", line.count())
                .put("part", line.part().name())
                .put("material", line.material().name())
                .put("stock", line.material().isBar() ? "bar" : "sheet");
        ReportParts.sizes(line.part(), node);
        node.set("members", JsonShapes.words(line.members()));
        node.set("notes", JsonShapes.words(line.notes()));
        return node;
    }

    private static ObjectNode hardware(HardwareLine line) {
        var node = JsonShapes.object().put("count", line.count()).put("item", line.item());
        node.set("uses", JsonShapes.words(line.uses()));
        return node;
    }
}
