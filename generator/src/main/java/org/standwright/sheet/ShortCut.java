package org.standwright.sheet;

import java.util.List;

/**
 * A cut of the saw whose panel is shorter along the fence than is safe to push.
 *
 * @param sheet index of its board in the material's plan
 * @param along length of the panel along the fence, units
 * @param parts labels of the pieces that the panel holds, each once
 */
public record ShortCut(int sheet, Cut cut, int along, List<String> parts) {
    public ShortCut {
        parts = List.copyOf(parts);
    }

    static List<ShortCut> of(List<PlannedSheet> sheets, int smallest) {
        return SetUp.of(sheets).stream()
                .filter(setUp -> setUp.tool() == Cut.Tool.SAW)
                .flatMap(setUp -> setUp.cuts().stream())
                .filter(made -> made.cut().along() < smallest)
                .map(made -> of(sheets.get(made.sheet()), made))
                .toList();
    }

    private static ShortCut of(PlannedSheet sheet, SetUp.Made made) {
        var parts = sheet.pieces().stream()
                .filter(piece -> made.panel().holds(piece.area()))
                .map(PlacedPiece::label)
                .distinct()
                .toList();
        return new ShortCut(made.sheet(), made.cut(), made.cut().along(), parts);
    }
}
