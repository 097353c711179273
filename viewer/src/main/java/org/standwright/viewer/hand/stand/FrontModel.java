package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.design.built.Stand;
import org.standwright.viewer.hand.change.Deed;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Picture;
import org.standwright.viewer.hand.change.Subject;
import org.standwright.viewer.hand.change.Tape;
import org.standwright.viewer.hand.change.Thing;

/** The front of a stand with what can be picked and dragged on it. */
public final class FrontModel implements Subject<FrontAction> {
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
                    words(bay.width()),
                    bay.name() + ", opening " + words(bay.width()) + " wide",
                    "bay",
                    bay.layout().opening(),
                    around,
                    Optional.empty(),
                    List.of()));
            for (int cell = 0; cell < bay.fronts().size(); cell++) {
                var front = bay.fronts().get(cell);
                var key = key(bay, cell);
                things.add(new Thing(
                        key,
                        front.title(),
                        words(front.area().height()),
                        front.name() + ", " + front.says() + words(front.area().height()) + " high",
                        front.look(),
                        front.area(),
                        Optional.of(bay.pointer()),
                        front.label(),
                        front.groups()));
                bay.within().get(cell).ifPresent(inside -> add(things, inside, Optional.of(key)));
            }
        }
    }

    @Override
    public Picture picture() {
        var seen = new FrontPicture(stand);
        return new Picture(
                "Front of " + stand.design().name(), seen.bounds(), seen.under(), things(), seen.over(), handles());
    }

    /** Up and down the gap below a front, of the lowest the one above; to both sides the partition on the right. */
    @Override
    public Optional<Handle> handle(String key, Handle.Way way, boolean edge) {
        return located(key).flatMap(picked -> {
            var bay = picked.here();
            int last = way == Handle.Way.LEFT_AND_RIGHT
                    ? picked.bays().across().size() - 2
                    : bay.fronts().size() - 2;
            int at = way == Handle.Way.LEFT_AND_RIGHT
                    ? picked.bay()
                    : picked.cell().orElse(0);
            if (last < 0) {
                return Optional.empty();
            }
            int place = Math.min(at, last);
            return Optional.of(
                    way == Handle.Way.LEFT_AND_RIGHT
                            ? new Partition(
                                    text,
                                    picked.bays(),
                                    place,
                                    new Tape(stand.design().unit()))
                            : new Gap(text, bay, place));
        });
    }

    @Override
    public Deed deed(FrontAction action, String key) {
        return located(key)
                .map(picked -> new FrontDeeds(text, stand.design(), bays).of(action, picked))
                .orElseGet(
                        () -> Deed.impossible(action.words(), "Nothing is picked. Pick a front, an opening or a bay."));
    }

    private Optional<Located> located(String key) {
        return bays.all().flatMap(here -> located(here, key)).findFirst();
    }

    private static Stream<Located> located(Bays here, String key) {
        var places = new ArrayList<Located>();
        for (int i = 0; i < here.across().size(); i++) {
            var bay = here.across().get(i);
            if (bay.pointer().equals(key)) {
                places.add(new Located(here, i, OptionalInt.empty()));
            }
            for (int cell = 0; cell < bay.fronts().size(); cell++) {
                if (key(bay, cell).equals(key)) {
                    places.add(new Located(here, i, OptionalInt.of(cell)));
                }
            }
        }
        return places.stream();
    }

    static String key(Bays.One bay, int cell) {
        return bay.pointer() + "/cell/" + cell;
    }

    private String words(double mm) {
        return stand.design().unit().length(mm);
    }
}
