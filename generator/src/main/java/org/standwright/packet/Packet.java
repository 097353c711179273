package org.standwright.packet;

import java.util.List;
import java.util.Optional;
import org.standwright.advice.Advice;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Furniture;
import org.standwright.design.built.Stand;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Paper;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.wall.WallLabels;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.PageFrame;
import org.standwright.packet.wall.WallPages;
import org.standwright.packet.wall.WallPaper;
import org.standwright.sheet.SheetPlan;

/** Everything that goes into the shop on paper: A4 where the maker measures in millimetres, Letter in inches. */
public final class Packet {
    private static final List<Section<? super Stand>> STAND = List.of(
            new HeightSection(),
            new ViewSection(),
            new MachineSection(),
            new DrawerSection(),
            new DoorSection(),
            new ShelfSection(),
            new CutListSection(),
            new BarSection(),
            new HardwareSection(),
            new SheetSection(),
            new CuttingOrderSection(),
            new SavingSection(),
            new AssemblySection(),
            new CheckSection(),
            new CautionSection());

    private Packet() {}

    /**
     * The pages of walls of cleats in order, each with its number.
     *
     * @param labels what strips and holders may carry
     */
    public static List<Drawing> pages(
            CleatWall wall,
            CutList cutList,
            SheetPlan plan,
            List<Finding> findings,
            List<MassLine> masses,
            WallLabels labels) {
        var contents = new Contents<>(wall, cutList, plan, findings, Optional.empty(), masses);
        return pages(sections(new WallPaper(wall, cutList, labels, findings)), contents, "wall");
    }

    private static List<Section<? super CleatWall>> sections(WallPaper paper) {
        return List.of(
                (contents, flow) -> WallPages.drawings(paper, flow),
                new CutListSection(),
                new HardwareSection(),
                new SheetSection(),
                new CuttingOrderSection(),
                (contents, flow) -> WallPages.work(paper, flow),
                new CheckSection(),
                new CautionSection());
    }

    /** A stand's pages in order, each with its number. */
    public static List<Drawing> pages(
            Stand stand,
            CutList cutList,
            SheetPlan plan,
            List<Finding> findings,
            Optional<Advice> savings,
            List<MassLine> masses) {
        return pages(STAND, new Contents<>(stand, cutList, plan, findings, savings, masses), "machine");
    }

    private static <F extends Furniture> List<Drawing> pages(
            List<Section<? super F>> sections, Contents<F> contents, String measured) {
        var flow = new Flow(Paper.of(contents.units()), TextMeasure.shipped());
        sections.forEach(section -> section.print(contents, flow));
        return flow.pages(contents.design().name(), new PageFrame.Foot(contents.units(), measured));
    }
}
