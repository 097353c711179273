package org.standwright.viewer.hand.wall;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.file.text.Pointer;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Deed;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Picture;
import org.standwright.viewer.hand.change.Subject;
import org.standwright.viewer.hand.change.Tape;
import org.standwright.viewer.hand.change.Thing;

/** Walls of cleats with what can be picked and dragged on them. */
public final class WallModel implements Subject<WallAction> {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String HOLDERS = "/holders";

    private final String text;
    private final CleatWall built;
    private final JsonNode root;
    private final List<Seen> walls;
    private final Tape tape;

    private WallModel(String text, CleatWall built, JsonNode root) {
        this.text = text;
        this.built = built;
        this.root = root;
        this.walls = Seen.of(built);
        this.tape = new Tape(built.design().unit());
    }

    /**
     * A holder that hangs nowhere.
     *
     * @param key as {@link Thing#key}
     */
    public record Unhung(String key, String name, String why) {}

    /**
     * @param text of the design file
     * @param built from this text
     */
    public static WallModel of(String text, CleatWall built) {
        try {
            return new WallModel(text, built, MAPPER.readTree(text));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("a wall was built from this text, so it must be JSON.", e);
        }
    }

    public CleatWall built() {
        return built;
    }

    /** From left to right. */
    public List<Seen> walls() {
        return walls;
    }

    public List<Unhung> unhung() {
        return built.unplaced().stream()
                .map(one -> new Unhung(key(one.holder().name()), one.holder().name(), one.why()))
                .toList();
    }

    /** What can be picked: walls, obstacles on them, and holders as the file lists them. */
    public List<Thing> things() {
        var things = new ArrayList<Thing>();
        for (var wall : walls) {
            var name = "wall " + wall.wall().wall().name();
            things.add(thing(pointer(wall), wall.wall().wall().name(), name, "wall", wall.bounds(), Optional.empty()));
            wall.wall().zones().forEach(zone -> things.add(obstacle(wall, zone)));
        }
        built.holders().forEach(holder -> things.add(holder(holder)));
        return things;
    }

    private static Thing thing(
            String key, String title, String words, String look, Rect area, Optional<String> around) {
        return new Thing(key, title, "", words, look, area, around, Optional.empty(), List.of());
    }

    private Thing obstacle(Seen wall, Zone zone) {
        var area = zone.itself();
        var words = zone.name() + ", " + tape.words(area.width()) + " wide and " + tape.words(area.height()) + " high, "
                + tape.words(area.x0()) + " from the left";
        return thing(
                obstacles(wall) + "/" + zone.at(),
                zone.name(),
                words,
                "obstacle",
                wall.shown(area),
                Optional.of(pointer(wall)));
    }

    private Thing holder(HungHolder holder) {
        var wall = walls.get(holder.wall() - 1);
        var words = holder.name() + ", on row " + holder.row() + ", " + tape.words(holder.x()) + " from the left, "
                + (holder.byHand() ? "where you put it" : "where a place was found");
        return new Thing(
                key(holder.name()),
                holder.name(),
                "",
                words,
                holder.byHand() ? "holder-by-hand" : "holder",
                wall.shown(holder.area()),
                Optional.of(pointer(wall)),
                holder.made().parts().stream().map(part -> part.label()).findFirst(),
                List.of(holder.name()));
    }

    /** What can be dragged: holders, obstacles and their edges. */
    public List<Handle> handles() {
        var obstacles =
                walls.stream().flatMap(wall -> wall.wall().zones().stream().flatMap(zone -> grips(wall, zone)));
        var holders = built.holders().stream()
                .<Handle>map(holder -> new HolderHandle(
                        text, key(holder.name()), (ObjectNode) root.at(key(holder.name())), holder, walls, tape));
        return Stream.concat(obstacles, holders).toList();
    }

    private Stream<Handle> grips(Seen wall, Zone zone) {
        var pointer = obstacles(wall) + "/" + zone.at();
        return Stream.of(ObstacleHandle.Grip.values())
                .filter(grip -> isPossible(grip, zone))
                .map(grip -> new ObstacleHandle(text, pointer, (ObjectNode) root.at(pointer), wall, zone, grip, tape));
    }

    private static boolean isPossible(ObstacleHandle.Grip grip, Zone zone) {
        return switch (zone.kind()) {
            case STAND -> grip == ObstacleHandle.Grip.WHOLE;
            case DOOR, BENCH, CABINET -> grip != ObstacleHandle.Grip.LOWER;
            default -> true;
        };
    }

    @Override
    public Picture picture() {
        var seen = new WallPicture(walls, built.design().cleat());
        return new Picture(built.design().name(), seen.bounds(), seen.under(), things(), List.of(), handles());
    }

    /** All of it; of an obstacle also its right and its upper edge. */
    @Override
    public Optional<Handle> handle(String key, Handle.Way way, boolean edge) {
        var grip = way == Handle.Way.LEFT_AND_RIGHT ? ObstacleHandle.Grip.RIGHT : ObstacleHandle.Grip.UPPER;
        var wanted = edge ? key + "/" + grip.name() : key;
        return handles().stream().filter(handle -> handle.key().equals(wanted)).findFirst();
    }

    @Override
    public Deed deed(WallAction action, String key) {
        boolean isEntry = key.startsWith(HOLDERS + "/") || key.contains("/obstacles/");
        if (!isEntry || root.at(key).isMissingNode()) {
            return Deed.impossible(action.words(), "Nothing is picked. Pick a holder or an obstacle.");
        }
        int slash = key.lastIndexOf('/');
        var list = key.substring(0, slash);
        var name = root.at(key).path("name").asText(root.at(key).path("kind").asText());
        return new WallDeeds(text, list, (ArrayNode) root.at(list), Integer.parseInt(key.substring(slash + 1)), name)
                .of(action);
    }

    private static String pointer(Seen wall) {
        return "/walls/" + (wall.wall().number() - 1);
    }

    private static String obstacles(Seen wall) {
        return pointer(wall) + "/obstacles";
    }

    private String key(String holder) {
        var holders = built.design().holders();
        for (int i = 0; i < holders.size(); i++) {
            if (holders.get(i).name().equals(holder)) {
                return Pointer.child(HOLDERS, i);
            }
        }
        throw new IllegalArgumentException("no holder of this design is called '" + holder + "'.");
    }
}
