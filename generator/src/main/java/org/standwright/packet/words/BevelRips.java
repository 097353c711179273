package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.part.Bevel;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlacedPiece.Parting;
import org.standwright.sheet.SheetUnit;

/**
 * The rips with a tilted blade that follow when all blanks of some set-ups have fallen free, one for each setting.
 *
 * <p>The blade leans away from the fence, so the face on the table is the short one of the strip at the fence. From the
 * fence to the near side of the kerf at the table is that short face, L - t tan(tilt), of a blank that gives two strips
 * and of a single strip alike (own derivation from references 7.5).
 */
public final class BevelRips {
    private BevelRips() {}

    /**
     * One setting of fence and blade.
     *
     * @param tilt of the blade from square, degrees
     * @param fence from the fence to the near side of the kerf at the table, mm
     * @param finished width of a strip once its tip is off, mm
     * @param tip taken off the sharp tips, mm; 0 for none
     * @param pairs blanks that it rips into two strips
     * @param wholes blanks of several pieces that it bevels before they are crosscut
     * @param singles pieces that it bevels, in order of their labels' first use
     */
    public record Rip(
            double tilt,
            double fence,
            double finished,
            double tip,
            List<PlacedPiece> pairs,
            List<PlacedPiece> wholes,
            List<PlacedPiece> singles) {
        public Rip {
            pairs = List.copyOf(pairs);
            wholes = List.copyOf(wholes);
            singles = List.copyOf(singles);
        }

        /** Widths of the blanks of two strips, from the first, mm. */
        public List<Double> widths() {
            return pairs.stream().map(BevelRips::width).distinct().toList();
        }
    }

    /** What decides a setting, in steps of a thousandth of a millimetre or degree. */
    private record Setting(long tilt, long fence, long finished) {}

    /** In order of first use. */
    public static List<Rip> of(List<NumberedSetUp> setUps, CutList cutList) {
        var lines = cutList.lines().stream().collect(Collectors.toMap(CutLine::label, line -> line));
        var rips = new LinkedHashMap<Setting, List<PlacedPiece>>();
        setUps.stream()
                .flatMap(setUp -> setUp.setUp().cuts().stream())
                .flatMap(made -> made.frees().stream())
                .forEach(piece -> strip(piece, lines)
                        .ifPresent(strip -> rips.computeIfAbsent(strip.setting(), first -> new ArrayList<>())
                                .add(piece)));
        return rips.values().stream()
                .map(pieces -> rip(strip(pieces.get(0), lines).orElseThrow(), pieces))
                .toList();
    }

    private static Rip rip(Strip strip, List<PlacedPiece> pieces) {
        return new Rip(
                strip.bevel().tilt(),
                strip.fence(),
                strip.width(),
                strip.tip(),
                parted(Parting.BEVEL, pieces),
                parted(Parting.LATER, pieces),
                parted(Parting.NONE, pieces));
    }

    private static List<PlacedPiece> parted(Parting parting, List<PlacedPiece> pieces) {
        return pieces.stream().filter(piece -> piece.parting() == parting).toList();
    }

    /** 'A + A (3), D' : labels of pieces, each once, with how many there are. */
    public static String labels(List<PlacedPiece> pieces) {
        var counts = new LinkedHashMap<String, Integer>();
        pieces.forEach(piece -> counts.merge(piece.label(), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> entry.getKey() + (entry.getValue() > 1 ? " (" + entry.getValue() + " of them)" : ""))
                .collect(Collectors.joining(", "));
    }

    /** Of a piece across its own length, mm. */
    private static double width(PlacedPiece piece) {
        return SheetUnit.mm(
                piece.turned() ? piece.area().length() : piece.area().width());
    }

    /** The section that all pieces of a blank share. */
    private record Strip(Bevel bevel, double width, double thickness) {
        double tip() {
            return bevel.blunted(thickness).orElse(0);
        }

        double fence() {
            return width - bevel.setback();
        }

        Setting setting() {
            return new Setting(Math.round(bevel.tilt() * 1000), Math.round(fence() * 1000), Math.round(width * 1000));
        }
    }

    /** Nothing for what has no bevel along it, or pieces with different ones. */
    private static Optional<Strip> strip(PlacedPiece piece, Map<String, CutLine> lines) {
        var strips = piece.parts().stream()
                .map(part -> Optional.ofNullable(lines.get(part.label())).flatMap(BevelRips::strip))
                .toList();
        var first = strips.get(0);
        boolean alike = strips.stream()
                .allMatch(strip -> strip.isPresent()
                        && strip.get().setting().equals(first.orElseThrow().setting()));
        return alike ? first : Optional.empty();
    }

    private static Optional<Strip> strip(CutLine line) {
        var part = line.part();
        var bevels = part.features().stream()
                .filter(Bevel.class::isInstance)
                .map(Bevel.class::cast)
                .filter(bevel -> !bevel.edge().isEnd())
                .toList();
        boolean isStrip =
                bevels.size() == 1 && bevels.get(0).blunted(part.thickness()).isPresent();
        return isStrip ? Optional.of(new Strip(bevels.get(0), part.roughWidth(), part.thickness())) : Optional.empty();
    }
}
