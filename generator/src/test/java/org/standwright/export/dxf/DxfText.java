package org.standwright.export.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A small reader of DXF text, written from the reference's group codes: pairs of lines, sections, entities. */
public final class DxfText {
    /** One group code and its value. */
    public record Pair(int code, String value) {}

    /** What lies between two codes 0. */
    public record Item(String type, List<Pair> pairs) {
        public Optional<String> text(int code) {
            return pairs.stream()
                    .filter(pair -> pair.code == code)
                    .map(Pair::value)
                    .findFirst();
        }

        public double number(int code) {
            return Double.parseDouble(text(code).orElseThrow());
        }

        public String layer() {
            return text(8).orElseThrow();
        }

        /** Corners of a polyline: x, y, bulge. */
        public List<double[]> vertices() {
            var found = new ArrayList<double[]>();
            for (var pair : pairs) {
                if (pair.code == 10) {
                    found.add(new double[] {Double.parseDouble(pair.value), 0, 0});
                } else if (pair.code == 20) {
                    found.get(found.size() - 1)[1] = Double.parseDouble(pair.value);
                } else if (pair.code == 42) {
                    found.get(found.size() - 1)[2] = Double.parseDouble(pair.value);
                }
            }
            return found;
        }
    }

    private final List<Pair> pairs = new ArrayList<>();

    public DxfText(String text) {
        var lines = text.split("\n", -1);
        for (int i = 0; i + 1 < lines.length; i += 2) {
            pairs.add(new Pair(Integer.parseInt(lines[i].strip()), lines[i + 1]));
        }
        var last = pairs.get(pairs.size() - 1);
        if (last.code != 0 || !last.value.equals("EOF")) {
            throw new IllegalArgumentException("does not end with EOF: " + last);
        }
    }

    /** All items of one section, its heading left out. */
    public List<Item> section(String name) {
        var items = new ArrayList<Item>();
        boolean inside = false;
        Item open = null;
        for (int i = 0; i < pairs.size(); i++) {
            var pair = pairs.get(i);
            if (pair.code == 2
                    && pair.value.equals(name)
                    && pairs.get(i - 1).value.equals("SECTION")) {
                inside = true;
            } else if (pair.code == 0 && pair.value.equals("ENDSEC")) {
                inside = false;
            } else if (inside && pair.code == 0) {
                open = new Item(pair.value, new ArrayList<>());
                items.add(open);
            } else if (inside && open != null) {
                open.pairs.add(pair);
            }
        }
        return items;
    }

    public List<Item> entities() {
        return section("ENTITIES");
    }

    /** Names of all layers but 0. */
    public List<String> layers() {
        return section("TABLES").stream()
                .filter(item -> item.type.equals("LAYER"))
                .map(item -> item.text(2).orElseThrow())
                .filter(name -> !name.equals("0"))
                .toList();
    }

    /** The value that follows a name in the header. */
    public String header(String name) {
        for (int i = 0; i < pairs.size(); i++) {
            if (pairs.get(i).code == 9 && pairs.get(i).value.equals(name)) {
                return pairs.get(i + 1).value;
            }
        }
        throw new IllegalArgumentException(name + " is not in the header");
    }

    /** Every handle of an object. */
    public List<String> handles() {
        return pairs.stream()
                .filter(pair -> pair.code == 5 || pair.code == 105)
                .map(Pair::value)
                .toList();
    }
}
