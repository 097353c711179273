package org.standwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Cuts that are made one after the other without touching the fence, from whatever boards.
 *
 * @param setting from the reference edge to the near side of the kerf, units
 */
public record SetUp(Cut.Tool tool, Cut.Direction direction, int setting, List<Made> cuts) {
    /**
     * One cut.
     *
     * @param sheet index of its board in the material's plan
     * @param panel what it divides
     * @param frees what it leaves at its size
     * @param offcuts that it leaves
     */
    public record Made(int sheet, Cut cut, Area panel, List<PlacedPiece> frees, List<Area> offcuts) {
        public Made {
            frees = List.copyOf(frees);
            offcuts = List.copyOf(offcuts);
        }
    }

    public SetUp {
        cuts = List.copyOf(cuts);
    }

    static List<SetUp> of(List<PlannedSheet> sheets) {
        var all = new ArrayList<Made>();
        for (int i = 0; i < sheets.size(); i++) {
            var sheet = sheets.get(i);
            int index = i;
            CutReplay.of(sheet).sawn().stream()
                    .map(sawn -> made(index, sheet, sawn))
                    .forEach(all::add);
        }
        all.sort(Comparator.comparingInt(made -> made.cut().number()));
        var setUps = new ArrayList<SetUp>();
        for (int from = 0, to; from < all.size(); from = to) {
            var first = all.get(from).cut();
            to = from + 1;
            while (to < all.size() && sameSetting(first, all.get(to).cut())) {
                to++;
            }
            setUps.add(new SetUp(first.tool(), first.direction(), first.setting(), all.subList(from, to)));
        }
        return setUps;
    }

    private static boolean sameSetting(Cut a, Cut b) {
        return a.tool() == b.tool() && a.direction() == b.direction() && a.setting() == b.setting();
    }

    private static Made made(int index, PlannedSheet sheet, CutReplay.Sawn sawn) {
        var halves = sawn.halves().stream().map(Panel::area).toList();
        return new Made(
                index,
                sawn.cut(),
                sawn.panel().area(),
                sheet.pieces().stream()
                        .filter(piece -> halves.contains(piece.area()))
                        .toList(),
                sheet.offcuts().stream().filter(halves::contains).toList());
    }
}
