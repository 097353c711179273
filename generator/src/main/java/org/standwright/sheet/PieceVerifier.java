package org.standwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.part.Bevel;
import org.standwright.part.Grain;
import org.standwright.sheet.PlacedPiece.Parting;

/** Judges the pieces by themselves: as often as the cut list says, at their size, with their grain, on a fit board. */
final class PieceVerifier {
    private final Stock stock;
    private final CutList cutList;
    private final int kerf;
    private final Map<String, CutLine> lines = new LinkedHashMap<>();
    private final Map<String, Integer> left = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();

    private PieceVerifier(Stock stock, CutList cutList) {
        this.stock = stock;
        this.cutList = cutList;
        this.kerf = SheetUnit.up(stock.saw().kerf());
        for (var line : cutList.sheetLines()) {
            lines.put(line.label(), line);
            left.merge(line.label(), line.count(), Integer::sum);
        }
    }

    static List<String> faults(Stock stock, CutList cutList, SheetPlan plan) {
        var verifier = new PieceVerifier(stock, cutList);
        for (var material : plan.materials()) {
            for (var sheet : material.sheets()) {
                sheet.pieces().forEach(piece -> verifier.check(piece, sheet, material));
            }
        }
        verifier.left.forEach((label, count) -> {
            if (count != 0) {
                verifier.faults.add(
                        "Line '" + label + "' has " + Math.abs(count) + (count > 0 ? " missing." : " too many."));
            }
        });
        return verifier.faults;
    }

    private void check(PlacedPiece piece, PlannedSheet sheet, MaterialPlan material) {
        for (var part : piece.parts()) {
            left.merge(part.label(), -1, Integer::sum);
            checkPart(part, sheet, material);
            if (!piece.area().holds(part.area())) {
                faults.add("Piece '" + part.label() + "' at " + part.area() + " is not inside its blank.");
            }
        }
        if (piece.parting() == Parting.LATER) {
            checkApart(piece);
        } else if (piece.parting() == Parting.BEVEL) {
            checkBevel(piece);
        }
    }

    private void checkPart(PlacedPiece piece, PlannedSheet sheet, MaterialPlan plan) {
        var line = lines.get(piece.label());
        var material = plan.material();
        if (line == null
                || !line.material().equals(material)
                || !sheet.from().material().equals(material)) {
            faults.add("Piece '" + piece.label() + "' does not belong on a sheet of '" + material.name() + "'.");
            return;
        }
        int length = SheetUnit.up(line.part().roughLength());
        int width = SheetUnit.up(line.part().roughWidth());
        int along = piece.turned() ? width : length;
        int across = piece.turned() ? length : width;
        if (piece.area().length() != along || piece.area().width() != across) {
            faults.add("Piece '" + piece.label() + "' at " + piece.area() + " is not " + along + " x " + across + ".");
        }
        boolean free =
                material.grain() == Grain.NONE || cutList.cutting().free().contains(piece.label());
        if (piece.turned() && !free && length != width) {
            faults.add("Piece '" + piece.label() + "' lies across the grain.");
        }
        var board = sheet.from();
        if (!stock.mates(board)) {
            faults.add("Piece '" + piece.label() + "' needs a board of "
                    + String.format(
                            Locale.ROOT, "%.2f to %.2f", board.thinnest(stock.fit()), board.thickest(stock.fit()))
                    + " mm, but its board '" + board.name() + "' is " + board.thickness() + " mm thick.");
        }
    }

    private void checkApart(PlacedPiece blank) {
        var holds = blank.holds();
        for (int i = 0; i < holds.size(); i++) {
            for (int j = 0; j < i; j++) {
                var a = holds.get(i).area();
                var b = holds.get(j).area();
                if (a.endX() + kerf > b.x()
                        && b.endX() + kerf > a.x()
                        && a.endY() + kerf > b.y()
                        && b.endY() + kerf > a.y()) {
                    faults.add("Pieces '" + holds.get(j).label() + "' and '"
                            + holds.get(i).label() + "' of blank '" + blank.label() + "' leave no kerf.");
                }
            }
        }
    }

    /** Long faces of two strips, less the rise of the cut between them, and the kerf at its tilt. */
    private void checkBevel(PlacedPiece blank) {
        var first = lines.get(blank.holds().get(0).label());
        double tilt = first == null
                ? 0
                : first.part().features().stream()
                        .filter(Bevel.class::isInstance)
                        .mapToDouble(bevel -> ((Bevel) bevel).tilt())
                        .max()
                        .orElse(0);
        double slant = StrictMath.toRadians(tilt);
        int strips = blank.holds().stream()
                .mapToInt(part -> across(blank, part.area()))
                .sum();
        double rise = first == null ? 0 : first.part().thickness() * StrictMath.tan(slant);
        double tips = blank.holds().stream()
                .mapToDouble(strip -> tip(strip.label(), slant))
                .sum();
        int least = SheetUnit.up(SheetUnit.mm(strips) + tips - rise + SheetUnit.mm(kerf) / StrictMath.cos(slant));
        if (blank.holds().size() != 2 || across(blank, blank.area()) < least) {
            faults.add("Blank '" + blank.label() + "' at " + blank.area() + " is too narrow for two strips of " + strips
                    + " units together, cut at " + tilt + "°.");
        }
    }

    /** What comes off a strip's tip after the rip, mm. */
    private double tip(String label, double slant) {
        var line = lines.get(label);
        return line == null
                ? 0
                : line.part().features().stream()
                                .filter(Bevel.class::isInstance)
                                .mapToDouble(bevel -> line.part().thickness() - ((Bevel) bevel).depth())
                                .max()
                                .orElse(0)
                        * StrictMath.tan(slant);
    }

    private static int across(PlacedPiece blank, Area area) {
        return blank.turned() ? area.length() : area.width();
    }
}
