package org.standwright.sheet.job;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.sheet.job.PieceType.Ways;

/**
 * One two-dimensional bin packing instance, in the text format of the 500 instances of Berkey, Wang (1987) and Martello,
 * Vigo (1998): class, number of items, relative and absolute number, height and width of the bin, then of each item;
 * leading integers of each line count, words do not.
 */
public record BinInstance(int kind, int number, int height, int width, List<Item> items) {
    /** One rectangle to pack. */
    public record Item(int height, int width) {}

    /** Every instance of every file that ends in {@code .2bp}, in the order of the files' names. */
    public static List<BinInstance> inFolder(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            var all = new ArrayList<BinInstance>();
            for (var file : files.filter(one -> one.toString().endsWith(".2bp"))
                    .sorted()
                    .toList()) {
                all.addAll(read(Files.readString(file, StandardCharsets.UTF_8)));
            }
            return all;
        }
    }

    /** The instances that the build packs; see the README beside them. */
    public static List<BinInstance> small() {
        try {
            return inFolder(Path.of(BinInstance.class.getResource("/2dbpp").toURI()));
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("no instances to read", e);
        }
    }

    public static List<BinInstance> read(String text) {
        int[] numbers = text.lines().flatMapToInt(BinInstance::leading).toArray();
        var all = new ArrayList<BinInstance>();
        for (int at = 0; at < numbers.length; ) {
            var items = new ArrayList<Item>();
            int count = numbers[at + 1];
            for (int i = 0; i < count; i++) {
                items.add(new Item(numbers[at + 6 + 2 * i], numbers[at + 7 + 2 * i]));
            }
            all.add(new BinInstance(numbers[at], numbers[at + 2], numbers[at + 4], numbers[at + 5], items));
            at += 6 + 2 * count;
        }
        return all;
    }

    private static IntStream leading(String line) {
        return Stream.of(line.strip().split("\\s+"))
                .takeWhile(word -> word.matches("\\d+"))
                .mapToInt(Integer::parseInt);
    }

    /** Class, number of items and number among those, as '3 n 40 no 7'. */
    public String name() {
        return String.format(Locale.ROOT, "%d n %d no %d", kind, items.size(), number);
    }

    /**
     * @param turning whether items may be turned
     * @param kerf width of every cut, in the instance's units times {@code scale}
     * @param scale by which all sizes are multiplied, so that a kerf may be a part of a unit
     */
    public PackingJob job(boolean turning, int kerf, int scale) {
        var counts = new TreeMap<Long, Integer>();
        for (var item : items) {
            int height = turning ? Math.max(item.height(), item.width()) : item.height();
            int across = item.height() + item.width() - height;
            counts.merge(((long) height << 32) + across, 1, Integer::sum);
        }
        var types = new ArrayList<PieceType>();
        counts.forEach((size, count) -> types.add(new PieceType(
                (int) (size >> 32) * scale + kerf,
                size.intValue() * scale + kerf,
                count,
                turning ? Ways.EITHER : Ways.STRAIGHT,
                false)));
        var bin = new BoardKind(height * scale + kerf, width * scale + kerf, BoardKind.UNLIMITED, 1, true);
        return new PackingJob(types, List.of(bin), CutRules.free(kerf));
    }
}
