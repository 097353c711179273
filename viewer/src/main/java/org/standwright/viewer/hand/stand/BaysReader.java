package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Layout;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.file.text.Pointer;
import org.standwright.viewer.hand.change.Tape;

/** Follows the file, the design in it and what was built of it side by side. */
record BaysReader(StandDesign design) {
    Bays bays(String pointer, ArrayNode written, List<Bay> bays, List<BayLayout> built) {
        var across = new ArrayList<Bays.One>();
        for (int i = 0; i < built.size(); i++) {
            int at = design.layout() == Layout.MIRRORED ? bays.size() - 1 - i : i;
            across.add(bay(Pointer.child(pointer, at), at, (ObjectNode) written.get(at), bays.get(at), built.get(i)));
        }
        return new Bays(pointer, written, across);
    }

    private Bays.One bay(String pointer, int at, ObjectNode written, Bay bay, BayLayout built) {
        var reading = new OneBay(pointer, (ArrayNode) written.get("contents"), bay, built);
        built.sections().forEach(reading::section);
        var column = new Column(reading.contents, reading.cells, new Tape(design.unit()));
        return new Bays.One(pointer, at, written, built, column, reading.fronts, reading.within);
    }

    /** One bay while it is read from top to bottom. */
    private final class OneBay {
        private final String pointer;
        private final ArrayNode contents;
        private final Bay bay;
        private final BayLayout built;
        private final List<Cell> cells = new ArrayList<>();
        private final List<Front> fronts = new ArrayList<>();
        private final List<Optional<Bays>> within = new ArrayList<>();
        private int content;

        OneBay(String pointer, ArrayNode contents, Bay bay, BayLayout built) {
            this.pointer = pointer;
            this.contents = contents;
            this.bay = bay;
            this.built = built;
        }

        void section(SectionLayout section) {
            if (section instanceof SectionLayout.Drawers drawers) {
                int first = 0;
                while (first < drawers.drawers().size()) {
                    int count = Drawers.count(
                            bay.contents(), content, drawers.drawers().size() - first);
                    drawers.drawers().subList(first, first + count).forEach(drawer -> {
                        var share = Drawers.share(bay.contents().get(content));
                        add(Front.of(drawer), share, Optional.empty());
                    });
                    first += count;
                    content++;
                }
            } else {
                var share = contents.get(content).has("height") ? Cell.Share.FIXED : Cell.Share.OPEN_ENDED;
                add(Front.of(section, built), share, within(section));
                content++;
            }
        }

        private void add(Front front, Cell.Share share, Optional<Bays> inside) {
            var json = (ObjectNode) contents.get(content);
            cells.add(new Cell(json, share, front.area().height()));
            fronts.add(front);
            within.add(inside);
        }

        private Optional<Bays> within(SectionLayout section) {
            return section instanceof SectionLayout.Divided divided
                            && bay.contents().get(content) instanceof Content.Divided parts
                    ? Optional.of(bays(
                            pointer + "/contents/" + content + "/bays",
                            (ArrayNode) contents.get(content).get("bays"),
                            parts.bays(),
                            divided.bays()))
                    : Optional.empty();
        }
    }
}
