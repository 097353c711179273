package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.design.built.Stand;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Tape;
import org.standwright.viewer.hand.change.Thing;

/** The front of a stand with what can be picked and dragged on it. */
public final class FrontModel {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final String text;
    private final Stand stand;
    private final Bays bays;

    private FrontModel(String text, Stand stand, Bays bays) {
        this.text = text;
        this.stand = stand;
        this.bays = bays;
    }

    /**
     * @param text of the design file
     * @param stand that was built from this text
     */
    public static FrontModel of(String text, Stand stand) {
        try {
            return new FrontModel(text, stand, Bays.of(stand, (ArrayNode)
                    MAPPER.readTree(text).get("bays")));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("a stand was built from this text, so it must be JSON.", e);
        }
    }

    public Stand stand() {
        return stand;
    }

    /** What can be dragged: all gaps and dividers of each bay from the top, and partitions. */
    public List<Handle> handles() {
        return bays.all().flatMap(this::handles).toList();
    }

    private Stream<Handle> handles(Bays here) {
        var tape = new Tape(stand.design().unit());
        var partitions = IntStream.range(0, here.across().size() - 1)
                .<Handle>mapToObj(left -> new Partition(text, here, left, tape));
        var gaps = here.across().stream()
                .flatMap(bay -> IntStream.range(0, bay.fronts().size() - 1)
                        .<Handle>mapToObj(upper -> new Gap(text, bay, upper)));
        return Stream.concat(partitions, gaps);
    }

    /** What can be picked: bays, and in each of them what it holds from the top. */
    public List<Thing> things() {
        var things = new ArrayList<Thing>();
        add(things, bays, Optional.empty());
        return things;
    }

    private void add(List<Thing> things, Bays here, Optional<String> around) {
        for (var bay : here.across()) {
            things.add(new Thing(
                    bay.pointer(),
                    bay.layout().name(),
                    bay.name() + ", opening " + words(bay.width()) + " wide",
                    "bay",
                    bay.layout().opening(),
                    around,
                    Optional.empty()));
            for (int cell = 0; cell < bay.fronts().size(); cell++) {
                var front = bay.fronts().get(cell);
                var key = key(bay, cell);
                things.add(new Thing(
                        key,
                        front.title(),
                        front.name() + ", " + front.says() + words(front.area().height()) + " high",
                        front.look(),
                        front.area(),
                        Optional.of(bay.pointer()),
                        front.label()));
                bay.within().get(cell).ifPresent(inside -> add(things, inside, Optional.of(key)));
            }
        }
    }

    static String key(Bays.One bay, int cell) {
        return bay.pointer() + "/cell/" + cell;
    }

    private String words(double mm) {
        return stand.design().unit().length(mm);
    }

    String text() {
        return text;
    }

    Bays bays() {
        return bays;
    }
}
