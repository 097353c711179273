package org.standwright.packet;

import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.given;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.Designs;
import org.standwright.design.Stand;
import org.standwright.design.StandDesign;
import org.standwright.design.StandDesign.Mount;
import org.standwright.design.Support;
import org.standwright.design.stand.StandBuilder;
import org.standwright.drawing.Drawing;
import org.standwright.part.SheetGood;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/** Stands with all that a packet prints, for tests. */
final class Jobs {
    static final List<Finding> FINDINGS = List.of(
            new Finding(
                    Severity.CAUTION,
                    "drawer-width",
                    "drawer 1.2",
                    "The drawer is 374 mm wide and its slide 500 mm long: 0.75 times, within the usual 1.5 times.",
                    "common practice, no source"),
            new Finding(Severity.STOP, "tipping", "stand", "It tips when pushed at 150 N.", "EN 14749"));

    private Jobs() {}

    static StandDesign metric() {
        return Designs.planerStand();
    }

    static StandDesign inches() {
        var design = Designs.stand(
                36 * 25.4,
                Designs.LEVELERS,
                Mount.INSET,
                List.of(bay(300, equal(5)), bay(fill(80)), bay(given(90), equal(1))));
        return with(design, Units.INCH, "36 in stand");
    }

    static StandDesign plinth() {
        return Designs.stand(700, new Support.Plinth(90, 75, 5), Mount.OVERLAY, List.of(bay(equal(1))));
    }

    static StandDesign with(StandDesign design, Units units, String name) {
        return new StandDesign(
                name,
                units,
                design.machine(),
                design.workingHeight(),
                design.plan(),
                design.support(),
                design.carcass(),
                design.worktop(),
                design.bays(),
                design.drawers(),
                design.screws(),
                design.saw());
    }

    static List<Drawing> packet(StandDesign design) {
        Stand stand = StandBuilder.build(design);
        var list = CutList.of(stand.assembly(), design.unit());
        var masses = List.of(new MassLine("machine", 38), new MassLine("boards", 61.25));
        return Packet.pages(stand, list, plan(design, list), FINDINGS, masses);
    }

    static SheetPlan plan(StandDesign design, CutList list) {
        return new SheetPlan(
                design.saw(),
                design.sheets().stream()
                        .map(sheet -> shelves(sheet, list, design))
                        .filter(material -> !material.sheets().isEmpty())
                        .toList());
    }

    /** Pieces in shelves, longest first: enough to draw, no more. */
    private static MaterialPlan shelves(SheetGood sheet, CutList list, StandDesign design) {
        int kerf = SheetUnit.up(design.saw().kerf());
        int trim = SheetUnit.up(design.saw().trim());
        int length = SheetUnit.down(sheet.length()) - trim - kerf - 1;
        int width = SheetUnit.down(sheet.width()) - trim - kerf - 1;
        var lines = list.lines().stream()
                .filter(line -> line.material().equals(sheet.material()))
                .sorted(Comparator.comparingDouble(
                        (CutLine line) -> -line.part().cutWidth()))
                .flatMap(line -> Stream.generate(() -> line).limit(line.count()))
                .toList();
        var sheets = new ArrayList<PlannedSheet>();
        var pieces = new ArrayList<PlacedPiece>();
        var cuts = new ArrayList<Cut>();
        var offcuts = new ArrayList<Area>();
        int x = trim;
        int y = trim;
        int shelf = 0;
        for (var line : lines) {
            int l = SheetUnit.up(line.part().cutLength());
            int w = SheetUnit.up(line.part().cutWidth());
            if (x + l > length) {
                offcuts.add(new Area(x, y, length + kerf + 1 - x, shelf));
                x = trim;
                y += shelf + kerf;
                shelf = 0;
            }
            if (y + w > width) {
                sheets.add(new PlannedSheet(pieces, cuts, offcuts));
                pieces.clear();
                cuts.clear();
                offcuts.clear();
                x = trim;
                y = trim;
                shelf = 0;
            }
            if (shelf == 0) {
                shelf = w;
                cuts.add(new Cut(cuts.size() + 1, Cut.Direction.RIP, new Area(trim, y + w, length - trim, kerf)));
            }
            pieces.add(new PlacedPiece(line.label(), new Area(x, y, l, w), false));
            cuts.add(new Cut(cuts.size() + 1, Cut.Direction.CROSSCUT, new Area(x + l, y, kerf, shelf)));
            x += l + kerf;
        }
        if (!pieces.isEmpty()) {
            offcuts.add(new Area(x, y, length + kerf + 1 - x, shelf));
            offcuts.add(new Area(trim, y + shelf + kerf, length - trim, width + 1 - y - shelf));
            sheets.add(new PlannedSheet(pieces, cuts, offcuts));
        }
        return new MaterialPlan(sheet, sheets, Math.max(1, sheets.size() - 1));
    }
}
