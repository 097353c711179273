package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.Trim;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.sheet.Stock;

/**
 * A job of one material in a shop that has anything: boards of several sizes and thicknesses, offcuts, a saw with limits,
 * a hand-held one, pieces that are kept together, wait, or sit in dados.
 */
public record RandomShop(Stock stock, CutList cutList) {

    public static RandomShop of(long seed) {
        return new Maker(seed).shop();
    }

    private static final class Maker {
        private final SplittableRandom random;
        private final Material material;
        private final List<CutLine> lines = new ArrayList<>();
        private final List<Together> together = new ArrayList<>();

        Maker(long seed) {
            this.random = new SplittableRandom(seed);
            this.material = new Material("board", 18, 650, random.nextBoolean() ? Grain.NONE : Grain.ALONG_LENGTH);
        }

        RandomShop shop() {
            var stock = new Stock(boards(), saw(), new Keep(mm(50, 400), mm(30, 150)), random.nextInt(4) / 10.0);
            int groups = random.nextInt(4);
            for (int i = 0; i < groups; i++) {
                group();
            }
            int others = random.nextInt(1, 9);
            for (int i = 0; i < others; i++) {
                line(mm(60, 900), mm(50, 600), random.nextInt(1, 4));
            }
            var cutting = new Cutting(some(4), some(3), some(5), together);
            return new RandomShop(stock, new CutList(lines, List.of(), cutting));
        }

        private List<StockSheet> boards() {
            var boards = new ArrayList<StockSheet>();
            boards.add(board("full", mm(1200, 2500), mm(900, 1300), 18, OptionalInt.empty(), true));
            if (once(3)) {
                boards.add(board("square", mm(1500, 1600), mm(1400, 1600), 18, limit(), true));
            }
            int offcuts = random.nextInt(3);
            for (int i = 0; i < offcuts; i++) {
                double thickness = once(2) ? 18 : random.nextInt(170, 190) / 10.0;
                boards.add(board("offcut " + i, mm(300, 1400), mm(200, 900), thickness, OptionalInt.of(1), false));
            }
            return boards;
        }

        private StockSheet board(
                String name, double length, double width, double thickness, OptionalInt count, boolean bought) {
            return new StockSheet(
                    name,
                    material,
                    length,
                    width,
                    thickness,
                    count,
                    Optional.empty(),
                    bought ? StockSheet.Source.BOUGHT : StockSheet.Source.AT_HAND);
        }

        private OptionalInt limit() {
            return once(2) ? OptionalInt.of(random.nextInt(1, 4)) : OptionalInt.empty();
        }

        private Saw saw() {
            int stages = random.nextInt(1, 4);
            boolean hand = !once(4);
            return new Saw(
                    once(5) ? 0 : random.nextInt(10, 50) / 10.0,
                    once(2) ? Trim.all(mm(0, 10)) : new Trim(mm(0, 15), mm(0, 15), mm(0, 15), mm(0, 15)),
                    stages > 1 ? OptionalInt.of(stages) : OptionalInt.empty(),
                    Saw.First.values()[random.nextInt(3)],
                    once(2) ? OptionalDouble.of(mm(500, 2000)) : OptionalDouble.empty(),
                    once(2) ? OptionalDouble.of(mm(300, 1100)) : OptionalDouble.empty(),
                    once(3) ? mm(50, 300) : 0,
                    hand ? Optional.of(new BreakDown(random.nextInt(5, 50) / 10.0, mm(0, 8))) : Optional.empty());
        }

        /** Pieces of their own, or more of one line than are kept together; once or twice. */
        private void group() {
            var kind = Kind.values()[random.nextInt(3)];
            var along = Along.values()[random.nextInt(2)];
            int size = random.nextInt(2, 5);
            int times = once(3) ? 2 : 1;
            double common = mm(80, 600);
            var labels = new ArrayList<String>();
            while (labels.size() < size) {
                boolean free = kind == Kind.ONE_SHEET;
                double length = along == Along.WIDTH && !free ? common : mm(60, 500);
                double width = along == Along.LENGTH && !free ? common : mm(50, 400);
                int alike = random.nextInt(1, size - labels.size() + 1);
                var line = line(length, width, times * alike + (once(3) ? random.nextInt(3) : 0));
                labels.addAll(Collections.nCopies(alike, line.label()));
            }
            double over = kind == Kind.ONE_BLANK ? mm(0, 6) : 0;
            together.addAll(Collections.nCopies(times, new Together(kind, labels, along, over)));
        }

        private CutLine line(double length, double width, int count) {
            var label = "L" + (lines.size() + 1);
            var line = new CutLine(
                    label,
                    Part.blank("part " + label, material, length, width),
                    Collections.nCopies(count, "part " + label),
                    List.of());
            lines.add(line);
            return line;
        }

        private Set<String> some(int times) {
            var some = new TreeSet<String>();
            lines.stream().filter(line -> once(times)).forEach(line -> some.add(line.label()));
            return some;
        }

        private boolean once(int times) {
            return random.nextInt(times) == 0;
        }

        private double mm(int from, int to) {
            return random.nextInt(2 * from, 2 * to + 1) / 2.0;
        }
    }
}
