package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.PackingJob;

/** A job of one material, said in one line: {@code SheetJob.sheet(2440, 1220).kerf(3.2).pieces("A", 600, 400, 3)}. */
public record SheetJob(SheetGood sheet, Saw saw, List<CutLine> lines) {
    /** Narrow enough that tests see every rest that a hand can hold. */
    private static final Keep SLIVERS_TOO = new Keep(10, 10);

    /** A sheet without grain, sawn without kerf or trim. */
    public static SheetJob sheet(double length, double width) {
        var material = new Material("plain board", 18, 650, Grain.NONE);
        return new SheetJob(
                new SheetGood(material, length, width, Optional.empty(), Optional.empty()), new Saw(0, 0), List.of());
    }

    /** Plywood as a shop buys it: 60 pieces or so make a job of three to six sheets. */
    public static SheetJob random(long seed, int pieces) {
        var random = new SplittableRandom(seed);
        var job = sheet(2440, 1220).kerf(random.nextInt(1, 50) / 10.0).trim(random.nextInt(0, 21));
        job = random.nextInt(2) == 0 ? job.grain() : job;
        for (int left = pieces, line = 1; left > 0; line++) {
            int count = Math.min(left, random.nextInt(1, 6));
            double length = random.nextInt(600, 9000) / 10.0;
            double width = random.nextInt(600, 6000) / 10.0;
            job = job.pieces("P" + line, length, width, count);
            left -= count;
        }
        return job;
    }

    public SheetJob kerf(double kerf) {
        return new SheetJob(sheet, new Saw(kerf, saw.trim().left()), lines);
    }

    public SheetJob trim(double trim) {
        return new SheetJob(sheet, new Saw(saw.kerf(), trim), lines);
    }

    /** The same on veneered board. Say it before the pieces. */
    public SheetJob grain() {
        var veneered = new Material("veneered board", 18, 650, Grain.ALONG_LENGTH);
        return new SheetJob(
                new SheetGood(veneered, sheet.length(), sheet.width(), Optional.empty(), Optional.empty()), saw, lines);
    }

    public SheetJob pieces(String label, double length, double width, int count) {
        var more = new ArrayList<>(lines);
        more.add(line(sheet.material(), label, length, width, count));
        return new SheetJob(sheet, saw, more);
    }

    static CutLine line(Material material, String label, double length, double width, int count) {
        var part = Part.blank("part " + label, material, length, width);
        return new CutLine(label, part, Collections.nCopies(count, part.name()), List.of());
    }

    public Stock stock() {
        return new Stock(List.of(StockSheet.bought(sheet)), saw, SLIVERS_TOO);
    }

    public CutList cutList() {
        return new CutList(lines, List.of());
    }

    public MaterialPlan plan() {
        return plan(Effort.USUAL);
    }

    public MaterialPlan plan(Effort effort) {
        return SheetPlanner.plan(stock(), cutList(), effort).materials().get(0);
    }

    /** What the search sees of it. */
    public PackingJob packing() {
        return Work.of(stock(), lines, cutList().cutting()).job();
    }

    /** One sheet as a maker reads it, mm: {@code A@0,0 B@603,0 turned; offcut 100x50@0,400}. */
    static String text(PlannedSheet sheet) {
        var text = new ArrayList<String>();
        for (var piece : sheet.pieces()) {
            text.add(piece.label() + at(piece.area()) + (piece.turned() ? " turned" : ""));
        }
        for (var offcut : sheet.offcuts()) {
            text.add("offcut " + mm(offcut.length()) + "x" + mm(offcut.width()) + at(offcut));
        }
        return String.join("; ", text);
    }

    static String cuts(PlannedSheet sheet) {
        var text = new ArrayList<String>();
        for (var cut : sheet.cuts()) {
            boolean rip = cut.direction() == Cut.Direction.RIP;
            text.add(
                    (rip
                            ? "rip at y " + mm(cut.kerf().y())
                            : "crosscut at x " + mm(cut.kerf().x())));
        }
        return String.join("; ", text);
    }

    private static String at(Area area) {
        return "@" + mm(area.x()) + "," + mm(area.y());
    }

    private static String mm(int units) {
        double mm = SheetUnit.mm(units);
        return mm == Math.rint(mm) ? Integer.toString((int) mm) : Double.toString(mm);
    }
}
